/**
 * One colony's particles taken through its visits, from its beginning or from where they were left. What was
 * foreseen of the last visit stands apart, taken before the visit was seen. Numbers are rounded to single
 * precision at every visit, so that going on from what was kept gives what a whole replay gives.
 */
import type { FigureBook } from '../../figures/book.ts';
import { value } from '../../figures/book.ts';
import { assert } from '../../numbers/assert.ts';
import { begin, type Cloud, goOn, type Setup, step, type StepInfo } from '../../numbers/particle-filter.ts';
import type { EngineConstants } from './constants.ts';
import { colonyModel } from './model.ts';
import type { Seens } from './seen/list.ts';
import { stirred } from './stir-colony.ts';
import { thinned } from './thin.ts';

export type EngineSetup = Setup<EngineConstants, Seens>;
export type Seen = { readonly [K in keyof Seens]?: Seens[K] };

/** One visit as the model takes it. */
export interface Visited {
  readonly day: number;
  /** The visit's id in the journal. */
  readonly visit: string;
  readonly seen: Seen;
}

/** Where a colony's particles were left: after a visit, or at the beginning. */
export interface Left {
  readonly cloud: Cloud;
  /** Visits taken in so far. */
  readonly visits: number;
  readonly info: StepInfo | null;
}

/** A visit with the cloud before and after it was seen. */
export interface Met {
  readonly visited: Visited;
  readonly before: Cloud;
  readonly after: Cloud;
  readonly info: StepInfo;
}

export function engineSetup(constants: EngineConstants, book: FigureBook): EngineSetup {
  const stir = { kept: value(book, 'engine-stir-kept'), leastCells: value(book, 'engine-stir-least-cells') };
  const byParts = {
    leastShare: value(book, 'engine-part-least'),
    stir: (c: EngineConstants, cloud: Cloud, from: Cloud, part: number, seed: number) =>
      stirred(c, cloud, from, stir, part, seed),
  };
  return { model: colonyModel, constants, resampleBelow: value(book, 'engine-resample-below'), byParts };
}

/** Much is unknown of a colony that was never seen: it begins with many particles, and keeps fewer after some visits. */
export function beginColony(setup: EngineSetup, day: number, { wide }: Crowd, seed: number): Left {
  return { cloud: rounded(begin(setup, day, wide, seed)), visits: 0, info: null };
}

/** How many particles stand for a colony, and how many before so many visits were taken in. */
export interface Crowd {
  readonly wide: number;
  readonly wideVisits: number;
  readonly usual: number;
}

export function crowdOf(book: FigureBook): Crowd {
  return {
    wide: value(book, 'engine-particles-first'),
    wideVisits: value(book, 'engine-first-visits'),
    usual: value(book, 'engine-particles'),
  };
}

/** Takes in one visit, which is not before the cloud's day. */
export function meet(
  setup: EngineSetup,
  left: Left,
  visited: Visited,
  crowd: Crowd,
  seed: number,
): { readonly left: Left; readonly met: Met } {
  assert(visited.day >= left.cloud.day, `a visit on day ${visited.day} comes after day ${left.cloud.day}`);
  const before = goOn(setup, left.cloud, visited.day, seed);
  const { state, info } = step(setup, before, { day: visited.day, seen: visited.seen }, seed);
  const visits = left.visits + 1;
  const cloud = rounded(thinned(state, visits >= crowd.wideVisits ? crowd.usual : crowd.wide));
  return { left: { cloud, visits, info }, met: { visited, before, after: cloud, info } };
}

/** To single precision, as it is kept. */
function rounded(cloud: Cloud): Cloud {
  return { ...cloud, values: new Float64Array(new Float32Array(cloud.values)) };
}

/** The stored form: plain typed arrays, single precision. */
export interface Kept {
  readonly day: number;
  readonly count: number;
  readonly values: Float32Array;
  readonly logShares: Float64Array;
  readonly roots: Int32Array;
  readonly visits: number;
  readonly info: StepInfo | null;
}

export function keep({ cloud, visits, info }: Left): Kept {
  const { day, count, values, logShares, roots } = cloud;
  return { day, count, values: Float32Array.from(values), logShares, roots, visits, info };
}

export function unkeep({ day, count, values, logShares, roots, visits, info }: Kept): Left {
  return { cloud: { day, count, values: Float64Array.from(values), logShares, roots }, visits, info };
}
