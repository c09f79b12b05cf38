/**
 * What many replicates say: how often the middle 90 % held the truth, whether the places are even (chi-square on
 * twenty bins), how many ancestors were left; with the bounds that the project asks of itself, and as text.
 */
import { chiSquareAbove } from './chi-square.ts';
import { type Placed, type Question, questions } from './replicate.ts';

export const bins = 20;

export interface Summary {
  readonly replicates: number;
  readonly eventful: number;
  readonly ancestors: { readonly least: number; readonly middle: number };
  readonly effective: { readonly least: number; readonly middle: number };
  readonly rows: readonly Row[];
  readonly ok: boolean;
}

export interface Row {
  readonly question: Question;
  /** Share of replicates with the truth inside the middle 90 %, and inside the middle half. */
  readonly held90: number;
  readonly held50: number;
  readonly bounds: readonly [number, number];
  /** Chance of places so uneven or more, were they even. */
  readonly rankP: number;
  /** Asked of bees and of counts, not of what the colony is like. */
  readonly rankAsked: boolean;
  readonly histogram: readonly number[];
  readonly ok: boolean;
}

/** Gates: final bees and next count .85–.94 and even ranks; what the colony is like and the scales .80–.96. */
const states = [0.85, 0.94] as const;
const parameters = [0.8, 0.96] as const;
const leastRankP = 0.01;

export function summarise(placed: readonly Placed[]): Summary {
  const rows = questions.map((question) => rowOf(question, placed));
  return {
    replicates: placed.length,
    eventful: placed.filter(({ eventful }) => eventful).length,
    ancestors: spreadOf(placed.map(({ ancestors }) => ancestors)),
    effective: spreadOf(placed.map(({ effective }) => effective)),
    rows,
    ok: rows.every(({ ok }) => ok),
  };
}

function rowOf(question: Question, placed: readonly Placed[]): Row {
  const places = placed.map(({ places }) => places[question]);
  const held = (share: number): number => places.filter((place) => Math.abs(place - 1 / 2) <= share / 2).length / places.length;
  const histogram = Array.from({ length: bins }, () => 0);
  for (const place of places) histogram[Math.min(bins - 1, Math.floor(place * bins))]! += 1;
  const expected = places.length / bins;
  const square = histogram.reduce((sum, count) => sum + (count - expected) ** 2 / expected, 0);
  const rankAsked = question === 'bees' || question === 'next count';
  const bounds = rankAsked ? states : parameters;
  const held90 = held(0.9);
  const rankP = chiSquareAbove(square, bins - 1);
  return {
    question,
    held90,
    held50: held(0.5),
    bounds,
    rankP,
    rankAsked,
    histogram,
    ok: held90 >= bounds[0] && held90 <= bounds[1] && (!rankAsked || rankP > leastRankP),
  };
}

function spreadOf(values: readonly number[]): { readonly least: number; readonly middle: number } {
  const sorted = [...values].sort((a, b) => a - b);
  return { least: sorted[0] ?? 0, middle: sorted[Math.floor(sorted.length / 2)] ?? 0 };
}

export function asText(summary: Summary, effort: { readonly particles: number; readonly seconds: number }): string {
  const { replicates, eventful, ancestors, effective, rows } = summary;
  const head = [
    `${replicates} colonies, ${effort.particles} particles, ${effort.seconds.toFixed(0)} s; the queen changed in ${eventful}`,
    `ancestors left: middle ${ancestors.middle}, least ${ancestors.least}; ` +
      `smallest effective number of a visit: middle ${effective.middle.toFixed(0)}, least ${effective.least.toFixed(1)}`,
    '',
    'asked of     90 % held  bounds     50 % held  rank p   where the truth lies, twenty bins from low to high',
  ];
  const lines = rows.map(
    ({ question, held90, bounds, held50, rankP, histogram, ok }) =>
      `${question.padEnd(12)} ${held90.toFixed(3)} ${ok ? '    ' : '  no'}  ${bounds[0].toFixed(2)}–${bounds[1].toFixed(2)}  ` +
      `${held50.toFixed(3)}      ${rankP.toFixed(3)}    ${bars(histogram)}  ${Math.min(...histogram)}…${Math.max(...histogram)}`,
  );
  return [...head, ...lines].join('\n');
}

/** Bars of eight heights; the line at half height is what even places would give. */
function bars(histogram: readonly number[]): string {
  const marks = [' ', '▁', '▂', '▃', '▄', '▅', '▆', '▇', '█'];
  const even = histogram.reduce((a, b) => a + b, 0) / histogram.length;
  return histogram.map((count) => marks[Math.min(8, Math.round((4 * count) / even))]).join('');
}
