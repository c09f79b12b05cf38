/**
 * Where each place of a trough stands on the paper: true bar widths along the length, or, with a lens,
 * the bars inside it drawn large and the rest pressed together, each part true to itself.
 */
import { assert } from '../numbers/assert.ts';

export interface Lens {
  readonly from: number;
  readonly to: number;
}

export interface PlacesAsked {
  readonly hiveBars: number;
  readonly width: number;
  /** Room for the end wall at either side. */
  readonly margin: number;
  /** Bar widths by place where they are known, and the usual one. */
  readonly widthsMm: ReadonlyMap<number, number>;
  readonly usualMm: number;
  readonly lens: Lens | null;
}

/** Left edges of places 1…n and the right edge of the last: place p spans edges[p - 1]…edges[p]. */
export type Edges = readonly number[];

/** Share of the length that a lens takes at least: our choice, seven bars of 24 come to 30 px on a phone. */
const lensShare = 0.62;

export function placeEdges(asked: PlacesAsked): Edges {
  const { hiveBars, lens } = asked;
  assert(hiveBars >= 1, 'a trough with bars');
  const all = Array.from({ length: hiveBars }, (_, i) => asked.widthsMm.get(i + 1) ?? asked.usualMm);
  const inLens = (place: number) => lens !== null && place >= lens.from && place <= lens.to;
  const sum = (large: boolean) => all.reduce((total, mm, i) => (inLens(i + 1) === large ? total + mm : total), 0);
  const large = sum(true);
  const small = sum(false);
  const length = asked.width - 2 * asked.margin;
  const share = large === 0 ? 0 : small === 0 ? 1 : Math.max(large / (large + small), lensShare);
  const edges = [asked.margin];
  all.forEach((mm, i) => {
    const step = inLens(i + 1) ? (mm / large) * share * length : (mm / small) * (1 - share) * length;
    edges.push((edges[i] ?? 0) + step);
  });
  return edges;
}

export function leftOf(edges: Edges, place: number): number {
  return edges[place - 1] ?? edges[0] ?? 0;
}

export function widthOf(edges: Edges, place: number): number {
  return (edges[place] ?? leftOf(edges, place)) - leftOf(edges, place);
}

export function middleOf(edges: Edges, place: number): number {
  return leftOf(edges, place) + widthOf(edges, place) / 2;
}

/** Bars as narrow as this or narrower are drawn in the far density. */
const farBelowPx = 14;

export function densityFor(width: number, hiveBars: number): 'far' | 'near' {
  return (width - 14) / hiveBars < farBelowPx ? 'far' : 'near';
}

/** Seven bars around a place (fewer in a short trough). */
export function lensAround(place: number, hiveBars: number): Lens {
  const from = Math.max(1, Math.min(place - 3, hiveBars - 6));
  return { from, to: Math.min(hiveBars, from + 6) };
}
