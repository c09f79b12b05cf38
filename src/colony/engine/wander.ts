/**
 * What wanders: laying, losses and flow in spells of weeks, what the colony is like over months, habits of
 * counting and the place over a year. Each is pulled to its middle and pushed by chance so that its spread
 * stays (an Ornstein–Uhlenbeck process). What is slow is moved only every few days, by as much as in those days.
 */
import { nextNormal, type Stream } from '../../numbers/streams.ts';
import type { EngineConstants } from './constants.ts';
import { eyeGapAt, eyeVarianceAt } from './particle.ts';
import { slowDays, type Wander } from './taken/wander.ts';

export function wanderOn(c: EngineConstants, day: number, values: Float64Array, at: number, stream: Stream): void {
  move(c.quick, values, at, stream);
  if (day % slowDays !== 0) return;
  move(c.slow, values, at, stream);
  moveEyes(c.eyes, values, at, stream);
}

/** Drawn from where each stands in the long run. */
export function wanderBegins(c: EngineConstants, values: Float64Array, at: number, stream: Stream): void {
  for (const { count, offset, middle, spread } of [c.quick, c.slow]) {
    for (let i = 0; i < count; i += 1) values[at + offset[i]!] = middle[i]! + spread[i]! * nextNormal(stream);
  }
  const { count, offset, middle, spread } = c.eyes;
  for (let i = 0; i < count; i += 1) {
    const gap = spread[i]! * nextNormal(stream);
    values[at + offset[i]!] = middle[i]! + gap;
    values[at + eyeGapAt + i] = -gap;
    values[at + eyeVarianceAt + i] = spread[i]! ** 2;
  }
}

function move({ count, offset, middle, kept, push }: Wander, values: Float64Array, at: number, stream: Stream): void {
  for (let i = 0; i < count; i += 1) {
    const where = at + offset[i]!;
    values[where] = middle[i]! + kept[i]! * (values[where]! - middle[i]!) + push[i]! * nextNormal(stream);
  }
}

/** The number drawn wanders like any other; what is known of it is pulled to its middle and blurs by as much. */
function moveEyes({ count, offset, middle, kept, push }: Wander, values: Float64Array, at: number, stream: Stream): void {
  for (let i = 0; i < count; i += 1) {
    const where = at + offset[i]!;
    const pushed = push[i]! * nextNormal(stream);
    values[where] = middle[i]! + kept[i]! * (values[where]! - middle[i]!) + pushed;
    const gap = at + eyeGapAt + i;
    values[gap] = kept[i]! * values[gap]! - pushed;
    const variance = at + eyeVarianceAt + i;
    values[variance] = kept[i]! * kept[i]! * values[variance]! + push[i]! * push[i]!;
  }
}
