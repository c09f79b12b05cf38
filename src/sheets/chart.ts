/**
 * Band charts, one under another on one line of days: what was counted as points with their ranges, what
 * is likely as a line in two bands, what was foretold as brackets, today as a rule. Titles, days and values
 * come in words from the caller; bands keep their edges as lines, so that they survive black on white.
 */
import { extent, max } from 'd3-array';
import { scaleLinear } from 'd3-scale';
import { area, line } from 'd3-shape';
import type { Ink } from '../hive/contents.ts';
import { type Day, dayNumber } from '../numbers/day.ts';
import type { Range } from '../numbers/range.ts';
import { type DayAxis, dayNames, type DayScale, type Sides, tickDays, todayRule } from './day-axis.ts';
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

/** What "as last time" says: one value that stays, and its name in words. */
export interface ChartLevel {
  readonly from: Day;
  readonly value: number;
  readonly label: string;
}

export interface ChartPanel {
  /** Empty where the page says it above the drawing. */
  readonly title: string;
  readonly points: readonly ChartPoint[];
  readonly bands: readonly ChartBand[];
  /** Forecasts as they were issued, each on the day it was for. */
  readonly issued?: readonly { readonly day: Day; readonly range: Range }[];
  /** Where it is no worse than the model: then it is drawn first, and the model ahead of today only by its edges. */
  readonly level?: ChartLevel | null;
}

export interface ChartOptions extends DayAxis {
  readonly width: number;
  readonly panelHeight: number;
  readonly valueLabel: (value: number) => string;
  readonly label: string;
  /** Size of letters in px, 13 where not given; full sun asks for 20. */
  readonly textSize?: number;
}

interface Plot {
  readonly sides: Sides;
  readonly x: DayScale;
  readonly y: DayScale;
  readonly top: number;
  readonly foot: number;
}

const rightPx = 10;
const usualText = 13;

export function chart(panels: readonly ChartPanel[], options: ChartOptions): string {
  const text = options.textSize ?? usualText;
  const sides: Sides = { width: options.width, left: text * 2.8, right: options.width - rightPx, text };
  const x = scaleLinear([dayNumber(options.from), dayNumber(options.to)], [sides.left, sides.right]);
  const days = tickDays(options, sides);
  let drawn = '';
  let top = 0;
  for (const panel of panels) {
    top += panel.title === '' ? text : text * 1.7;
    const foot = top + options.panelHeight - 8;
    const y = scaleLinear([0, Math.max(highest(panel), Number.MIN_VALUE)], [foot, top + 4]).nice(4);
    drawn += element('g', { class: 'panel' }, panelMarkup(panel, { sides, x, y, top, foot }, days, options));
    top += options.panelHeight;
  }
  const height = top + text * 1.7;
  const axis = dayNames(days, options, x, height - text * 0.4, sides);
  return picture('chart', options.width, height, options.label, drawn + axis);
}

function highest(panel: ChartPanel): number {
  const ranges = [
    ...panel.points.map((point) => point.range),
    ...panel.bands.map((band) => band.wide),
    ...(panel.issued ?? []).map((one) => one.range),
  ];
  return max([...ranges.map((range) => range.high), panel.level?.value ?? 0]) ?? 1;
}

function panelMarkup(panel: ChartPanel, plot: Plot, days: readonly Day[], options: ChartOptions): string {
  const title = { x: 0, y: plot.top - 7, 'font-size': plot.sides.text + 1, 'font-weight': 600, fill: 'var(--ink)' };
  return (
    (panel.title === '' ? '' : element('text', title, safe(panel.title))) +
    grid(plot, days, options) +
    bands(panel, plot, options) +
    levelLine(panel.level ?? null, plot) +
    todayRule(options, plot.x, plot.top, plot.foot, plot.sides) +
    (panel.issued ?? []).map((one) => bracket(one.day, one.range, plot)).join('') +
    panel.points.map((point) => pointMark(point, plot)).join('')
  );
}

function grid(plot: Plot, days: readonly Day[], options: ChartOptions): string {
  const values = plot.y.ticks(4);
  const lines = values
    .slice(1)
    .map((value) => `M${px(plot.sides.left)} ${px(plot.y(value))}H${px(plot.sides.right)}`)
    .join('');
  const base =
    `M${px(plot.sides.left)} ${px(plot.foot)}H${px(plot.sides.right)}` +
    days.map((day) => `M${px(plot.x(dayNumber(day)))} ${px(plot.foot)}v4`).join('');
  const texts = values.map((value) =>
    element('text', { x: plot.sides.left - 6, y: plot.y(value) + plot.sides.text * 0.35 }, safe(options.valueLabel(value))),
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
    element('g', { class: 'values', 'font-size': plot.sides.text, 'text-anchor': 'end', fill: 'var(--ink)' }, texts.join(''))
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
  const level = panel.level ?? null;
  const until = level === null ? null : (options.today ?? level.from);
  const filled = (rows: readonly Edge[]) => (until === null ? rows : rows.filter((row) => row.day <= until));
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
    fill(filled(wide), 'band') +
    (half.length === 0 ? '' : fill(filled(half), 'core') + edges(filled(half), null)) +
    edges(wide, '0 3') +
    likely(false) +
    (level === null ? likely(true) : '')
  );
}

/** "As last time", from its day to the end of the chart, with its name over the line. */
function levelLine(level: ChartLevel | null, plot: Plot): string {
  if (level === null) return '';
  const y = plot.y(level.value);
  const text = { x: plot.sides.right, y: y - 5, 'font-size': plot.sides.text, 'text-anchor': 'end', fill: 'var(--ink)' };
  return (
    element('path', {
      class: 'level',
      d: `M${px(plot.x(dayNumber(level.from)))} ${px(y)}H${px(plot.sides.right)}`,
      fill: 'none',
      stroke: 'var(--ink)',
      'stroke-width': 'var(--rule)',
      'stroke-dasharray': '6 4',
    }) + element('text', { ...text, 'paint-order': 'stroke', stroke: 'var(--paper)', 'stroke-width': 3 }, safe(level.label))
  );
}

/** A forecast as it was issued: its range as an open bracket, its likely value as a tick. */
function bracket(day: Day, range: Range, plot: Plot): string {
  const x = plot.x(dayNumber(day));
  const [low, likely, high] = [plot.y(range.low), plot.y(range.likely), plot.y(range.high)];
  return element('path', {
    class: 'issued',
    d: `M${px(x + 4)} ${px(high)}h-8V${px(low)}h8M${px(x - 4)} ${px(likely)}h5`,
    fill: 'none',
    stroke: 'var(--ink)',
    'stroke-width': 'var(--edge)',
  });
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
