/**
 * Forecasts against what came, one dot a forecast: where it lies says how many times as much came as was
 * forecast, by equal steps of doubling; dots of one place stand on each other. Full dots lay inside their
 * ranges, rings did not. What is beyond four times, either way, stands at the edge.
 */
import { scaleLog } from 'd3-scale';
import { element, picture, px, safe } from './svg.ts';

export interface RecordDot {
  /** What came divided by what was forecast, above 0. */
  readonly ratio: number;
  /** What came lay inside the range. */
  readonly inside: boolean;
}

export interface DotOptions {
  readonly width: number;
  readonly label: string;
  readonly fewerWord: string;
  readonly asWord: string;
  readonly moreWord: string;
  /** Size of letters in px, 13 where not given; full sun asks for 20. */
  readonly textSize?: number;
}

const usualText = 13;
const furthest = 4;
const mostHigh = 180;
const [largestDot, smallestDot] = [4, 1.2];

export function recordDots(dots: readonly RecordDot[], options: DotOptions): string {
  const text = options.textSize ?? usualText;
  const radius = radiusFor(dots, options.width);
  const stacks = stacksOf(dots, options.width, radius);
  const tallest = Math.max(1, ...stacks.map((stack) => stack.length));
  const foot = Math.max(text * 2, tallest * radius * 2 + 6);
  const x = xOf(options.width, radius);
  const rule = (ratio: number, dashes: string | null) =>
    element('path', {
      d: `M${px(x(ratio))} 0V${px(foot + 4)}`,
      stroke: 'var(--ink)',
      'stroke-width': 'var(--edge)',
      'stroke-dasharray': dashes,
    });
  const word = (ratio: number, words: string) =>
    element(
      'text',
      { x: x(ratio), y: foot + text * 1.4, 'text-anchor': 'middle', 'font-size': text, fill: 'var(--ink)' },
      safe(words),
    );
  const base = `M0 ${px(foot)}H${px(options.width)}`;
  const drawn =
    rule(0.5, '1 4') +
    rule(1, null) +
    rule(2, '1 4') +
    stacks
      .map((stack, n) =>
        stack.map((dot, i) => mark(dot, (n + 0.5) * 2 * radius, foot - 2 - (2 * i + 1) * radius, radius)).join(''),
      )
      .join('') +
    element('path', { d: base, stroke: 'var(--ink)', 'stroke-width': 'var(--edge)' }) +
    word(0.5, options.fewerWord) +
    word(1, options.asWord) +
    word(2, options.moreWord);
  return picture('record-dots', options.width, foot + text * 1.9, options.label, drawn);
}

function xOf(width: number, radius: number) {
  return scaleLog([1 / furthest, furthest], [radius, width - radius]).clamp(true);
}

/** The largest dots whose tallest stack still has room. */
function radiusFor(dots: readonly RecordDot[], width: number): number {
  for (let radius = largestDot; radius > smallestDot; radius -= 0.2) {
    if (Math.max(0, ...stacksOf(dots, width, radius).map((stack) => stack.length)) * radius * 2 <= mostHigh) return radius;
  }
  return smallestDot;
}

/** Dots by the columns that they stand in, those inside their ranges below. */
function stacksOf(dots: readonly RecordDot[], width: number, radius: number): readonly (readonly RecordDot[])[] {
  const x = xOf(width, radius);
  const columns = Math.floor(width / (2 * radius));
  const stacks: RecordDot[][] = Array.from({ length: columns }, () => []);
  for (const dot of dots) stacks[Math.min(columns - 1, Math.floor(x(Math.max(dot.ratio, 1e-9)) / (2 * radius)))]?.push(dot);
  return stacks.map((stack) => [...stack].sort((a, b) => Number(b.inside) - Number(a.inside)));
}

function mark(dot: RecordDot, cx: number, cy: number, radius: number): string {
  return element('circle', {
    class: dot.inside ? 'inside' : 'outside',
    cx,
    cy,
    r: radius * 0.82,
    fill: dot.inside ? 'var(--ink)' : 'var(--paper)',
    stroke: 'var(--ink)',
    'stroke-width': 'var(--edge)',
  });
}
