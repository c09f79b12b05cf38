/**
 * Advice and forecast as they are issued at the end of a visit: kept as entries, so that they can be scored
 * later against what came. The forecast is the model's, by each of its ways, where it was worked out for that day;
 * else the plain outlook's: what was read, carried forward.
 */
import type { Picture } from '../apiary.ts';
import type { AdviceIssuedBody } from '../colony/kind-advice-issued.ts';
import { type CountForecast, type Foreseen, type ForecastMethod, forecastMethods } from '../colony/foreseen.ts';
import type { ForecastIssuedBody } from '../colony/kind-forecast-issued.ts';
import type { ColonyState } from '../colony/state.ts';
import { viewOf } from '../colony/view-of.ts';
import type { TotalName } from '../colony/view.ts';
import type { FigureBook } from '../figures/book.ts';
import { hashOfText } from '../journal/canonical.ts';
import type { Entry, Id } from '../journal/entry.ts';
import { addDays } from '../numbers/day.ts';
import type { Range } from '../numbers/range.ts';
import type { Manner } from '../words/say.ts';
import { say } from '../words/text.ts';

/** Names the way of working behind a forecast; a new one gets a new name, so that scores are kept apart. */
export const plainEngine = 'plain 1';

const forecastTotals: readonly TotalName[] = ['adults', 'sealed', 'egg', 'larva', 'honeyKg'];
/** One week and one round of brood ahead: our choice. */
const forecastDays: readonly number[] = [7, 21];

/** What the inputs were, in one short text: equal for the same entries in any order. */
export function digestOf(entries: readonly Entry[]): string {
  return hashOfText(
    entries
      .map((entry) => entry.id)
      .sort()
      .join('\n'),
  );
}

/** The advice of a picture, under the name of whoever spoke of the colony in it. */
export function adviceIssued(picture: Picture, colony: Id, digest: string, manner: Manner): AdviceIssuedBody {
  const by = picture.colonies.find((view) => view.colony === colony)?.foreseen?.engine ?? plainEngine;
  const items = picture.advice
    .filter((advice) => advice.colony === colony)
    .map((advice) => ({ rule: advice.rule, verb: advice.verb, window: advice.window, text: say(advice.say, manner) }));
  return { colony, engine: by, digest, items };
}

export function forecastIssued(
  known: { readonly state: ColonyState; readonly book: FigureBook },
  colony: Id,
  day: string,
  digest: string,
  foreseen: Foreseen | null = null,
): ForecastIssuedBody {
  if (foreseen !== null && foreseen.day === day)
    return { colony, engine: foreseen.engine, digest: foreseen.digest, values: valuesOf(foreseen) };
  const values = forecastDays.flatMap((ahead) => {
    const then = addDays(day, ahead);
    const { totals } = viewOf(known.state, colony, then, known.book);
    return forecastTotals.map((what) => ({ what, day: then, ...written(totals[what].total) }));
  });
  return { colony, engine: plainEngine, digest, values };
}

/** One value for each thing, day and way; `what` names thing and way. */
function valuesOf({ forecasts }: Foreseen): ForecastIssuedBody['values'] {
  return forecasts.flatMap(({ what, day, ranges }) =>
    forecastMethods.flatMap((method) => {
      const range = ranges[method];
      return range === null ? [] : [{ what: issuedName(what, method), day, ...written(range) }];
    }),
  );
}

/** Four figures: a journal that is kept for years and sent to phones need not hold digits that no range can bear. */
const figuresWritten = 4;

function written({ low, likely, high }: Range): Range {
  const short = (number: number): number => Number(number.toPrecision(figuresWritten));
  return { low: short(low), likely: short(likely), high: short(high) };
}

/** "bees, engine": the thing and the way. */
export function issuedName(what: CountForecast['what'], method: ForecastMethod): string {
  return `${what}, ${method}`;
}
