/**
 * Band charts, one under another on one line of days: what was counted as points with their ranges, what
 * is likely as a line in two bands, today as a rule. Titles, days and values come in words from the
 * caller; bands keep their edges as lines, so that they survive black on white.
 */
import { extent, max } from 'd3-array';
import { scaleLinear, type ScaleLinear } from 'd3-scale';
import { area, line } from 'd3-shape';
import type { Ink } from '../hive/contents.ts';
import { addDays, type Day, dayNumber, daysBetween } from '../numbers/day.ts';
import type { Range } from '../numbers/range.ts';
import { element, picture, px, safe } from './svg.ts';

export interface ChartPoint {
  readonly day: Day;
  readonly range: Range;
  /** seen: counted or weighed, a full dot; worked out: a ring; guessed: a dotted ring. */
  readonly ink: Ink;
}

export interface ChartBand {
  readonly day: Day;
  /** The range that the value should lie in nearly always, and the one it lies in half the time. */
  readonly wide: Range;
  readonly half: Range | null;
}

export interface ChartPanel {
  readonly title: string;
  readonly points: readonly ChartPoint[];
  readonly bands: readonly ChartBand[];
}

export interface ChartOptions {
  readonly width: number;
  readonly panelHeight: number;
  readonly from: Day;
  readonly to: Day;
  readonly today: Day | null;
  readonly todayLabel: string;
  readonly dayLabel: (day: Day) => string;
  readonly valueLabel: (value: number) => string;
  readonly label: string;
  /** Size of letters in px, 13 where not given; full sun asks for 20. */
  readonly textSize?: number;
}

type Scale = ScaleLinear<number, number>;

interface Plot {
  readonly room: Room;
  readonly x: Scale;
  readonly y: Scale;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly foot: number;
}

const rightPx = 10;
const usualText = 13;

/** Room for letters, all from their size. */
interface Room {
  readonly text: number;
  readonly left: number;
  readonly title: number;
  readonly axis: number;
}

function roomOf(options: ChartOptions): Room {
  const text = options.textSize ?? usualText;
  return { text, left: text * 2.8, title: text * 1.7, axis: text * 1.7 };
}

export function chart(panels: readonly ChartPanel[], options: ChartOptions): string {
  const room = roomOf(options);
  const x = scaleLinear([dayNumber(options.from), dayNumber(options.to)], [room.left, options.width - rightPx]);
  const days = tickDays(options, room);
  let drawn = '';
  panels.forEach((panel, i) => {
    const top = i * (options.panelHeight + room.title) + room.title;
    const foot = top + options.panelHeight - 8;
    const y = scaleLinear([0, Math.max(highest(panel), Number.MIN_VALUE)], [foot, top + 4]).nice(4);
    const plot: Plot = { room, x, y, left: room.left, right: options.width - rightPx, top, foot };
    drawn += element('g', { class: 'panel' }, panelMarkup(panel, plot, days, options));
  });
  const height = panels.length * (options.panelHeight + room.title) + room.axis;
  const y = height - room.text * 0.4;
  const texts = days.map((day) => {
    const at = x(dayNumber(day));
    return element('text', { x: at, y, 'text-anchor': anchor(at, options.width, room) }, safe(options.dayLabel(day)));
  });
  const axis = element('g', { class: 'days', 'font-size': room.text, fill: 'var(--ink)' }, texts.join(''));
  return picture('chart', options.width, height, options.label, drawn + axis);
}

function anchor(at: number, width: number, room: Room): string {
  return at > width - room.text * 2.3 ? 'end' : at < room.left + room.text ? 'start' : 'middle';
}

/** Days to name: as many as fit, a whole number of weeks apart where there is room. */
function tickDays(options: ChartOptions, room: Room): readonly Day[] {
  const span = Math.max(1, daysBetween(options.from, options.to));
  const most = Math.max(2, Math.floor((options.width - room.left - rightPx) / (room.text * 4.8)));
  const step = [1, 2, 7, 14, 21, 28, 42, 56, 91, 182, 364].find((days) => span / days <= most) ?? span;
  return Array.from({ length: Math.floor(span / step) + 1 }, (_, i) => addDays(options.from, i * step));
}

function highest(panel: ChartPanel): number {
  return max([...panel.points.map((point) => point.range.high), ...panel.bands.map((band) => band.wide.high)]) ?? 1;
}

function panelMarkup(panel: ChartPanel, plot: Plot, days: readonly Day[], options: ChartOptions): string {
  const title = element(
    'text',
    { x: 0, y: plot.top - 7, 'font-size': plot.room.text + 1, 'font-weight': 600, fill: 'var(--ink)' },
    safe(panel.title),
  );
  return (
    title +
    grid(plot, days, options) +
    bands(panel, plot, options) +
    todayRule(plot, options) +
    panel.points.map((point) => pointMark(point, plot)).join('')
  );
}

function grid(plot: Plot, days: readonly Day[], options: ChartOptions): string {
  const values = plot.y.ticks(4);
  const lines = values
    .slice(1)
    .map((value) => `M${px(plot.left)} ${px(plot.y(value))}H${px(plot.right)}`)
    .join('');
  const base =
    `M${px(plot.left)} ${px(plot.foot)}H${px(plot.right)}` +
    days.map((day) => `M${px(plot.x(dayNumber(day)))} ${px(plot.foot)}v4`).join('');
  const texts = values.map((value) =>
    element('text', { x: plot.left - 6, y: plot.y(value) + plot.room.text * 0.35 }, safe(options.valueLabel(value))),
  );
  return (
    element('path', {
      d: lines,
      stroke: 'var(--hair)',
      'stroke-width': 'var(--edge)',
      'stroke-dasharray': '1 4',
      fill: 'none',
    }) +
    element('path', { d: base, stroke: 'var(--ink)', 'stroke-width': 'var(--edge)', fill: 'none' }) +
    element('g', { class: 'values', 'font-size': plot.room.text, 'text-anchor': 'end', fill: 'var(--ink)' }, texts.join(''))
  );
}

interface Edge {
  readonly day: Day;
  readonly low: number;
  readonly high: number;
}

function bands(panel: ChartPanel, plot: Plot, options: ChartOptions): string {
  const [first] = extent(panel.bands, (band) => dayNumber(band.day));
  if (first === undefined) return '';
  const xOf = (row: { day: Day }) => plot.x(dayNumber(row.day));
  const number = (value: number | undefined) => Math.round((value ?? 0) * 10) / 10;
  const fill = (rows: readonly Edge[], tint: string) =>
    element('path', {
      d:
        area<Edge>()
          .x(xOf)
          .y0((row) => number(plot.y(row.low)))
          .y1((row) => number(plot.y(row.high)))
          .digits(1)([...rows]) ?? '',
      fill: `var(--${tint})`,
    });
  const path = (rows: readonly Edge[], pick: (row: Edge) => number) =>
    line<Edge>()
      .x(xOf)
      .y((row) => plot.y(pick(row)))
      .digits(1)([...rows]) ?? '';
  const edges = (rows: readonly Edge[], dots: string | null) =>
    element('path', {
      d: path(rows, (row) => row.low) + path(rows, (row) => row.high),
      fill: 'none',
      stroke: 'var(--act)',
      'stroke-width': 'var(--edge)',
      'stroke-dasharray': dots,
      'stroke-linecap': dots === null ? null : 'round',
    });
  const wide = panel.bands.map(({ day, wide: range }) => ({ day, low: range.low, high: range.high }));
  const half = panel.bands.flatMap(({ day, half: range }) => (range === null ? [] : [{ day, low: range.low, high: range.high }]));
  const likely = (after: boolean) => {
    const rows = panel.bands.filter((band) =>
      options.today === null ? !after : after ? band.day >= options.today : band.day <= options.today,
    );
    const d = path(
      rows.map(({ day, wide: range }) => ({ day, low: range.likely, high: range.likely })),
      (row) => row.low,
    );
    return d === ''
      ? ''
      : element('path', {
          class: 'likely',
          d,
          fill: 'none',
          stroke: 'var(--ink)',
          'stroke-width': 'var(--rule)',
          'stroke-dasharray': after ? '6 4' : null,
        });
  };
  return (
    fill(wide, 'band') +
    (half.length === 0 ? '' : fill(half, 'core') + edges(half, null)) +
    edges(wide, '0 3') +
    likely(false) +
    likely(true)
  );
}

function todayRule(plot: Plot, options: ChartOptions): string {
  if (options.today === null || options.today < options.from || options.today > options.to) return '';
  const x = plot.x(dayNumber(options.today));
  const flip = x > plot.right - 60;
  const text = {
    x: x + (flip ? -5 : 5),
    y: plot.top + 6,
    'font-size': plot.room.text,
    'text-anchor': flip ? 'end' : 'start',
    fill: 'var(--ink)',
  };
  return (
    element('path', {
      class: 'today',
      d: `M${px(x)} ${px(plot.top - 4)}V${px(plot.foot)}`,
      stroke: 'var(--ink)',
      'stroke-width': 'var(--edge)',
    }) +
    element('text', { ...text, 'paint-order': 'stroke', stroke: 'var(--paper)', 'stroke-width': 3 }, safe(options.todayLabel))
  );
}

function pointMark(point: ChartPoint, plot: Plot): string {
  const x = plot.x(dayNumber(point.day));
  const [low, high] = [plot.y(point.range.low), plot.y(point.range.high)];
  const bar =
    high === low
      ? ''
      : element('path', {
          d: `M${px(x)} ${px(high)}V${px(low)}M${px(x - 3)} ${px(high)}h6M${px(x - 3)} ${px(low)}h6`,
          fill: 'none',
          stroke: 'var(--ink)',
          'stroke-width': 'var(--edge)',
        });
  const ring = {
    cx: x,
    cy: plot.y(point.range.likely),
    r: point.ink === 'seen' ? 4.2 : 3.8,
    fill: point.ink === 'seen' ? 'var(--ink)' : 'var(--paper)',
    stroke: 'var(--ink)',
    'stroke-width': point.ink === 'guessed' ? 'var(--rule)' : 'var(--edge)',
    'stroke-dasharray': point.ink === 'guessed' ? '0 2.4' : null,
    'stroke-linecap': point.ink === 'guessed' ? 'round' : null,
  };
  return element('g', { class: 'counted' }, bar + element('circle', ring));
}
