/**
 * The strip: a trough seen from its long side, combs edge-on under their bars. Shares become depth by
 * the taper of the trough, bar widths are true, unopened combs stay empty dots. What a strip says is in
 * its label, given by the caller; dates stand beside it.
 */
import { type Content, contents, type Ink } from '../hive/contents.ts';
import type { BarView } from '../colony/view.ts';
import { edgeOf, farKindOf, type Kind, markDefs, markFill, type MarkKey } from './marks.ts';
import type { Edges } from './places.ts';
import { beads, cellStatesOf, queenCell, queenMark } from './small-marks.ts';
import { combSpan, type Frame, frameOf, isLarge, type StripOptions } from './strip-frame.ts';
import { boards, numbers, pointer, tops, trough } from './strip-wood.ts';
import { element, picture, px } from './svg.ts';
import { depthOfShare } from './taper.ts';

/** A strip without its frame, and where its parts lie: what the film is put together from. */
export interface StripBody {
  readonly markup: string;
  readonly marks: readonly MarkKey[];
  readonly edges: Edges;
  readonly barTop: number;
  readonly floor: number;
  /** Lower edge of what hangs at each place of the bay. */
  readonly bottoms: ReadonlyMap<number, number>;
}

/** From the top: food as bees store it, brood from old to young, drone at the rim, empty cells last. */
export const layerOrder = [
  'honey',
  'nectar',
  'bread',
  'emerging',
  'sealed',
  'larva',
  'egg',
  'drone',
  'empty',
] as const satisfies readonly Content[];
export const farLayerOrder = ['food', 'capped', 'open', 'vacant'] as const;

export type { StripOptions } from './strip-frame.ts';

export function strip(bars: readonly BarView[], options: StripOptions): string {
  const body = stripBody(bars, options);
  const defs = options.prefix === undefined ? '' : markDefs(options.prefix, 1, body.marks);
  return picture(`strip strip-${options.density}`, options.width, options.height, options.label, defs + body.markup);
}

export function stripBody(bars: readonly BarView[], options: StripOptions): StripBody {
  const frame = frameOf(bars, options);
  const marks: MarkKey[] = [];
  const bottoms = new Map<number, number>();
  const drawn: Record<Ink, string> = { guessed: '', 'worked out': '', seen: '' };
  const bees = { large: '', small: '' };
  let above = '';
  for (const bar of bars) {
    const hung = comb(bar, frame, marks);
    bottoms.set(bar.place, hung.bottom);
    drawn[hung.ink] += hung.markup;
    bees[isLarge(frame, bar.place) ? 'large' : 'small'] += beeEdge(bar, hung.bottom, frame);
    above += onTop(bar, hung.bottom, frame);
  }
  const combs = Object.entries(drawn).map(([ink, markup]) => (markup === '' ? '' : element('g', edgeOf(ink as Ink), markup)));
  const edges = (bees.large === '' ? '' : beads(bees.large, 2.3, 1.4)) + (bees.small === '' ? '' : beads(bees.small, 1.5, 1.5));
  const markup = element(
    'g',
    { 'data-top': frame.combTop, 'data-full': frame.taper.combDepthMm * frame.scale },
    trough(frame) + tops(bars, frame) + combs.join('') + edges + boards(frame) + above + numbers(bars, frame) + pointer(frame),
  );
  return { markup, marks, edges: frame.edges, barTop: frame.barTop, floor: frame.floor, bottoms };
}

interface Hanging {
  readonly markup: string;
  readonly ink: Ink;
  readonly bottom: number;
}

/** Two combs side by side on one bar are drawn as one: in front hangs the other. */
function comb(bar: BarView, frame: Frame, marks: MarkKey[]): Hanging {
  const built = Math.min(1, bar.built);
  if (bar.kind === 'bare') return { markup: '', ink: bar.ink, bottom: frame.combTop };
  const { x, width } = combSpan(frame, bar.place);
  // Edges are rounded before heights are taken, so that layers neither gap nor add up to another depth.
  const depthOf = (share: number) => Math.round(depthOfShare(frame.taper, share) * frame.scale * 100) / 100;
  if (bar.kind === 'unknown' || bar.shares === null) {
    const height = depthOf(built > 0 ? built : 1);
    const hollow = element('rect', { x, y: frame.combTop, width, height, fill: 'none' });
    const markup = element('g', { class: 'unknown', 'data-place': bar.place }, hollow);
    return { markup, ink: 'guessed', bottom: frame.combTop + height };
  }
  let sum = 0;
  let inside = '';
  for (const [kind, share] of layersOf(bar.shares, isLarge(frame, bar.place))) {
    if (share <= 0) continue;
    const from = depthOf(sum * built);
    sum += share;
    const to = depthOf(Math.min(1, sum) * built);
    marks.push({ kind, ink: bar.ink });
    inside += element('rect', {
      x,
      y: frame.combTop + from,
      width,
      height: to - from,
      fill: markFill(frame.prefix, kind, bar.ink),
    });
  }
  const markup = element('g', { class: 'comb', 'data-place': bar.place }, inside);
  return { markup, ink: bar.ink, bottom: frame.combTop + depthOf(built) };
}

/** Shares in the order they are drawn, from the top; in the far density summed to four kinds. */
export function layersOf(shares: Readonly<Record<Content, number>>, near: boolean): readonly (readonly [Kind, number])[] {
  if (near) return layerOrder.map((content) => [content, shares[content]] as const);
  const sums = { food: 0, capped: 0, open: 0, vacant: 0 };
  for (const content of contents) sums[farKindOf[content]] += shares[content];
  return farLayerOrder.map((kind) => [kind, sums[kind]] as const);
}

/** Bees along the comb from its tip upwards, as far as they cover it; in the far density along one side. */
function beeEdge(bar: BarView, bottom: number, frame: Frame): string {
  if (bar.kind === 'bare' || bar.bees === null || bar.bees <= 0) return '';
  const { x, width } = combSpan(frame, bar.place);
  const large = isLarge(frame, bar.place);
  const rise = Math.max(0, (bottom - frame.combTop) * Math.min(1, bar.bees));
  const out = large ? 2.2 : 1.5;
  const foot = Math.min(bottom + out, frame.floor - 2);
  const start = large ? `M${px(x - out)} ${px(bottom - rise)}V${px(foot)}` : `M${px(x)} ${px(foot)}`;
  return `${start}H${px(x + width + out)}V${px(bottom - rise)}`;
}

/** Queen cells at the tip, the queen upon the comb. */
function onTop(bar: BarView, bottom: number, frame: Frame): string {
  if (bar.kind === 'bare') return '';
  const { x, width } = combSpan(frame, bar.place);
  const large = isLarge(frame, bar.place);
  const middle = x + width / 2;
  let markup = '';
  const states = cellStatesOf(bar.cells);
  const size = large ? 1.2 : 0.95;
  const y = Math.min(bottom - 5 * size, frame.floor - 10 * size - 2);
  const shown = large && width > 20 ? states : states.slice(0, 1);
  shown.forEach((state, i) => {
    markup += queenCell(state, middle + (i - (shown.length - 1) / 2) * 10 * size, y, size);
  });
  if (bar.queenSeen) markup += queenMark(middle, frame.combTop + Math.min(12, (bottom - frame.combTop) / 2), large ? 1 : 0.75);
  return markup;
}
