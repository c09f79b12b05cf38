/**
 * The wood of a strip and what is written on it: walls, floor and entrance, bars from above the combs,
 * follower boards, place numbers, and the pointer at the bar in hand.
 */
import type { BarView } from '../colony/view.ts';
import { edgeOf } from './marks.ts';
import { leftOf, middleOf, widthOf } from './places.ts';
import { followerBoard } from './small-marks.ts';
import { barHeight, type Frame, margin, usualText } from './strip-frame.ts';
import { element, px } from './svg.ts';

/** Walls and floor, with a gap and a sill where the entrance is. */
export function trough(frame: Frame): string {
  const { width, entrance } = frame.options;
  const top = frame.barTop;
  const [left, right, floor] = [margin - 1.5, width - margin + 1.5, frame.floor];
  const gap = Math.min(11, (floor - top) / 4);
  const middle = width / 2;
  const wall = (x: number, open: boolean) => `M${px(x)} ${px(top)}V${px(open ? floor - gap : floor)}`;
  const ground = (from: number, to: number, y = floor) => `M${px(from)} ${px(y)}H${px(to)}`;
  const sill = 5;
  const from = entrance === 'first' ? left - sill : left;
  const to = entrance === 'last' ? right + sill : right;
  const below =
    entrance === 'side'
      ? ground(from, middle - 9) + ground(middle + 9, to) + ground(middle - 9, middle + 9, floor + 2.5)
      : ground(from, to);
  return element('path', {
    class: 'trough',
    d: wall(left, entrance === 'first') + below + wall(right, entrance === 'last'),
    fill: 'none',
    stroke: 'var(--ink)',
    'stroke-width': 'var(--rule)',
  });
}

/** The bars from above the combs: black where a comb was seen, wood where bare, hollow or dotted where not known. */
export function tops(bars: readonly BarView[], frame: Frame): string {
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

export function boards(frame: Frame): string {
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

/** Every place in the lens or where bars are wide enough, otherwise the first and every fifth; always the bar in hand. */
export function numbers(bars: readonly BarView[], frame: Frame): string {
  const { current, hiveBars, lens } = frame.options;
  if (frame.options.numbers !== true) return '';
  const size = frame.options.textSize ?? usualText;
  const hasLens = lens !== undefined && lens !== null;
  const all = widthOf(frame.edges, bars[0]?.place ?? 1) >= 1.9 * size;
  const asked = (place: number) => (hasLens ? place >= lens.from && place <= lens.to : all || place % 5 === 0 || place === 1);
  let texts = '';
  let last = Number.NEGATIVE_INFINITY;
  for (let place = 1; place <= hiveBars; place += 1) {
    const x = middleOf(frame.edges, place);
    const room = x - last >= 1.3 * size && (current === undefined || Math.abs(middleOf(frame.edges, current) - x) >= 1.3 * size);
    if (place !== current && !(asked(place) && room)) continue;
    last = x;
    texts += element('text', { x, y: frame.floor + size + 0.5, 'font-weight': place === current ? 700 : null }, String(place));
  }
  return element('g', { class: 'places', 'font-size': size, 'text-anchor': 'middle', fill: 'var(--ink)' }, texts);
}

export function pointer(frame: Frame): string {
  const { current } = frame.options;
  if (current === undefined) return '';
  const x = middleOf(frame.edges, current);
  return element('path', { class: 'current', d: `M${px(x - 5)} .5h10l-5 6z`, fill: 'var(--act)' });
}
