/**
 * Before a colony's first visit nothing is known of how it will be counted, and no count has made any difference:
 * so each particle may stand with several eyes, drawn anew, and the first visit chooses among many more stories at
 * next to no cost. Exact but for the little that the scale of sealed cells does to the room of a colony.
 */
import type { Cloud } from '../../numbers/particle-filter.ts';
import { newStream, nextNormal, setStream } from '../../numbers/streams.ts';
import type { EngineConstants } from './constants.ts';
import { part, type Part, particleSize } from './particle.ts';

const eyes: readonly Part[] = [
  'beesScale',
  'beesScaleOther',
  'barsScale',
  'barsScaleOther',
  'sealedScale',
  'sealedScaleOther',
  'openScale',
  'openScaleOther',
  'honeyScale',
  'honeyScaleOther',
];

/** Apart from the purposes of the filter's own streams. */
const purpose = 16;

/** `copies` of each particle, each with eyes of its own; together they have its share. */
export function manyEyes(c: EngineConstants, cloud: Cloud, copies: number, seed: number): Cloud {
  const count = cloud.count * copies;
  const values = new Float64Array(count * particleSize);
  const stream = newStream(seed, purpose, 0, cloud.day);
  const columns = columnsOf(c);
  for (let copy = 0; copy < count; copy += 1) {
    const from = Math.floor(copy / copies) * particleSize;
    const at = copy * particleSize;
    values.set(cloud.values.subarray(from, from + particleSize), at);
    setStream(stream, seed, purpose, copy, cloud.day);
    for (const { offset, middle, spread } of columns) values[at + offset] = Math.fround(middle + spread * nextNormal(stream));
  }
  return {
    day: cloud.day,
    count,
    values,
    logShares: Float64Array.from({ length: count }, (_, i) => cloud.logShares[Math.floor(i / copies)]! - Math.log(copies)),
    roots: Int32Array.from({ length: count }, (_, i) => cloud.roots[Math.floor(i / copies)]!),
  };
}

function columnsOf({ slow }: EngineConstants) {
  return eyes.map((name) => {
    const column = slow.offset.indexOf(part[name]);
    return { offset: part[name], middle: slow.middle[column]!, spread: slow.spread[column]! };
  });
}
