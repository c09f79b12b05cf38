/**
 * Reads a strip back: from the rectangles as drawn to the shares they stand for. Tests hold the drawing
 * to its numbers with it; it looks at geometry only, never at the data that the strip was made from.
 */
import { assert } from '../numbers/assert.ts';
import { type Kind, kindOfFill } from './marks.ts';
import { shareAbove, type Taper, taperOf, type Trough } from './taper.ts';

export interface DrawnComb {
  readonly place: number;
  /** Share of a full face that is drawn, and of the drawn comb for each kind. */
  readonly built: number;
  readonly shares: ReadonlyMap<Kind, number>;
}

/** Every comb of a strip by place. Combs of which nothing is known are left out. */
export function areasFromStrip(svg: string, trough: Trough): ReadonlyMap<number, DrawnComb> {
  const taper = taperOf(trough);
  const frame = /data-top="([^"]+)" data-full="([^"]+)"/.exec(svg);
  assert(frame !== null, 'a strip with its frame');
  const top = Number(frame[1]);
  const toMm = taper.combDepthMm / Number(frame[2]);
  const found = new Map<number, DrawnComb>();
  for (const group of svg.matchAll(/<g class="comb" data-place="(\d+)"[^>]*>(.*?)<\/g>/g)) {
    const place = Number(group[1]);
    found.set(place, drawnComb(place, group[2] ?? '', top, toMm, taper));
  }
  return found;
}

function drawnComb(place: number, inside: string, top: number, toMm: number, taper: Taper): DrawnComb {
  const areas = new Map<Kind, number>();
  for (const rect of inside.matchAll(/<rect [^>]*\/>/g)) {
    const y = (attribute(rect[0], 'y') - top) * toMm;
    const deep = attribute(rect[0], 'height') * toMm;
    const kind = kindOfFill(/fill="([^"]*)"/.exec(rect[0])?.[1] ?? '');
    assert(kind !== null, `a mark in ${rect[0]}`);
    areas.set(kind, (areas.get(kind) ?? 0) + shareAbove(taper, y + deep) - shareAbove(taper, y));
  }
  const built = [...areas.values()].reduce((sum, area) => sum + area, 0);
  return { place, built, shares: new Map([...areas].map(([kind, area]) => [kind, built === 0 ? 0 : area / built])) };
}

function attribute(rect: string, name: string): number {
  const text = new RegExp(` ${name}="([^"]*)"`).exec(rect)?.[1];
  assert(text !== undefined, `${name} in ${rect}`);
  return Number(text);
}
