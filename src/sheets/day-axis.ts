/**
 * The days under a drawing whose time runs from left to right: which of them are named, and the rule of
 * today. Charts and ribbons share it, so that one day stands at one place in all of them.
 */
import type { ScaleLinear } from 'd3-scale';
import { addDays, type Day, dayNumber, daysBetween } from '../numbers/day.ts';
import { element, px, safe } from './svg.ts';

export interface DayAxis {
  readonly from: Day;
  readonly to: Day;
  readonly today: Day | null;
  readonly todayLabel: string;
  readonly dayLabel: (day: Day) => string;
}

/** Where the drawing lies on its page, in px, and how large its letters are. */
export interface Sides {
  readonly width: number;
  readonly left: number;
  readonly right: number;
  readonly text: number;
}

export type DayScale = ScaleLinear<number, number>;

/** Days to name: as many as fit, a whole number of weeks apart where there is room. */
export function tickDays(axis: DayAxis, sides: Sides): readonly Day[] {
  const span = Math.max(1, daysBetween(axis.from, axis.to));
  const most = Math.max(2, Math.floor((sides.right - sides.left) / (sides.text * 4.8)));
  const step = [1, 2, 7, 14, 21, 28, 42, 56, 91, 182, 364].find((days) => span / days <= most) ?? span;
  return Array.from({ length: Math.floor(span / step) + 1 }, (_, i) => addDays(axis.from, i * step));
}

/** The names of the days, on a line of letters at `y`. */
export function dayNames(days: readonly Day[], axis: DayAxis, x: DayScale, y: number, sides: Sides): string {
  const texts = days.map((day) => {
    const at = x(dayNumber(day));
    return element('text', { x: at, y, 'text-anchor': anchorOf(at, sides) }, safe(axis.dayLabel(day)));
  });
  return element('g', { class: 'days', 'font-size': sides.text, fill: 'var(--ink)' }, texts.join(''));
}

function anchorOf(at: number, { width, left, text }: Sides): string {
  return at > width - text * 2.3 ? 'end' : at < left + text ? 'start' : 'middle';
}

/** A rule through today from `top` to `foot`, with its word; nothing when today is not on the axis. */
export function todayRule(axis: DayAxis, x: DayScale, top: number, foot: number, sides: Sides): string {
  if (axis.today === null || axis.today < axis.from || axis.today > axis.to) return '';
  const at = x(dayNumber(axis.today));
  const flip = at > sides.right - 60;
  const text = {
    x: at + (flip ? -5 : 5),
    y: top + 6,
    'font-size': sides.text,
    'text-anchor': flip ? 'end' : 'start',
    fill: 'var(--ink)',
  };
  return (
    element('path', {
      class: 'today',
      d: `M${px(at)} ${px(top - 4)}V${px(foot)}`,
      stroke: 'var(--ink)',
      'stroke-width': 'var(--edge)',
    }) + element('text', { ...text, 'paint-order': 'stroke', stroke: 'var(--paper)', 'stroke-width': 3 }, safe(axis.todayLabel))
  );
}
