/** Places of the trough as they are said: "place 8", "places 3, 4 and 7", "places 3 to 9". */
import { assert } from '../numbers/assert.ts';
import { fill } from './fill.ts';
import type { Manner } from './say.ts';

/** A run at least this long is said by its ends. */
const longRun = 4;

export function formatPlaces(places: readonly number[], manner: Manner): string {
  assert(places.length > 0, 'at least one place');
  const sorted = [...new Set(places)].sort((a, b) => a - b);
  const [only] = sorted;
  if (sorted.length === 1) return fill('place.one', { n: String(only) }, manner);
  return fill(
    'place.several',
    {
      list: formatList(
        runs(sorted).flatMap((run) => sayRun(run, manner)),
        manner,
      ),
    },
    manner,
  );
}

/** "a", "a and b", "a, b and c". */
export function formatList(items: readonly string[], manner: Manner): string {
  const last = items.at(-1) ?? '';
  if (items.length < 2) return last;
  return fill('list.and', { most: items.slice(0, -1).join(', '), last }, manner);
}

function runs(sorted: readonly number[]): readonly (readonly number[])[] {
  const found: number[][] = [];
  for (const place of sorted) {
    const run = found.at(-1);
    if (run !== undefined && run.at(-1) === place - 1) run.push(place);
    else found.push([place]);
  }
  return found;
}

function sayRun(run: readonly number[], manner: Manner): readonly string[] {
  if (run.length < longRun) return run.map(String);
  return [fill('place.run', { from: String(run[0]), to: String(run.at(-1)) }, manner)];
}
