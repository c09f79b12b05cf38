/**
 * The small marks that stand on a strip or a face: queen cells in four states, the queen, the beaded
 * edge of bees, follower boards, the entrance. Drawn from strokes, told apart by form and not by colour.
 */
import type { CellCounts } from '../colony/reading.ts';
import { element, px } from './svg.ts';

export const cellStates = ['open', 'sealed', 'torn', 'emerged'] as const;
export type CellState = (typeof cellStates)[number];

const acorn = 'M-3.2 1.4C-3.8 4.4-2.4 7.6-.8 9.6H.8C2.4 7.6 3.8 4.4 3.2 1.4Z';

/** A queen cell hangs like an acorn, 10 px long at size 1, on a clear ground: the top of its cup is at x, y. */
export function queenCell(state: CellState, x: number, y: number, size = 1): string {
  const at = `translate(${px(x)} ${px(y)})${size === 1 ? '' : ` scale(${px(size)})`}`;
  const ground = element('path', {
    d: acorn,
    fill: 'var(--paper)',
    stroke: 'var(--paper)',
    'stroke-width': 3.2,
    'stroke-linejoin': 'round',
  });
  const line = {
    fill: 'none',
    stroke: 'var(--ink)',
    'stroke-width': 1.1,
    'stroke-linejoin': 'round',
    'stroke-linecap': 'round',
  };
  const drawn: Record<CellState, string> = {
    open: element('path', { d: 'M-3.2 1.4C-3.8 4-3.6 6-2.9 8M3.2 1.4C3.8 4 3.6 6 2.9 8', ...line }),
    sealed: element('path', { d: acorn, ...line, fill: 'var(--ink)' }),
    torn: element('path', {
      d: 'M3.2 1.4L1 3.2L3 4.4L.8 5.8L2.4 7C1.9 8 1.4 8.8.8 9.6H-.8C-2.4 7.6-3.8 4.4-3.2 1.4',
      ...line,
    }),
    emerged: element('path', { d: 'M-3.2 1.4C-3.8 4-3 5.8-2.5 7H2.5C3 5.8 3.8 4 3.2 1.4M2.5 7L5 9.4', ...line }),
  };
  const cup = element('path', { d: 'M-3.8 1.9C-3.8-.6 3.8-.6 3.8 1.9Z', fill: 'var(--ink)', stroke: 'none' });
  return element('g', { class: `cell-${state}`, transform: at }, ground + drawn[state] + cup);
}

/** The states there are, oldest work first, each once: what a small drawing can show of counts. */
export function cellStatesOf(counts: CellCounts | null): readonly CellState[] {
  if (counts === null) return [];
  return (['sealed', 'open', 'emerged', 'torn'] as const).filter((state) => counts[state] > 0);
}

/** The queen: a small thorax and a long body, on a clear ground; the middle is at x, y; 14 px long at size 1. */
export function queenMark(x: number, y: number, size = 1): string {
  const at = `translate(${px(x)} ${px(y)})${size === 1 ? '' : ` scale(${px(size)})`}`;
  const ground = element('ellipse', {
    rx: 4.6,
    ry: 8,
    fill: 'var(--paper)',
    stroke: 'var(--ink)',
    'stroke-width': 0.8,
  });
  const body = element('path', { d: 'M0-1.6C2.2-1.6 2.3 2 0 6.2C-2.3 2-2.2-1.6 0-1.6', fill: 'var(--ink)' });
  const thorax = element('circle', { cy: -3.6, r: 1.7, fill: 'var(--ink)' });
  return element('g', { class: 'queen', transform: at }, ground + body + thorax);
}

/** Bees: beads along a path, dense enough to read as an edge of insects. */
export function beads(d: string, size = 2, gap = 1.35): string {
  return element('path', {
    class: 'bees',
    d,
    fill: 'none',
    stroke: 'var(--ink)',
    'stroke-width': size,
    'stroke-linecap': 'round',
    'stroke-dasharray': `0 ${px(size * gap)}`,
  });
}

/** A follower board: planed wood with its grain, and a lath along its top. */
export function followerBoard(x: number, top: number, width: number, bottom: number): string {
  const wood = element('rect', {
    x,
    y: top,
    width,
    height: bottom - top,
    fill: 'var(--wood)',
    stroke: 'var(--ink)',
    'stroke-width': 'var(--edge)',
  });
  const third = width / 3;
  const length = bottom - top;
  const grain =
    `M${px(x + third)} ${px(top + 2)}v${px(length * 0.44)}q${px(third * 0.7)} 3 0 6V${px(bottom - 2)}` +
    `M${px(x + 2 * third)} ${px(top + length * 0.3)}V${px(bottom - 2)}`;
  const lines = width < 3 ? '' : element('path', { d: grain, fill: 'none', stroke: 'var(--ink)', 'stroke-width': 'var(--fine)' });
  return element('g', { class: 'board' }, wood + lines);
}
