/**
 * The fewest bars that answer a question, by what each bar should hold today: lifted one after the other, from the
 * far end of the nest inwards, until what is asked would be found if it is there. Where nothing is known of the
 * bars none is named, which means the whole hive.
 */
import { broodContents, type Content, foodContents } from '../../../hive/contents.ts';
import type { Question } from '../../foreseen.ts';
import type { BarView } from '../../view.ts';
import type { LookConstants } from './look-constants.ts';

export interface LookNest {
  /** As they should look today. */
  readonly bars: readonly BarView[];
  readonly entrance: 'first' | 'last' | 'side';
}

/** Places in the order of lifting. */
export function placesFor(ask: Question, nest: LookNest, look: LookConstants): readonly number[] {
  const combs = nest.bars.filter(({ kind, shares }) => kind === 'comb' && shares !== null);
  const far = farEnd(nest.entrance);
  return inLiftingOrder(choose[ask](combs, look, far), nest.entrance);
}

/** From the far end of the nest inwards. */
export function inLiftingOrder(places: readonly number[], entrance: LookNest['entrance']): readonly number[] {
  return [...places].sort((a, b) => farEnd(entrance) * (a - b));
}

/** Whether places grow or fall on the way from the far end. */
function farEnd(entrance: LookNest['entrance']): 1 | -1 {
  return entrance === 'last' ? 1 : -1;
}

type Choose = (combs: readonly BarView[], look: LookConstants, far: 1 | -1) => readonly number[];

const choose: Readonly<Record<Question, Choose>> = {
  // Swarm cells hang at edges, and the nest has most of these where it ends.
  cells: (combs, look) => {
    const brood = broodCombs(combs, look);
    const ends = [brood[0], brood.at(-1)];
    const weighed = brood.map((bar) => ({ bar, weight: ends.includes(bar) ? look.outerCells : 1 }));
    return untilFound(weighed, (share) => 1 - (1 - share * look.cellSeen) ** look.cellCount, look);
  },
  eggs: (combs, look) => {
    const found = (share: number): number => 1 - (1 - share) ** look.eggCombs;
    const withEggs = combs.map((bar) => ({ bar, weight: holds(bar, ['egg']) })).filter(({ weight }) => weight > 0);
    if (withEggs.length > 0) return untilFound(withEggs, found, look);
    // No egg is expected anywhere: where brood is, or was, a queen begins.
    const brood = broodCombs(combs, look).map((bar) => ({ bar, weight: holds(bar, broodContents) }));
    return untilFound(brood.length > 0 ? brood : middleOf(combs), found, look);
  },
  stores: (combs, look) => {
    const brood = broodCombs(combs, look);
    const food = combs.filter((bar) => holds(bar, foodContents) >= look.broodComb && !brood.includes(bar));
    const [first, last] = [brood[0], brood.at(-1)];
    if (first === undefined || last === undefined) return mostFood(food);
    const before = food.filter(({ place }) => place < first.place).at(-1);
    const after = food.find(({ place }) => place > last.place);
    return [before, after].flatMap((bar) => (bar === undefined ? [] : [bar.place]));
  },
  room: (combs, look, far) => {
    const brood = broodCombs(combs, look);
    const edge = far < 0 ? brood.at(-1) : brood[0];
    const last = far < 0 ? combs.at(-1) : combs[0];
    return [...new Set([edge, last].flatMap((bar) => (bar === undefined ? [] : [bar.place])))];
  },
};

interface Weighed {
  readonly bar: BarView;
  readonly weight: number;
}

/** The heaviest first, until what is asked would be found; `found` from the share of the whole that they hold. */
function untilFound(all: readonly Weighed[], found: (share: number) => number, { answers }: LookConstants): readonly number[] {
  const whole = all.reduce((sum, { weight }) => sum + weight, 0);
  const places: number[] = [];
  let held = 0;
  for (const { bar, weight } of [...all].sort((a, b) => b.weight - a.weight || a.bar.place - b.bar.place)) {
    if (whole > 0 && found(held / whole) >= answers) break;
    places.push(bar.place);
    held += weight;
  }
  return places;
}

function broodCombs(combs: readonly BarView[], { broodComb }: LookConstants): readonly BarView[] {
  return combs.filter((bar) => holds(bar, broodContents) >= broodComb);
}

function middleOf(combs: readonly BarView[]): readonly Weighed[] {
  const middle = (combs.length - 1) / 2;
  return combs.map((bar, i) => ({ bar, weight: 1 / (1 + Math.abs(i - middle)) }));
}

function mostFood(food: readonly BarView[]): readonly number[] {
  return [...food]
    .sort((a, b) => holds(b, foodContents) - holds(a, foodContents))
    .slice(0, 2)
    .map(({ place }) => place);
}

/** Share of the whole outline. */
function holds({ shares, built }: BarView, of: readonly Content[]): number {
  return shares === null ? 0 : built * of.reduce((sum, content) => sum + shares[content], 0);
}
