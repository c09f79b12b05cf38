/**
 * What runs between two strips of a film: combs as threads from place to place, threads that end, and
 * branches where part of the colony leaves or comes in: a swarm as a string of beads, a split or union
 * as a bundle of threads.
 */
import type { ColonyEvent } from '../colony/state.ts';
import type { BarView } from '../colony/view.ts';
import { middleOf } from './places.ts';
import { beads } from './small-marks.ts';
import type { StripBody } from './strip.ts';
import { element, px } from './svg.ts';

/** A strip as it stands in the film: its bars, its body, and how far down it was put. */
export interface Hung {
  readonly bars: readonly BarView[];
  readonly body: StripBody;
  readonly x: number;
  readonly y: number;
}

/** Threads of all combs that hang in both strips; combs that are gone end in a knot, but not those that left by a branch. */
export function threads(above: Hung, below: Hung, left: readonly string[] = []): string {
  const next = new Map(below.bars.flatMap((bar) => (bar.comb === null ? [] : [[bar.comb, bar.place] as const])));
  const top = above.y + above.body.floor + 1;
  const foot = below.y + below.body.barTop - 1;
  let still = '';
  let moving = '';
  let ended = '';
  for (const bar of above.bars) {
    if (bar.comb === null || bar.kind === 'bare') continue;
    const from = above.x + middleOf(above.body.edges, bar.place);
    const place = next.get(bar.comb);
    if (place === undefined) {
      if (left.includes(bar.comb)) continue;
      ended += `M${px(from)} ${px(top)}v6M${px(from - 2.5)} ${px(top + 6)}h5`;
      continue;
    }
    const to = below.x + middleOf(below.body.edges, place);
    if (place === bar.place) still += `M${px(from)} ${px(top)}L${px(to)} ${px(foot)}`;
    else {
      const half = (top + foot) / 2;
      moving += `M${px(from)} ${px(top)}C${px(from)} ${px(half)} ${px(to)} ${px(half)} ${px(to)} ${px(foot)}`;
    }
  }
  const line = (kind: string, d: string, ink: string, weight: string) =>
    d === ''
      ? ''
      : element('path', { class: kind, d, fill: 'none', stroke: `var(--${ink})`, 'stroke-width': `var(--${weight})` });
  return line('still', still, 'soft', 'fine') + line('ended', ended, 'ink', 'edge') + line('moving', moving, 'ink', 'edge');
}

export type Branch = 'swarm out' | 'swarm in' | 'bundle out' | 'bundle in' | 'end';

/** What an event draws as; null for events that are a note only. */
export function branchOf(event: ColonyEvent | null): Branch | null {
  switch (event?.kind) {
    case 'swarm left':
      return 'swarm out';
    case 'swarm hived':
      return 'swarm in';
    case 'split off':
    case 'united into':
      return 'bundle out';
    case 'split from':
    case 'took in':
      return 'bundle in';
    case 'ended':
      return 'end';
    default:
      return null;
  }
}

/** The combs that an event takes away or brings. */
export function combsOf(event: ColonyEvent | null): readonly string[] {
  return event !== null && 'combs' in event ? event.combs : [];
}

/** Height that a branch needs between two strips. */
export const branchHeight = 34;

/**
 * A branch in the gap above a strip. It leaves from (or joins) the middle of the nest and ends to the
 * right at `endX`; the caller writes its note there.
 */
export function branch(kind: Branch, nestX: readonly number[], top: number, foot: number, endX: number): string {
  const middle = nestX[Math.floor(nestX.length / 2)] ?? endX / 2;
  const level = (top + foot) / 2;
  const out = `M${px(middle)} ${px(top + 1)}C${px(middle)} ${px(level + 4)} ${px(middle + 20)} ${px(level)} ${px(endX)} ${px(level)}`;
  const into = `M${px(endX)} ${px(level)}C${px(middle + 20)} ${px(level)} ${px(middle)} ${px(level - 4)} ${px(middle)} ${px(foot - 2)}`;
  const arrow = element('path', {
    d: `M${px(middle - 4)} ${px(foot - 7)}L${px(middle)} ${px(foot - 1)}L${px(middle + 4)} ${px(foot - 7)}`,
    fill: 'none',
    stroke: 'var(--ink)',
    'stroke-width': 'var(--rule)',
  });
  if (kind === 'swarm out')
    return element('g', { class: 'branch' }, clear(out) + beads(out, 2.4, 1.5) + cluster(endX + 5, level));
  if (kind === 'swarm in')
    return element('g', { class: 'branch' }, clear(into) + beads(into, 2.4, 1.5) + arrow + cluster(endX + 5, level));
  if (kind === 'end') {
    const d = `M${px(middle - 26)} ${px(top + 8)}h52M${px(middle - 16)} ${px(top + 12)}h32`;
    return element('path', { class: 'branch', d, fill: 'none', stroke: 'var(--ink)', 'stroke-width': 'var(--rule)' });
  }
  const outwards = kind === 'bundle out';
  const d = nestX
    .map((x, i) => {
      const y = level + (i - (nestX.length - 1) / 2) * Math.min(2.6, 14 / nestX.length);
      const from = outwards ? top + 1 : foot - 1;
      return `M${px(x)} ${px(from)}C${px(x)} ${px(y)} ${px(x + 14)} ${px(y)} ${px(endX + 8)} ${px(y)}`;
    })
    .join('');
  const bundle = element('path', { d, fill: 'none', stroke: 'var(--ink)', 'stroke-width': 'var(--edge)' });
  return element('g', { class: 'branch' }, bundle + (outwards ? '' : arrow));
}

/** Paper under a string of beads, so that it reads where it crosses threads. */
function clear(d: string): string {
  return element('path', { d, fill: 'none', stroke: 'var(--paper)', 'stroke-width': 6 });
}

/** A swarm hanging as a cluster: rows of beads that narrow to a tip. */
function cluster(x: number, y: number): string {
  const rows = [
    [-4, 3],
    [-5.5, 4],
    [-4, 3],
    [-2.6, 2],
    [0, 1],
  ] as const;
  const d = rows
    .map(([from, count], row) =>
      Array.from({ length: count }, (_, i) => `M${px(x + from + i * 2.9)} ${px(y - 6 + row * 2.8)}h.01`).join(''),
    )
    .join('');
  return element('path', { d, fill: 'none', stroke: 'var(--ink)', 'stroke-width': 2.5, 'stroke-linecap': 'round' });
}
