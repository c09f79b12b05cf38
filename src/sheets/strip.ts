/**
 * The strip: a trough seen from its long side, combs edge-on under their bars. Shares become depth by
 * the taper of the trough, bar widths are true, unopened combs stay empty dots. What a strip says is in
 * its label, given by the caller; dates stand beside it.
 */
import { type Content, contents, type Ink } from '../hive/contents.ts';
import type { BarView } from '../colony/view.ts';
import { edgeOf, farKindOf, type Kind, markDefs, markFill, type MarkKey, sharedPrefix } from './marks.ts';
import { type Edges, leftOf, type Lens, middleOf, placeEdges, widthOf } from './places.ts';
import { beads, cellStatesOf, followerBoard, queenCell, queenMark } from './small-marks.ts';
import { checkPrefix, element, picture, px } from './svg.ts';
import { depthOfShare, type Taper, taperOf, type Trough } from './taper.ts';

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
  /** Width of bars of which nothing is known. */
  readonly barWidthMm?: number;
}

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
  'honey', 'nectar', 'bread', 'emerging', 'sealed', 'larva', 'egg', 'drone', 'empty',
] as const satisfies readonly Content[];
export const farLayerOrder = ['food', 'capped', 'open', 'vacant'] as const;

const margin = 7;
const barHeight = 6;

export function strip(bars: readonly BarView[], options: StripOptions): string {
  const body = stripBody(bars, options);
  const defs = options.prefix === undefined ? '' : markDefs(options.prefix, 1, body.marks);
  return picture(`strip strip-${options.density}`, options.width, options.height, options.label, defs + body.markup);
}

interface Frame {
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

function frameOf(bars: readonly BarView[], options: StripOptions): Frame {
  const widthsMm = new Map(bars.map((bar) => [bar.place, bar.widthMm]));
  const middle = [...widthsMm.values()].sort((a, b) => a - b)[Math.floor(widthsMm.size / 2)];
  const usualMm = options.barWidthMm ?? middle ?? 1;
  const edges = placeEdges({ ...options, margin, widthsMm, usualMm, lens: options.lens ?? null });
  const barTop = options.current === undefined ? 1.5 : 8;
  const combTop = barTop + barHeight + 0.5;
  const floor = options.height - (options.numbers === true ? 15 : 4);
  return {
    options, prefix: checkPrefix(options.prefix ?? sharedPrefix), taper: taperOf(options), edges, barTop, combTop, floor,
    scale: (floor - combTop) / options.depthMm,
  };
}

function isLarge(frame: Frame, place: number): boolean {
  const { density, lens } = frame.options;
  if (lens === undefined || lens === null) return density === 'near';
  return place >= lens.from && place <= lens.to;
}

/** Walls and floor, with a gap and a sill where the entrance is. */
function trough(frame: Frame): string {
  const { width, entrance } = frame.options;
  const top = frame.barTop;
  const [left, right, floor] = [margin - 1.5, width - margin + 1.5, frame.floor];
  const gap = Math.min(11, (floor - top) / 4);
  const middle = width / 2;
  const wallLeft = entrance === 'first' ? `M${px(left)} ${px(top)}V${px(floor - gap)}M${px(left - 5)} ${px(floor)}H${px(left)}` : `M${px(left)} ${px(top)}V${px(floor)}`;
  const wallRight = entrance === 'last' ? `M${px(right)} ${px(top)}V${px(floor - gap)}M${px(right)} ${px(floor)}H${px(right + 5)}` : `M${px(right)} ${px(top)}V${px(floor)}`;
  const ground = entrance === 'side'
    ? `M${px(left)} ${px(floor)}H${px(middle - 9)}M${px(middle + 9)} ${px(floor)}H${px(right)}M${px(middle - 9)} ${px(floor + 2.5)}H${px(middle + 9)}`
    : `M${px(left)} ${px(floor)}H${px(right)}`;
  return element('path', { class: 'trough', d: wallLeft + ground + wallRight, fill: 'none', stroke: 'var(--ink)', 'stroke-width': 'var(--rule)' });
}

/** The bars from above the combs: black where a comb was seen, wood where bare, hollow or dotted where not known. */
function tops(bars: readonly BarView[], frame: Frame): string {
  const known = new Map(bars.map((bar) => [bar.place, bar]));
  const paths = { seen: '', worked: '', dots: '', bare: '', other: '' };
  for (let place = 1; place <= frame.options.hiveBars; place += 1) {
    const bar = known.get(place);
    const wide = widthOf(frame.edges, place);
    const box = `M${px(leftOf(frame.edges, place) + 0.5)} ${px(frame.barTop)}h${px(wide - 1)}v${barHeight - 1}h${px(1 - wide)}z`;
    if (bar === undefined) paths.other += box;
    else if (bar.kind === 'unknown' || (bar.kind === 'comb' && bar.ink === 'guessed')) paths.dots += box;
    else if (bar.kind === 'bare') paths.bare += box;
    else if (bar.ink === 'seen') paths.seen += box;
    else paths.worked += box;
  }
  const one = (d: string, look: Readonly<Record<string, string | null>>) => (d === '' ? '' : element('path', { d, ...look }));
  return (
    one(paths.other, { fill: 'none', stroke: 'var(--hair)', 'stroke-width': 'var(--fine)' }) +
    one(paths.bare, { fill: 'var(--wood)', stroke: 'var(--ink)', 'stroke-width': 'var(--fine)' }) +
    one(paths.worked, { fill: 'var(--paper)', stroke: 'var(--ink)', 'stroke-width': 'var(--edge)' }) +
    one(paths.dots, { fill: 'none', ...edgeOf('guessed') }) +
    one(paths.seen, { fill: 'var(--ink)', stroke: 'var(--ink)', 'stroke-width': 'var(--edge)' })
  );
}

/** Combs are thinner than bars: bees walk between them. */
function combSpan(frame: Frame, place: number): { x: number; width: number } {
  const wide = widthOf(frame.edges, place);
  const width = wide * (wide < 9 ? 0.84 : 0.72);
  return { x: leftOf(frame.edges, place) + (wide - width) / 2, width };
}

interface Hanging {
  readonly markup: string;
  readonly ink: Ink;
  readonly bottom: number;
}

function comb(bar: BarView, frame: Frame, marks: MarkKey[]): Hanging {
  if (bar.kind === 'bare') return { markup: '', ink: bar.ink, bottom: frame.combTop };
  const { x, width } = combSpan(frame, bar.place);
  // Edges are rounded before heights are taken, so that layers neither gap nor add up to another depth.
  const depthOf = (share: number) => Math.round(depthOfShare(frame.taper, share) * frame.scale * 100) / 100;
  if (bar.kind === 'unknown' || bar.shares === null) {
    const height = depthOf(bar.built > 0 ? bar.built : 1);
    const hollow = element('rect', { x, y: frame.combTop, width, height, fill: 'none' });
    const markup = element('g', { class: 'unknown', 'data-place': bar.place }, hollow);
    return { markup, ink: 'guessed', bottom: frame.combTop + height };
  }
  let sum = 0;
  let inside = '';
  for (const [kind, share] of layersOf(bar.shares, isLarge(frame, bar.place))) {
    if (share <= 0) continue;
    const from = depthOf(sum * bar.built);
    sum += share;
    const to = depthOf(Math.min(1, sum) * bar.built);
    marks.push({ kind, ink: bar.ink });
    inside += element('rect', { x, y: frame.combTop + from, width, height: to - from, fill: markFill(frame.prefix, kind, bar.ink) });
  }
  const markup = element('g', { class: 'comb', 'data-place': bar.place }, inside);
  return { markup, ink: bar.ink, bottom: frame.combTop + depthOf(bar.built) };
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

function boards(frame: Frame): string {
  const { bay, hiveBars } = frame.options;
  const bottom = frame.floor - 0.5;
  let markup = '';
  if (bay.to < hiveBars) {
    const width = Math.max(3.4, Math.min(7, widthOf(frame.edges, bay.to + 1) * 0.4));
    markup += followerBoard(leftOf(frame.edges, bay.to + 1) + 0.5, frame.barTop - 1, width, bottom);
  }
  if (bay.from > 1) {
    const width = Math.max(3.4, Math.min(7, widthOf(frame.edges, bay.from - 1) * 0.4));
    markup += followerBoard(leftOf(frame.edges, bay.from) - width - 0.5, frame.barTop - 1, width, bottom);
  }
  return markup;
}

function numbers(bars: readonly BarView[], frame: Frame): string {
  const { current, hiveBars, lens } = frame.options;
  if (frame.options.numbers !== true) return '';
  const within = (place: number) => lens !== undefined && lens !== null && place >= lens.from && place <= lens.to;
  const wide = bars.length > 0 && widthOf(frame.edges, bars[0]?.place ?? 1) >= 22;
  const y = px(frame.floor + 12);
  let texts = '';
  for (let place = 1; place <= hiveBars; place += 1) {
    const shown = within(place) || (lens === undefined || lens === null ? place % 5 === 0 || place === 1 || wide : false) || place === current;
    if (!shown) continue;
    texts += element('text', { x: middleOf(frame.edges, place), y, 'font-weight': place === current ? 700 : null }, String(place));
  }
  return element('g', { class: 'places', 'font-size': 11.5, 'text-anchor': 'middle', fill: 'var(--ink)' }, texts);
}

function pointer(frame: Frame): string {
  const { current } = frame.options;
  if (current === undefined) return '';
  const x = middleOf(frame.edges, current);
  return element('path', { class: 'current', d: `M${px(x - 5)} .5h10l-5 6z`, fill: 'var(--act)' });
}
