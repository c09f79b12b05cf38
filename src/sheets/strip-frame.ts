/**
 * What a strip is asked for, and the measures that follow from it: where bars begin, how deep the floor
 * lies, how many pixels a millimetre of depth has. The drawing itself is in `strip.ts` and `strip-wood.ts`.
 */
import type { BarView } from '../colony/view.ts';
import { sharedPrefix } from './marks.ts';
import { type Edges, leftOf, type Lens, placeEdges, widthOf } from './places.ts';
import { checkPrefix } from './svg.ts';
import { type Taper, taperOf, type Trough } from './taper.ts';

export interface StripOptions extends Trough {
  readonly density: 'far' | 'near';
  readonly width: number;
  readonly height: number;
  readonly hiveBars: number;
  readonly bay: { readonly from: number; readonly to: number };
  readonly entrance: 'first' | 'last' | 'side';
  /** Said by screen readers: whole words, made by the caller. */
  readonly label: string;
  /** Bars drawn large, the rest pressed together and in the far density. */
  readonly lens?: Lens | null;
  /** With a prefix the strip carries its own marks; without one it uses the page's sprite. */
  readonly prefix?: string;
  /** The bar in hand: a pointer above it. */
  readonly current?: number;
  /** Place numbers under the floor. */
  readonly numbers?: boolean;
  /** Size of letters in px; full sun asks for 20. */
  readonly textSize?: number;
  /** Width of bars of which nothing is known. */
  readonly barWidthMm?: number;
}

export const margin = 7;
export const usualText = 11.5;
export const barHeight = 6;

export interface Frame {
  readonly options: StripOptions;
  readonly prefix: string;
  readonly taper: Taper;
  readonly edges: Edges;
  readonly barTop: number;
  readonly combTop: number;
  readonly floor: number;
  /** Pixels for each millimetre of depth. */
  readonly scale: number;
}

export function frameOf(bars: readonly BarView[], options: StripOptions): Frame {
  const widthsMm = new Map(bars.map((bar) => [bar.place, bar.widthMm]));
  const middle = [...widthsMm.values()].sort((a, b) => a - b)[Math.floor(widthsMm.size / 2)];
  const usualMm = options.barWidthMm ?? middle ?? 1;
  const edges = placeEdges({ ...options, margin, widthsMm, usualMm, lens: options.lens ?? null });
  const barTop = options.current === undefined ? 1.5 : 8;
  const combTop = barTop + barHeight + 0.5;
  const floor = options.height - (options.numbers === true ? (options.textSize ?? usualText) + 3.5 : 4);
  return {
    options,
    prefix: checkPrefix(options.prefix ?? sharedPrefix),
    taper: taperOf(options),
    edges,
    barTop,
    combTop,
    floor,
    scale: (floor - combTop) / options.depthMm,
  };
}

export function isLarge(frame: Frame, place: number): boolean {
  const { density, lens } = frame.options;
  if (lens === undefined || lens === null) return density === 'near';
  return place >= lens.from && place <= lens.to;
}

/** Combs are thinner than bars: bees walk between them. */
export function combSpan(frame: Frame, place: number): { x: number; width: number } {
  const wide = widthOf(frame.edges, place);
  const width = wide * (wide < 9 ? 0.84 : 0.72);
  return { x: leftOf(frame.edges, place) + (wide - width) / 2, width };
}
