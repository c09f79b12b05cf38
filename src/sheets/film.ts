/**
 * The film of a colony: the strips of all its visits under one another, time running down, combs traced
 * as threads between their places, swarms and splits as branches. Dates and notes are the caller's words.
 */
import type { FilmFrame } from '../colony/view.ts';
import { type Day, daysBetween } from '../numbers/day.ts';
import { markDefs, type MarkKey } from './marks.ts';
import { densityFor, middleOf } from './places.ts';
import { type StripOptions, stripBody } from './strip.ts';
import { element, picture, px, safe } from './svg.ts';
import { branch, branchHeight, branchOf, combsOf, type Hung, threads } from './threads.ts';

export interface FilmStrip {
  readonly frame: FilmFrame;
  /** The day in words, printed beside the strip. */
  readonly date: string;
  /** What happened since the strip above, in words; null when nothing did. */
  readonly note: string | null;
}

export interface FilmOptions extends Omit<StripOptions, 'height' | 'bay' | 'density' | 'lens' | 'current' | 'numbers'> {
  /** Height of one strip. */
  readonly frameHeight: number;
  /** First place of the colony's bay. */
  readonly bayFrom?: number;
  /** even: strips as close as they go; date: further apart the more days lie between. */
  readonly spacing?: 'even' | 'date';
}

/** Narrower than this, dates stand above the strips instead of beside them. */
const beside = 560;
const usualText = 14;
const gapPx = 20;
const perDayPx = 1.2;
const mostExtraPx = 60;

export function film(strips: readonly FilmStrip[], options: FilmOptions): string {
  const wide = options.width >= beside;
  const size = options.textSize ?? usualText;
  const footPx = (options.textSize ?? 11.5) + 3.5;
  const x = wide ? 4.7 * size : 0;
  const width = options.width - x;
  const marks: MarkKey[] = [];
  let y = 0;
  let drawn = '';
  let before: { hung: Hung; day: Day } | null = null;
  strips.forEach((item, i) => {
    y += gapAbove(item, before?.day ?? null, options, wide);
    const last = i === strips.length - 1;
    const hung = hang(item.frame, { ...options, width, height: options.frameHeight + (last ? footPx - 4 : 0) }, x, y, last);
    marks.push(...hung.body.marks);
    const group = element('g', { class: 'frame', transform: `translate(${px(x)} ${px(y)})` }, hung.body.markup);
    drawn +=
      (before === null ? '' : threads(before.hung, hung, combsOf(item.frame.event))) +
      branchAbove(item, before?.hung ?? null, hung, options.width) +
      group;
    drawn += dateText(item, before?.hung ?? null, hung, wide, options);
    y += options.frameHeight;
    before = { hung, day: item.frame.day };
  });
  const defs = options.prefix === undefined ? '' : markDefs(options.prefix, 1, marks);
  return picture('film', options.width, y + footPx, options.label, defs + drawn);
}

function gapAbove(item: FilmStrip, before: Day | null, options: FilmOptions, wide: boolean): number {
  const branches = branchOf(item.frame.event) !== null;
  const size = options.textSize ?? usualText;
  const least = (before === null ? 2 : gapPx) + (wide ? 0 : before === null ? size + 2 : size - 6);
  const gap = branches ? Math.max(least, branchHeight + (wide ? 0 : size + 2)) : least + (wide && item.note !== null ? 6 : 0);
  if (before === null || options.spacing !== 'date') return gap;
  return gap + Math.min(mostExtraPx, Math.max(0, daysBetween(before, item.frame.day)) * perDayPx);
}

function hang(frame: FilmFrame, options: FilmOptions & { height: number }, x: number, y: number, numbers: boolean): Hung {
  const from = options.bayFrom ?? 1;
  const density = densityFor(options.width, options.hiveBars);
  const bay = { from, to: Math.max(from, frame.follower) };
  return { bars: frame.bars, body: stripBody(frame.bars, { ...options, density, bay, numbers }), x, y };
}

function branchAbove(item: FilmStrip, above: Hung | null, below: Hung, width: number): string {
  const kind = branchOf(item.frame.event);
  if (kind === null) return '';
  const { source, endX, top, foot } = branchPlace(item, above, below, width);
  const named = combsOf(item.frame.event);
  const combs = source.bars.filter((bar) => bar.comb !== null && bar.kind !== 'bare');
  const moved = combs.filter((bar) => bar.comb !== null && named.includes(bar.comb));
  const nest = (moved.length > 0 ? moved : combs).map((bar) => source.x + middleOf(source.body.edges, bar.place));
  return branch(kind, nest, top, foot, endX);
}

interface BranchPlace {
  /** The strip whose nest it grows from. */
  readonly source: Hung;
  readonly endX: number;
  readonly top: number;
  readonly foot: number;
}

function branchPlace(item: FilmStrip, above: Hung | null, below: Hung, width: number): BranchPlace {
  const kind = branchOf(item.frame.event);
  const outwards = kind === 'swarm out' || kind === 'bundle out' || kind === 'end';
  const source = outwards && above !== null ? above : below;
  const top = above === null ? below.y - branchHeight : above.y + above.body.floor;
  return { source, endX: endOf(source, width), top, foot: below.y + below.body.barTop };
}

/** Branches end right of the nest, with room left for the note. */
function endOf(source: Hung, width: number): number {
  const rightmost = Math.max(
    0,
    ...source.bars.filter((bar) => bar.kind !== 'bare').map((bar) => middleOf(source.body.edges, bar.place)),
  );
  return Math.min(source.x + rightmost + 30, width * 0.62);
}

/** Room to keep for a letter of a note, for each px of its size. */
const widestLetter = 0.53;
const halo = {
  'paint-order': 'stroke',
  stroke: 'var(--paper)',
  'stroke-width': 4,
  'stroke-linejoin': 'round',
  fill: 'var(--ink)',
};

function dateText(item: FilmStrip, before: Hung | null, hung: Hung, wide: boolean, options: FilmOptions): string {
  const size = options.textSize ?? usualText;
  const middle = hung.y + (hung.body.barTop + hung.body.floor) / 2 + 5;
  const date = element(
    'text',
    { class: 'date', x: wide ? 0 : 2, y: wide ? middle : hung.y - 4, 'font-size': size, 'font-weight': 600, ...halo },
    safe(item.date),
  );
  if (item.note === null) return date;
  const kind = branchOf(item.frame.event);
  const end = { x: options.width - 4, y: hung.y - 5, 'text-anchor': 'end' };
  const spot = kind === null || kind === 'end' ? end : besideBranch(item, before, hung, options.width, size);
  return date + element('text', { class: 'note', ...spot, 'font-size': size * 0.97, ...halo }, safe(item.note));
}

/** Right of the branch where the words fit there, otherwise against the right margin above the strip. */
function besideBranch(
  item: FilmStrip,
  before: Hung | null,
  hung: Hung,
  width: number,
  size: number,
): Readonly<Record<string, string | number>> {
  const { endX, top, foot } = branchPlace(item, before, hung, width);
  const x = endX + 17;
  const fits = x + (item.note ?? '').length * widestLetter * size < width;
  return {
    x: fits ? x : width - 4,
    y: fits ? (top + foot) / 2 + 4.5 : hung.y - 5,
    'text-anchor': fits ? 'start' : 'end',
  };
}
