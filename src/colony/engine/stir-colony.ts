/**
 * What is stirred when particles were drawn anew: what a colony and its place are like, its bees, brood and honey as
 * wholes, and what is known of each eye; among particles whose queens are in the same state, because others are
 * other stories. Without it the copies of a few that explained every visit so far stand for all that could be.
 */
import type { Cloud } from '../../numbers/particle-filter.ts';
import { covarianceOf, stir, varianceOfOneMore } from '../../numbers/stir.ts';
import { newStream } from '../../numbers/streams.ts';
import { reportedIndex, reportedStates } from '../queen-chain/states.ts';
import type { EngineConstants } from './constants.ts';
import {
  adultDays,
  adultsAt,
  adultsOfParticle,
  broodAt,
  broodDays,
  cohorts,
  eyes,
  eyeGapAt,
  part,
  type Part,
  particleSize,
} from './particle.ts';

/** What is stirred as a whole: all its cohorts grow or shrink alike. `least` is so little that it is not told from nothing. */
interface Whole {
  readonly from: number;
  readonly to: number;
  readonly least: number;
}

const plain: readonly Part[] = ['laying', 'loss', 'flow', 'capacity', 'lossLevel', 'rise', 'fall', 'depth'];
const plainAt = plain.map((name) => part[name]);
const eyesAt = eyes.map((name) => part[name]);
const wholeColumn = plain.length;

/** Apart from the purposes of the filter's own streams. */
const purpose = 17;

/**
 * The cloud with its particles moved apart, for the `time`th time on its day; it was drawn from `from`. Where there is
 * no brood, none is stirred. A story told by few particles, drawn many times, does not show how its like differ: what
 * lacks is lent by the whole cloud as it was before.
 */
export function stirred(
  c: EngineConstants,
  cloud: Cloud,
  from: Cloud,
  { kept, leastCells }: StirConstants,
  time: number,
  seed: number,
): Cloud {
  const values = cloud.values.slice();
  const all = [
    { from: adultsAt, to: adultsAt + adultDays, least: 1 },
    { from: part.honeyKg, to: part.honeyKg + 1, least: 1 / 2 },
  ];
  const brood = [
    { from: broodAt, to: broodAt + c.sealAge, least: leastCells },
    { from: broodAt + c.sealAge, to: broodAt + broodDays, least: leastCells },
  ];
  const before = groupsOf(from.values, brood);
  groupsOf(values, brood).forEach(({ members, breeds }, group) => {
    const wholes = breeds ? [...all, ...brood] : all;
    const width = plain.length + wholes.length + eyes.length;
    // A covariance of so many numbers wants a few times as many particles; a group of fewer is let be.
    const fewest = 2 * width;
    if (members.length <= fewest) return;
    const rows = rowsOf(wholes, values, members, width);
    const { told, weighed } = tellers(from, before[group]!.members);
    // With twice as many again nothing lacks.
    const lacks = Math.max(0, 1 - weighed / (2 * fewest));
    const lent = lacks > 0 ? { covariance: withinGroups(wholes, from.values, before, breeds, width), share: lacks } : null;
    const how = { kept, times: varianceOfOneMore(weighed, told), ...(lent === null ? {} : { lent }) };
    stir(rows, width, how, newStream(seed, purpose, group + 2 * reportedStates.length * time, cloud.day));
    members.forEach((at, i) => write(wholes, values, at, rows, i * width));
  });
  return { ...cloud, values };
}

/** How many tell a story, copies being one, and their effective number by their shares; honey tells them apart. */
function tellers({ values, logShares }: Cloud, members: readonly number[]): { readonly told: number; readonly weighed: number } {
  const byHoney = new Map<number, number>();
  let all = 0;
  for (const at of members) {
    const share = Math.exp(logShares[at / particleSize]!);
    const honey = values[at + part.honeyKg]!;
    byHoney.set(honey, (byHoney.get(honey) ?? 0) + share);
    all += share;
  }
  let squares = 0;
  for (const share of byHoney.values()) squares += (share / all) ** 2;
  return { told: byHoney.size, weighed: 1 / squares };
}

/** Covariance of all particles that can be stirred in the same way, each about the mean of its own story. */
function withinGroups(
  wholes: readonly Whole[],
  values: Float64Array,
  groups: readonly Group[],
  breeds: boolean,
  width: number,
): Float64Array {
  const sum = new Float64Array(width * width);
  let count = 0;
  for (const { members, breeds: breed } of groups) {
    if (members.length < 2 || (breeds && !breed)) continue;
    const covariance = covarianceOf(rowsOf(wholes, values, members, width), width);
    covariance.forEach((one, i) => (sum[i]! += one * members.length));
    count += members.length;
  }
  return sum.map((one) => one / Math.max(1, count));
}

function rowsOf(wholes: readonly Whole[], values: Float64Array, members: readonly number[], width: number): Float64Array {
  const rows = new Float64Array(members.length * width);
  members.forEach((at, i) => read(wholes, values, at, rows, i * width));
  return rows;
}

export interface StirConstants {
  readonly kept: number;
  /** Fewer cells of open or of sealed brood are no brood to be stirred. */
  readonly leastCells: number;
}

interface Group {
  readonly members: number[];
  readonly breeds: boolean;
}

/** Particles with bees by the state that is told, with brood and without. */
function groupsOf(values: Float64Array, brood: readonly Whole[]): readonly Group[] {
  const groups = Array.from({ length: 2 * reportedStates.length }, (_, i): Group => ({ members: [], breeds: i % 2 === 1 }));
  for (let at = 0; at < values.length; at += particleSize) {
    if (adultsOfParticle(values, at) < 1) continue;
    const breeds = brood.every(({ from, to, least }) => cohorts(values, at, from, to) >= least);
    groups[2 * reportedIndex[values[at + part.queen]!]! + Number(breeds)]!.members.push(at);
  }
  return groups;
}

function read(wholes: readonly Whole[], values: Float64Array, at: number, rows: Float64Array, row: number): void {
  plainAt.forEach((offset, i) => (rows[row + i] = values[at + offset]!));
  wholes.forEach((whole, i) => (rows[row + wholeColumn + i] = Math.log(amountOf(whole, values, at))));
  const eyeColumn = row + wholeColumn + wholes.length;
  eyesAt.forEach((offset, i) => (rows[eyeColumn + i] = values[at + offset]! + values[at + eyeGapAt + i]!));
}

function write(wholes: readonly Whole[], values: Float64Array, at: number, rows: Float64Array, row: number): void {
  plainAt.forEach((offset, i) => (values[at + offset] = rows[row + i]!));
  wholes.forEach((whole, i) => {
    const times = Math.exp(rows[row + wholeColumn + i]!) / amountOf(whole, values, at);
    for (let k = at + whole.from; k < at + whole.to; k += 1) values[k]! *= times;
  });
  // What was drawn of an eye moves with the middle of what is known of it.
  const eyeColumn = row + wholeColumn + wholes.length;
  eyesAt.forEach((offset, i) => (values[at + offset] = rows[eyeColumn + i]! - values[at + eyeGapAt + i]!));
}

/** So that nothing at all has a logarithm; what is nothing stays nothing, because it is multiplied. */
function amountOf({ from, to, least }: Whole, values: Float64Array, at: number): number {
  return Math.max(least, cohorts(values, at, from, to));
}
