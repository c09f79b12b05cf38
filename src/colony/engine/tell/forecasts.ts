/**
 * What would be counted on days ahead, by four ways: the model, the challenger that knows no bees, the blend of
 * the two, and "as last time". Ranges hold the errors of a count, because they are scored against counts.
 */
import type { CountForecast } from '../../foreseen.ts';
import { type FigureBook, value } from '../../../figures/book.ts';
import { dayFromNumber } from '../../../numbers/day.ts';
import { foresee } from '../../../numbers/particle-filter.ts';
import type { Range } from '../../../numbers/range.ts';
import { type RecordQuantity, recordQuantities } from '../../record.ts';
import { challengerBegins, challengerForesees, challengerNumbers, challengerOn, challengerSees } from '../challenger.ts';
import { blend, drawnForesight, type Foresight, normalForesight, quantile } from '../foresight.ts';
import type { EngineSetup, Visited } from '../run.ts';
import type { Ahead } from './ahead.ts';
import { tails } from './told-range.ts';

const rivals = { bees: 'adults', sealed: 'capped' } as const;

export function forecastsOf(
  setup: EngineSetup,
  { clouds }: Ahead,
  visits: readonly Visited[],
  daysAhead: readonly number[],
  book: FigureBook,
  seed: number,
): readonly CountForecast[] {
  return daysAhead.flatMap((ahead) =>
    recordQuantities.map((what) => {
      const cloud = clouds[ahead]!;
      const drawn = foresee(setup, cloud, what, 1, seed);
      const engine = drawnForesight(drawn.values, drawn.shares);
      const challenger = what === 'bees' || what === 'sealed' ? challengerFor(visits, what, cloud.day, book) : null;
      const last = lastTime(visits, what, cloud.day, book);
      return {
        what,
        day: dayFromNumber(cloud.day),
        ranges: {
          engine: rangeOfForesight(engine),
          challenger: challenger === null ? null : rangeOfForesight(challenger),
          blend: challenger === null ? null : rangeOfForesight(blend(engine, challenger)),
          'last time': last === null ? null : rangeOfForesight(last),
        },
      };
    }),
  );
}

function challengerFor(visits: readonly Visited[], what: 'bees' | 'sealed', day: number, book: FigureBook): Foresight | null {
  const numbers = challengerNumbers(book, rivals[what]);
  const rows = wholeCounts(visits, what);
  const [first] = rows;
  if (first === undefined) return null;
  let state = challengerBegins(numbers, first.day, false);
  for (const row of rows) state = challengerSees(numbers, challengerOn(numbers, state, row.day), Math.log(row.count));
  const { mean, sd } = challengerForesees(numbers, challengerOn(numbers, state, day));
  return normalForesight(mean, sd);
}

const monthDays = 30;

/** The last whole count, wider with every day; only for what the challenger knows is it known how fast. */
function lastTime(visits: readonly Visited[], what: RecordQuantity, day: number, book: FigureBook): Foresight | null {
  const last = wholeCounts(visits, what).at(-1);
  if (last === undefined) return null;
  const kind = what === 'bees' ? 'adults' : 'capped';
  const noise = value(book, `challenger-${kind}-noise`);
  const walk = value(book, `as-last-time-${kind}-wander`);
  return normalForesight(Math.log(last.count), Math.sqrt(2 * noise ** 2 + (walk ** 2 * (day - last.day)) / monthDays));
}

/** Counts of all combs by whoever reads most; what part of them held says nothing here. */
function wholeCounts(
  visits: readonly Visited[],
  what: RecordQuantity,
): readonly { readonly day: number; readonly count: number }[] {
  return visits.flatMap(({ day, seen }) => {
    const count = seen[what];
    return count === undefined || count.count <= 0 || (count.share ?? 1) < 1 || count.hand === 1
      ? []
      : [{ day, count: count.count }];
  });
}

function rangeOfForesight(foresight: Foresight): Range {
  const at = (chance: number): number => Math.exp(quantile(foresight, chance));
  return { low: at(tails.wide), likely: at(1 / 2), high: at(1 - tails.wide) };
}
