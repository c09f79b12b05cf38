/**
 * The queen through time as a ribbon: every day is as high as the one before, and each state takes the part
 * of it that is its chance. Patterns picture the state, its word stands on it where it fits; behind today in
 * fine lines, ahead in dots. Below it the days on which a look does harm, and the day from which one tells.
 */
import { scaleLinear } from 'd3-scale';
import { type QueenState, queenStates } from '../colony/queen-state.ts';
import { type Day, dayNumber, earlier, later } from '../numbers/day.ts';
import type { Window } from '../numbers/window.ts';
import { type DayAxis, dayNames, type DayScale, type Sides, tickDays, todayRule } from './day-axis.ts';
import { edgeOf } from './marks.ts';
import { queenDefs, queenFill, type QueenInk } from './queen-marks.ts';
import { element, picture, px, safe } from './svg.ts';

/** Chances of one day in the order of `queenStates`. Two rows of one day, before a visit and after it, make a step. */
export interface RibbonRow {
  readonly day: Day;
  readonly chances: readonly number[];
}

export interface RibbonOptions extends DayAxis {
  readonly width: number;
  /** Of the ribbon itself, without what stands above and below. */
  readonly height: number;
  readonly label: string;
  readonly prefix: string;
  readonly words: Readonly<Record<QueenState, string>>;
  /** Days on which the hive was opened: a solid tick over the ribbon. */
  readonly visits: readonly Day[];
  readonly harmful: readonly Window[];
  readonly harmWord: string;
  readonly telling: Day | null;
  readonly tellingWord: string;
  /** Size of letters in px, 13 where not given; full sun asks for 20. */
  readonly textSize?: number;
}

interface Plot {
  readonly x: DayScale;
  readonly top: number;
  readonly foot: number;
  readonly sides: Sides;
}

const usualText = 13;
const sidePx = 1;
/** A state that is never likelier than this is left out; its part of the ribbon stays blank. */
const leastChance = 0.025;
/** A state without a word on the ribbon is named beside it when it was ever likelier than this. */
const leastNamed = 0.08;

export interface Ribbon {
  readonly svg: string;
  /** States on it whose word had no room; the caller names them beside it. */
  readonly unnamed: readonly QueenState[];
}

export function queenRibbon(rows: readonly RibbonRow[], options: RibbonOptions): Ribbon {
  const text = options.textSize ?? usualText;
  const sides: Sides = { width: options.width, left: sidePx, right: options.width - sidePx, text };
  const x = scaleLinear([dayNumber(options.from), dayNumber(options.to)], [sides.left, sides.right]);
  const top = text * 1.5;
  const plot: Plot = { x, sides, top, foot: top + options.height };
  const shown = rows.filter((row) => options.from <= row.day && row.day <= options.to);
  const days = tickDays(options, sides);
  const ticks = days.map((day) => `M${px(x(dayNumber(day)))} ${px(plot.foot)}v4`).join('');
  const lanes = [harmLane(options, plot), ...tellingLanes(options, plot)].filter((lane) => lane !== null);
  const layers = layersOf(shown, x);
  const words = layers.map((layer) => wordOn(layer, options, plot));
  const laneFoot = plot.foot + text * 1.9;
  const drawn =
    queenDefs(options.prefix, text / usualText) +
    areas(shown, options, plot) +
    element('path', { d: frameOf(plot) + ticks, fill: 'none', stroke: 'var(--ink)', 'stroke-width': 'var(--edge)' }) +
    visitTicks(options, plot) +
    words.join('') +
    todayRule(options, x, top - text * 0.9, plot.foot + 4, sides) +
    dayNames(days, options, x, laneFoot - text * 0.5, sides) +
    lanes.map((lane, i) => lane(laneFoot + i * text * 1.7)).join('');
  return {
    svg: picture('queen-ribbon', options.width, laneFoot + lanes.length * text * 1.7, options.label, drawn),
    unnamed: layers.filter((layer, i) => words[i] === '' && mostOf(layer) >= leastNamed).map((layer) => layer.state),
  };
}

function frameOf({ sides, top, foot }: Plot): string {
  return `M${px(sides.left)} ${px(top)}H${px(sides.right)}V${px(foot)}H${px(sides.left)}Z`;
}

/** Where each state lies on a day: its lower and upper edge as shares of the ribbon, from the foot up. */
interface Layer {
  readonly state: QueenState;
  readonly edges: readonly { readonly x: number; readonly low: number; readonly high: number }[];
}

function layersOf(rows: readonly RibbonRow[], x: DayScale): readonly Layer[] {
  return queenStates.flatMap((state, n): Layer[] => {
    if (rows.every((row) => (row.chances[n] ?? 0) < leastChance)) return [];
    const edges = rows.map((row) => {
      const low = row.chances.slice(0, n).reduce((sum, chance) => sum + chance, 0);
      return { x: x(dayNumber(row.day)), low, high: low + (row.chances[n] ?? 0) };
    });
    return [{ state, edges }];
  });
}

function mostOf({ edges }: Layer): number {
  return Math.max(...edges.map(({ low, high }) => high - low));
}

function areas(rows: readonly RibbonRow[], options: RibbonOptions, plot: Plot): string {
  const { today } = options;
  const behind = today === null ? rows : rows.filter((row) => row.day <= today);
  const ahead = today === null ? [] : rows.filter((row) => row.day >= today);
  const last = behind.at(-1);
  const joined = last !== undefined && ahead[0]?.day !== last.day ? [last, ...ahead] : ahead;
  return inkAreas(behind, 'worked out', options, plot) + inkAreas(joined, 'guessed', options, plot);
}

function inkAreas(rows: readonly RibbonRow[], ink: QueenInk, options: RibbonOptions, plot: Plot): string {
  if (rows.length < 2) return '';
  const y = (share: number) => plot.foot - share * (plot.foot - plot.top);
  return layersOf(rows, plot.x)
    .map(({ state, edges }) => {
      const up = edges.map((edge) => `${px(edge.x)} ${px(y(edge.high))}`);
      const down = edges.map((edge) => `${px(edge.x)} ${px(y(edge.low))}`).reverse();
      return element('path', {
        class: 'state',
        'data-state': state,
        d: `M${[...up, ...down].join('L')}Z`,
        fill: queenFill(options.prefix, state, ink),
        ...edgeOf(ink === 'guessed' ? 'guessed' : 'seen'),
      });
    })
    .join('');
}

function visitTicks({ visits, from, to }: RibbonOptions, { x, top, sides }: Plot): string {
  const dot = (day: Day) => Math.min(sides.right - 2, Math.max(sides.left + 2, x(dayNumber(day))));
  return visits
    .filter((day) => from <= day && day <= to)
    .map((day) => element('circle', { class: 'visit', cx: dot(day), cy: top - 5, r: 2.6, fill: 'var(--ink)' }))
    .join('');
}

/** About how wide a letter of the plain face is, as a share of its size. */
const letterWidth = 0.53;

/** A state's word: along the ribbon where its part is thick enough, else up it, else nothing. */
function wordOn(layer: Layer, options: RibbonOptions, plot: Plot): string {
  const { text } = plot.sides;
  const word = options.words[layer.state];
  const long = word.length * text * letterWidth + 8;
  const along = roomiest(layer, long, text * 1.15, plot);
  const place = along ?? roomiest(layer, text * 1.15, long, plot);
  if (place === null) return '';
  const at = along === null ? { x: 0, y: text * 0.35, transform: upright(place) } : { x: place.x, y: place.y + text * 0.35 };
  const letters = { 'text-anchor': 'middle', 'font-size': text, 'font-weight': 600, fill: 'var(--ink)' };
  const ground = { 'paint-order': 'stroke', stroke: 'var(--paper)', 'stroke-width': text * 0.45, 'stroke-linejoin': 'round' };
  return element('text', { class: 'word', ...at, ...letters, ...ground }, safe(word));
}

function upright({ x, y }: Spot): string {
  return `translate(${px(x)} ${px(y)}) rotate(-90)`;
}

interface Spot {
  readonly x: number;
  readonly y: number;
}

/** Where a box of this size has the most room above and below it inside a layer; null where it fits nowhere. */
function roomiest({ edges }: Layer, width: number, height: number, plot: Plot): Spot | null {
  const high = plot.foot - plot.top;
  let best: (Spot & { readonly thick: number }) | null = null;
  for (const { x } of edges) {
    if (x - width / 2 < plot.sides.left || x + width / 2 > plot.sides.right) continue;
    const under = edges.filter((edge) => Math.abs(edge.x - x) <= width / 2);
    const low = Math.max(...under.map((edge) => edge.low));
    const top = Math.min(...under.map((edge) => edge.high));
    const thick = (top - low) * high;
    if (thick >= height && thick > (best?.thick ?? 0)) best = { x, y: plot.foot - ((low + top) / 2) * high, thick };
  }
  return best;
}

type Lane = (top: number) => string;

/** Days on which a look does harm: a double rule, as the slips of hives that stay shut have it. */
function harmLane(options: RibbonOptions, { x, sides }: Plot): Lane | null {
  const spans = merged(options.harmful, options).map(({ earliest, latest }) => {
    const left = x(dayNumber(earliest));
    return [left, Math.max(left + 6, x(dayNumber(latest)))] as const;
  });
  if (spans.length === 0) return null;
  return (top) => {
    const rules = spans.map(([a, b]) => `M${px(a)} ${px(top)}H${px(b)}M${px(a)} ${px(top + 3)}H${px(b)}`).join('');
    const stroke = { fill: 'none', stroke: 'var(--warn)', 'stroke-width': 'var(--edge)' };
    const [first] = spans;
    const at = first?.[0] ?? 0;
    return element('path', { class: 'harm', d: rules, ...stroke }) + laneWord(options.harmWord, at, top + 3, sides);
  };
}

/** The day from which a look tells: an open wedge that points up at the ribbon's days, its word beside it or, without room, below. */
function tellingLanes(options: RibbonOptions, { x, sides }: Plot): readonly Lane[] {
  const { telling, tellingWord } = options;
  if (telling === null || telling < options.from || telling > options.to) return [];
  const at = x(dayNumber(telling));
  const wedge: Lane = (top) => {
    const d = `M${px(at)} ${px(top)}l5 8h-10Z`;
    return element('path', { class: 'telling', d, fill: 'var(--paper)', stroke: 'var(--ink)', 'stroke-width': 'var(--edge)' });
  };
  const long = lengthOf(tellingWord, sides);
  if (at + 9 + long >= sides.right && at - 9 - long <= sides.left)
    return [wedge, (top) => laneWord(tellingWord, Math.max(sides.left, sides.right - long), top - sides.text / 2, sides)];
  return [(top) => wedge(top) + laneWord(tellingWord, at + 9, top - 2, sides, at - 9)];
}

/** A word under its mark; it ends at `end` instead where it would run out of the drawing. */
function laneWord(word: string, start: number, top: number, sides: Sides, end = sides.right): string {
  const fits = start + lengthOf(word, sides) < sides.right;
  const at = { x: fits ? start : end, y: top + sides.text, 'text-anchor': fits ? 'start' : 'end', 'font-size': sides.text };
  return element('text', { ...at, fill: 'var(--ink)' }, safe(word));
}

function lengthOf(word: string, { text }: Sides): number {
  return word.length * text * letterWidth;
}

/** Windows that touch become one; what lies outside the drawing is cut off. */
function merged(windows: readonly Window[], { from, to }: RibbonOptions): readonly Window[] {
  const inside = windows
    .filter(({ earliest, latest }) => latest >= from && earliest <= to)
    .map(({ earliest, latest }) => ({ earliest: later(earliest, from), latest: earlier(latest, to) }))
    .sort((a, b) => (a.earliest < b.earliest ? -1 : 1));
  const found: Window[] = [];
  for (const window of inside) {
    const last = found.at(-1);
    if (last === undefined || window.earliest > last.latest) found.push(window);
    else found[found.length - 1] = { earliest: last.earliest, latest: later(last.latest, window.latest) };
  }
  return found;
}
