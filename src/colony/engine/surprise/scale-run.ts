/** Two small things that several causes do: multiply a run of cohorts, and draw evenly within a figure's range. */
import type { Range } from '../../../numbers/range.ts';
import { nextUnit, type Stream } from '../../../numbers/streams.ts';

export function scaleRun(values: Float64Array, from: number, count: number, by: number): void {
  for (let i = from; i < from + count; i += 1) values[i]! *= by;
}

export function between({ low, high }: Range, stream: Stream): number {
  return low + (high - low) * nextUnit(stream);
}
