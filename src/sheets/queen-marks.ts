/**
 * The nine states of a queen as engraved marks, each a picture of what the eye would find on the combs:
 * eggs in rows, cells that hang open or closed, a thin queen that runs, nothing at all. Lines only, no
 * tint: the colours of this program mean time. Two inks: worked out (fine lines) and guessed (dots).
 */
import { type QueenState, queenStates } from '../colony/queen-state.ts';
import type { Ink } from '../hive/contents.ts';
import { edgeOf, type Mark, staggered, tilePattern } from './marks.ts';
import { checkPrefix, element, px } from './svg.ts';

const paper = { tint: 'paper' } as const;

export const queenMarks: Readonly<Record<QueenState, Mark>> = {
  /** Eggs, upright, in every cell. */
  laying: { ...paper, width: 6, height: 6, weight: 1.7, lines: staggered(6, 6, 'M1.5 .6V2.4') },
  /** Cups that hang with their mouth down. */
  'cells open': { ...paper, width: 13, height: 12, weight: 1.7, lines: staggered(13, 12, 'M1 5V3Q1 .8 3.2 .8Q5.4 .8 5.4 3V5') },
  /** The same, grown long and closed at the tip. */
  'cells sealed': {
    ...paper,
    width: 12,
    height: 19,
    weight: 1.9,
    lines: staggered(12, 19, 'M.8 .8H5.2V6.4Q5.2 9 3 9Q.8 9 .8 6.4V.8'),
  },
  /** A thin runner: strokes aslant. */
  virgin: { ...paper, width: 9, height: 9, weight: 1.4, lines: staggered(9, 9, 'M.8 3.7L3.7 .8') },
  /** Few eggs, each with the rim of its cell. */
  'new queen laying': {
    ...paper,
    width: 13,
    height: 11,
    weight: 1.5,
    lines: staggered(13, 11, 'M1 3.9Q1 1 3.2 1Q5.4 1 5.4 3.9M3.2 2.4V4.4'),
  },
  /** Eggs with gaps among them. */
  failing: { ...paper, width: 15, height: 9, weight: 1.7, lines: staggered(15, 9, 'M1.5 .8V2.8M4.5 2.1V3.6') },
  /** High lids. */
  'drone layer': {
    ...paper,
    width: 11,
    height: 10,
    weight: 1.7,
    lines: staggered(11, 10, 'M.6 4.6C.6 .2 5 .2 5 4.6L.6 4.6'),
  },
  /** Nothing: an empty cell here and there. */
  none: {
    ...paper,
    width: 22,
    height: 18,
    weight: 1.2,
    lines: staggered(22, 18, 'M7.5 4C7.5 5.4 6.4 6.5 5 6.5C3.6 6.5 2.5 5.4 2.5 4C2.5 2.6 3.6 1.5 5 1.5C6.4 1.5 7.5 2.6 7.5 4'),
  },
  /** Several eggs in a cell, leaning on each other. */
  'laying workers': {
    ...paper,
    width: 10,
    height: 9,
    weight: 1.7,
    lines: staggered(10, 9, 'M1 .8L4 3.6M4 .8L1 3.6M2.5 .4V4'),
  },
};

/** How each state is drawn behind today and ahead of it. */
export const queenInks = ['worked out', 'guessed'] as const satisfies readonly Ink[];
export type QueenInk = (typeof queenInks)[number];

const stateNames: Readonly<Record<QueenState, string>> = Object.fromEntries(
  queenStates.map((state) => [state, state.replaceAll(' ', '-')]),
) as Record<QueenState, string>;

export function queenFill(prefix: string, state: QueenState, ink: QueenInk): string {
  return `url(#${idOf(prefix, state, ink)})`;
}

/** `<defs>` with all patterns of a drawing; ids are unique as long as prefixes are. */
export function queenDefs(prefix: string, scale: number, states: readonly QueenState[] = queenStates): string {
  checkPrefix(prefix);
  return element('defs', {}, states.flatMap((state) => queenInks.map((ink) => pattern(prefix, state, ink, scale))).join(''));
}

/** A small field of one state for a list; the caller writes the word beside it. */
export function queenSample(state: QueenState, prefix: string, width = 40, height = 26): string {
  const field = { x: 0.75, y: 0.75, width: width - 1.5, height: height - 1.5, ...edgeOf('seen') };
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      class: 'queen-mark',
      viewBox: `0 0 ${px(width)} ${px(height)}`,
      width,
      height,
      'aria-hidden': 'true',
    },
    element('defs', {}, pattern(prefix, state, 'worked out', 1)) +
      element('rect', { ...field, fill: queenFill(prefix, state, 'worked out') }),
  );
}

function idOf(prefix: string, state: QueenState, ink: QueenInk): string {
  return `${prefix}-${ink === 'guessed' ? 'g' : 'w'}-${stateNames[state]}`;
}

function pattern(prefix: string, state: QueenState, ink: QueenInk, scale: number): string {
  return tilePattern(idOf(prefix, state, ink), queenMarks[state], ink, scale);
}
