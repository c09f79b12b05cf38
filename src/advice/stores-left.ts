/**
 * For how many days the honey within reach lasts, if nothing comes in: a plain sum of honey over bees. It
 * leaves out weather and nectar; the winter sums come with the stores. Reach is what hangs on combs joined
 * to the brood without a gap.
 */
import type { BarView, ColonyView } from '../colony/view.ts';
import { type FigureBook, rangeOf, value } from '../figures/book.ts';
import type { FigureKey } from '../figures/list.ts';
import { daysBetween } from '../numbers/day.ts';
import { type Range, scaleRange, timesRange } from '../numbers/range.ts';
import { broodPlaces, lastOpening } from './view-facts.ts';

export interface StoresLeft {
  readonly honeyKg: Range;
  /** Honey that hangs beyond a gap is not in it. */
  readonly reachKg: Range;
  readonly bees: Range;
  readonly days: Range;
  readonly readOn: string;
  readonly figures: readonly FigureKey[];
}

const mgPerKg = 1_000_000;

/** Null when nothing was read, or when neither bees nor honey can be said. */
export function storesLeft(view: ColonyView, book: FigureBook, cold: boolean): StoresLeft | null {
  const read = lastOpening(view);
  const bees = view.totals.adults.total;
  const honeyKg = view.totals.honeyKg.total;
  if (read === null || read.barsOpened === 0 || bees.likely <= 0) return null;
  const reachKg = scaleRange(honeyKg, shareWithinReach(view, book));
  const perBee = cold ? scaleRange(rangeOf(book, 'food-per-bee-day'), 1 / mgPerKg) : perBeeInSummer(book);
  const use = timesRange(bees, perBee);
  const lasting = timesRange(reachKg, inverse(use));
  const since = cold ? daysBetween(read.day, view.day) : 0;
  return {
    honeyKg,
    reachKg,
    bees,
    readOn: read.day,
    days: {
      low: lessDays(lasting.low, since),
      likely: lessDays(lasting.likely, since),
      high: lessDays(lasting.high, since),
    },
    figures: cold ? ['food-per-bee-day'] : ['summer-food-per-day', 'strong-colony-bees'],
  };
}

/** Honey a bee stands for in a summer day, brood rearing included, kg. */
function perBeeInSummer(book: FigureBook): Range {
  return scaleRange(rangeOf(book, 'summer-food-per-day'), 1 / value(book, 'strong-colony-bees'));
}

function inverse(use: Range): Range {
  return { low: 1 / use.high, likely: 1 / use.likely, high: 1 / use.low };
}

function lessDays(days: number, since: number): number {
  return Math.max(0, days - since);
}

/** Share of the honey on combs joined to the brood; 1 when no brood or no honey is known. */
function shareWithinReach(view: ColonyView, book: FigureBook): number {
  const brood = broodPlaces(view, book);
  const first = Math.min(...brood);
  const all = sumHoney(view.bars);
  if (brood.length === 0 || all === 0) return 1;
  const combs = new Map(view.bars.filter((bar) => bar.kind === 'comb').map((bar) => [bar.place, bar]));
  const reached: BarView[] = [];
  for (let place = first; combs.has(place); place -= 1) reached.push(combs.get(place) as BarView);
  for (let place = first + 1; combs.has(place); place += 1) reached.push(combs.get(place) as BarView);
  return sumHoney(reached) / all;
}

function sumHoney(bars: readonly BarView[]): number {
  return bars.reduce((sum, bar) => sum + (bar.shares === null ? 0 : (bar.shares.honey + bar.shares.nectar) * bar.built), 0);
}
