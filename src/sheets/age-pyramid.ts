/**
 * Bees and brood by age: time runs up, from the egg at the foot over the day it leaves its cell to the oldest
 * bees. Daughters of the queen before lie to the left, hatched; those of the queen that reigns to the right,
 * solid. An area is a number of bees, whatever the width of its class of ages; the last class holds all that
 * are older, so it is drawn as high as it takes to be no longer than the others, with a word instead of an age.
 */
import { max } from 'd3-array';
import type { AgeClass, Ages } from '../colony/foreseen.ts';
import { checkPrefix, element, picture, px, safe } from './svg.ts';

export interface PyramidOptions {
  readonly width: number;
  /** About how high the ages may stand together; long lives are drawn in thinner days. */
  readonly height: number;
  readonly label: string;
  readonly prefix: string;
  /** Heads of the two sides; the old queen's is left out when none of her daughters are left. */
  readonly oldWord: string;
  readonly newWord: string;
  readonly adultsWord: string;
  readonly broodWord: string;
  /** For the last class of the bees, where it is drawn higher than its days. */
  readonly olderWord: string;
  /** Words for an age on the axis: "20 days". */
  readonly ageLabel: (days: number) => string;
  /** Size of letters in px, 13 where not given; full sun asks for 20. */
  readonly textSize?: number;
}

interface Plot {
  readonly text: number;
  /** Where both sides meet. */
  readonly middle: number;
  /** Px for one bee a day of age, and for one day of age. */
  readonly perBee: number;
  readonly perDay: number;
  readonly head: number;
  /** The line between bees and brood. */
  readonly ground: number;
  readonly foot: number;
}

const usualText = 13;
const fewestDayPx = 1.2;
const mostDayPx = 5;
/** As high as the oldest are ever drawn, in days of age: our choice. */
const mostOpenDays = 60;

export function agePyramid(ages: Ages, options: PyramidOptions): string {
  checkPrefix(options.prefix);
  const brood = trimmed(ages.brood).map(drawnOf);
  const adults = opened(trimmed(ages.adults).map(drawnOf), brood);
  const plot = plotOf(adults, brood, options);
  const drawn =
    hatch(options.prefix) +
    heads(
      plot,
      [...adults, ...brood].some((row) => row.ofOld >= 1),
      options,
    ) +
    axis(adults, brood, plot, options) +
    adults.map((row) => bars(row, plot.ground - row.to * plot.perDay, plot, options)).join('') +
    brood.map((row) => bars(row, plot.foot - row.to * plot.perDay, plot, options)).join('');
  // Little brood is lower than its word.
  const foot = brood.length === 0 ? plot.foot : Math.max(plot.foot, plot.ground + plot.text + 4);
  return picture('age-pyramid', options.width, foot + plot.text * 0.5, options.label, drawn);
}

/** The classes without the empty ones after the last bee. */
function trimmed(rows: readonly AgeClass[]): readonly AgeClass[] {
  const last = rows.findLastIndex((row) => row.ofOld + row.ofNew >= 1);
  return rows.slice(0, last + 1);
}

/** A class as it is drawn: from one edge to the next, in days. */
interface DrawnClass {
  readonly from: number;
  readonly to: number;
  readonly ofOld: number;
  readonly ofNew: number;
}

function drawnOf({ fromAge, toAge, ofOld, ofNew }: AgeClass): DrawnClass {
  return { from: fromAge, to: toAge + 1, ofOld, ofNew };
}

/** The last class made higher where it holds the bees of more days than its own; more than a winter it never is. */
function opened(adults: readonly DrawnClass[], brood: readonly DrawnClass[]): readonly DrawnClass[] {
  const last = adults.at(-1);
  if (last === undefined) return adults;
  const others = [...adults.slice(0, -1), ...brood].map(perDayOf);
  const most = max(others, (row) => Math.max(row.old, row.new)) ?? 0;
  const days = Math.min(mostOpenDays, Math.max(last.ofOld, last.ofNew) / Math.max(most, 1));
  return [...adults.slice(0, -1), { ...last, to: Math.max(last.to, last.from + days) }];
}

function perDayOf({ from, to, ofOld, ofNew }: DrawnClass): { readonly old: number; readonly new: number } {
  return { old: ofOld / (to - from), new: ofNew / (to - from) };
}

function plotOf(adults: readonly DrawnClass[], brood: readonly DrawnClass[], options: PyramidOptions): Plot {
  const text = options.textSize ?? usualText;
  const rows = [...adults, ...brood].map(perDayOf);
  const [most, leastLeft] = [max(rows, (row) => row.new) ?? 0, max(rows, (row) => row.old) ?? 0];
  const left = text * 4.6;
  const perBee = (options.width - left - 2) / Math.max(most + leastLeft, 1);
  const [broodDays, adultDays] = [brood.at(-1)?.to ?? 0, adults.at(-1)?.to ?? 0];
  const perDay = Math.min(mostDayPx, Math.max(fewestDayPx, options.height / Math.max(1, broodDays + adultDays)));
  const head = text * 1.7;
  const ground = head + adultDays * perDay;
  // Between bees and brood stands the line of the day on which they leave their cells.
  return { text, middle: left + leastLeft * perBee, perBee, perDay, head, ground, foot: ground + 3 + broodDays * perDay };
}

function bars(row: DrawnClass, top: number, plot: Plot, options: PyramidOptions): string {
  const days = perDayOf(row);
  const height = (row.to - row.from) * plot.perDay;
  const bar = (x: number, width: number, side: 'old' | 'new') =>
    width <= 0
      ? ''
      : element('rect', {
          class: side,
          x,
          y: top,
          width,
          height,
          fill: side === 'old' ? `url(#${options.prefix}-hatch)` : 'var(--ink)',
          stroke: side === 'old' ? 'var(--ink)' : 'var(--paper)',
          'stroke-width': side === 'old' ? 'var(--edge)' : 0.5,
        });
  const old = days.old * plot.perBee;
  return bar(plot.middle - old, old, 'old') + bar(plot.middle, days.new * plot.perBee, 'new');
}

function hatch(prefix: string): string {
  const line = { d: 'M0 0V5', stroke: 'var(--ink)', 'stroke-width': 'calc(var(--edge)*1.2)' };
  const ground = element('path', { d: 'M0 0H5V5H0Z', fill: 'var(--paper)' });
  const tile = { id: `${prefix}-hatch`, width: 5, height: 5, patternUnits: 'userSpaceOnUse', patternTransform: 'rotate(45)' };
  return element('defs', {}, element('pattern', tile, ground + element('path', line)));
}

function heads(plot: Plot, withOld: boolean, options: PyramidOptions): string {
  const head = (x: number, anchor: string, word: string) =>
    element('text', { x, y: plot.text, 'text-anchor': anchor, 'font-weight': 600 }, safe(word));
  const inside = (withOld ? head(0, 'start', options.oldWord) : '') + head(options.width, 'end', options.newWord);
  return element('g', { class: 'heads', 'font-size': plot.text, fill: 'var(--ink)' }, inside);
}

/** Ages at the left, as many as letters have room for, and the words for bees and brood on both sides of the ground. */
function axis(adults: readonly DrawnClass[], brood: readonly DrawnClass[], plot: Plot, options: PyramidOptions): string {
  const { text } = plot;
  const step = [5, 10, 20, 40, 80].find((days) => days * plot.perDay >= text * 1.3) ?? 80;
  const agesFrom = (zero: number, until: number) =>
    Array.from({ length: Math.floor(until / step) + 1 }, (_, i) => ({ age: i * step, y: zero - i * step * plot.perDay }));
  const last = adults.at(-1);
  // Within the last class ages are not known apart where it was drawn higher.
  const open = last !== undefined && last.to - last.from > (adults[0] ? adults[0].to - adults[0].from : 0) + 1;
  const marked = [
    ...agesFrom(plot.ground, open ? last.from : (last?.to ?? 0)).filter(({ y }) => y < plot.ground - text * 1.9),
    ...agesFrom(plot.foot, brood.at(-1)?.to ?? 0).filter(({ y }) => y > plot.ground + text * 2.4),
  ];
  const older = open ? plot.ground - ((last.from + last.to) / 2) * plot.perDay : null;
  const word = (y: number, words: string, weight: number | null = null) =>
    element('text', { x: 0, y, 'font-weight': weight }, safe(words));
  const lines = marked.map(({ y }) => `M${px(text * 4.3)} ${px(y)}H${px(options.width)}`).join('');
  const hair = { d: lines, fill: 'none', stroke: 'var(--hair)', 'stroke-width': 'var(--edge)', 'stroke-dasharray': '1 4' };
  const middle = `M${px(plot.middle)} ${px(plot.head)}V${px(plot.foot)}`;
  const ground = `M0 ${px(plot.ground + 1.5)}H${px(options.width)}`;
  const words =
    marked.map(({ age, y }) => word(Math.min(y + text * 0.35, plot.foot), options.ageLabel(age))).join('') +
    (older === null || marked.some(({ y }) => Math.abs(y - older) < text) ? '' : word(older + text * 0.35, options.olderWord)) +
    word(plot.ground - 5, options.adultsWord, 600) +
    (brood.length === 0 ? '' : word(plot.ground + text + 4, options.broodWord, 600));
  return (
    element('path', hair) +
    element('path', { d: middle, fill: 'none', stroke: 'var(--ink)', 'stroke-width': 'var(--edge)' }) +
    element('path', { class: 'ground', d: ground, fill: 'none', stroke: 'var(--ink)', 'stroke-width': 'var(--rule)' }) +
    element('g', { class: 'ages', 'font-size': text, fill: 'var(--ink)' }, words)
  );
}
