/**
 * Rival explanations from the logarithms of how well each fits: those worth a line, the likeliest first, with "just
 * chance" always among them.
 */
import { logSum } from '../../../numbers/log-sum.ts';
import type { Surprise } from '../../foreseen.ts';

type Because = Surprise['because'];

/** Chances of those named sum to 1. `least` is the chance below which an explanation is left out. */
export function named(
  rivals: readonly { readonly cause: Because[number]['cause']; readonly log: number }[],
  least: number,
): Because {
  const total = logSum(rivals.map(({ log }) => log));
  const all = rivals.map(({ cause, log }) => ({
    cause,
    chance: total === -Infinity ? Number(cause === 'just chance') : Math.exp(log - total),
  }));
  const kept = all.filter(({ cause, chance }) => chance >= least || cause === 'just chance');
  const sum = kept.reduce((a, { chance }) => a + chance, 0);
  return kept.map(({ cause, chance }) => ({ cause, chance: chance / sum })).sort((a, b) => b.chance - a.chance);
}
