/**
 * What is stirred when particles were drawn anew: what a colony and its place are like, its bees and honey as a
 * whole, and what is known of each eye; among particles whose queens are in the same state, because others are
 * other stories. Without it the copies of a few that explained every visit so far stand for all that could be.
 */
import type { Cloud } from '../../numbers/particle-filter.ts';
import { stir } from '../../numbers/stir.ts';
import { newStream } from '../../numbers/streams.ts';
import { reportedIndex, reportedStates } from '../queen-chain/states.ts';
import { adultDays, adultsAt, adultsOfParticle, eyes, eyeGapAt, part, type Part, particleSize } from './particle.ts';

const plain: readonly Part[] = ['laying', 'loss', 'flow', 'capacity', 'lossLevel', 'rise', 'fall', 'depth'];
const plainAt = plain.map((name) => part[name]);
const eyesAt = eyes.map((name) => part[name]);
const beesColumn = plain.length;
const honeyColumn = beesColumn + 1;
const eyeColumn = honeyColumn + 1;
const width = eyeColumn + eyes.length;

/** Apart from the purposes of the filter's own streams. */
const purpose = 17;

/** The cloud with its particles moved apart, for the `time`th time on its day; `kept` of each one's way from the mean stays. */
export function stirred(cloud: Cloud, kept: number, time: number, seed: number): Cloud {
  const values = cloud.values.slice();
  for (let told = 0; told < reportedStates.length; told += 1) {
    const members: number[] = [];
    for (let at = 0; at < values.length; at += particleSize) {
      if (reportedIndex[values[at + part.queen]!] === told && adultsOfParticle(values, at) >= 1) members.push(at);
    }
    // A covariance of so many numbers wants a few times as many particles.
    if (members.length <= 2 * width) continue;
    const rows = new Float64Array(members.length * width);
    members.forEach((at, i) => read(values, at, rows, i * width));
    stir(rows, width, kept, newStream(seed, purpose, told + reportedStates.length * time, cloud.day));
    members.forEach((at, i) => write(values, at, rows, i * width));
  }
  return { ...cloud, values };
}

function read(values: Float64Array, at: number, rows: Float64Array, row: number): void {
  plainAt.forEach((offset, i) => (rows[row + i] = values[at + offset]!));
  rows[row + beesColumn] = Math.log(adultsOfParticle(values, at));
  rows[row + honeyColumn] = Math.log(honeyOf(values, at));
  eyesAt.forEach((offset, i) => (rows[row + eyeColumn + i] = values[at + offset]! + values[at + eyeGapAt + i]!));
}

function write(values: Float64Array, at: number, rows: Float64Array, row: number): void {
  plainAt.forEach((offset, i) => (values[at + offset] = rows[row + i]!));
  const times = Math.exp(rows[row + beesColumn]!) / adultsOfParticle(values, at);
  for (let age = 0; age < adultDays; age += 1) values[at + adultsAt + age]! *= times;
  values[at + part.honeyKg]! *= Math.exp(rows[row + honeyColumn]!) / honeyOf(values, at);
  // What was drawn of an eye moves with the middle of what is known of it.
  eyesAt.forEach((offset, i) => (values[at + offset] = rows[row + eyeColumn + i]! - values[at + eyeGapAt + i]!));
}

/** So that no honey at all has a logarithm; what is nothing stays nothing, because it is multiplied. */
function honeyOf(values: Float64Array, at: number): number {
  return Math.max(1 / 2, values[at + part.honeyKg]!);
}
