/**
 * What wanders: laying and losses in spells of weeks, what the colony is like over months, habits of counting
 * and the place over a year. Each is pulled to its middle and pushed by chance so that its spread stays.
 */
import { nextNormal, type Stream } from '../../numbers/streams.ts';
import type { EngineConstants } from './constants.ts';
import { part } from './particle.ts';

export function wanderOn(c: EngineConstants, values: Float64Array, at: number, stream: Stream): void {
  for (const { part: name, middle, kept, push } of c.wander) {
    const i = at + part[name];
    values[i] = middle + kept * (values[i]! - middle) + push * nextNormal(stream);
  }
}

/** Drawn from where each stands in the long run. */
export function wanderBegins(c: EngineConstants, values: Float64Array, at: number, stream: Stream): void {
  for (const { part: name, middle, spread } of c.wander) values[at + part[name]] = middle + spread * nextNormal(stream);
}
