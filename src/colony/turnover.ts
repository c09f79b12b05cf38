/**
 * Whose daughters the bees are after a change of queens, when both lay as much and nothing else changes: a closed
 * form, which the model of a colony must meet. Day 0 is the old queen's last egg; the new one begins g days later;
 * a bee counts from the day she emerges. With l the share of bees alive at an age, on day t
 * F = ∫₀^(t−21−g) l / (∫₀^(t−21−g) l + ∫_(t−21)^∞ l), for bees from an age on with both integrals cut at it.
 */
import type { Survival } from './survival.ts';

export interface Turnover {
  /** First daughter of the new queen. */
  readonly firstDaughterDay: number;
  /** Day on which a share of the bees is hers; null where no bee lives to the age asked for. */
  readonly dayOf: (share: number, fromAge?: number) => number | null;
  /** Her share on a day, 0 … 1; null where there is no bee of that age. */
  readonly shareOn: (day: number, fromAge?: number) => number | null;
}

export function turnover(survival: Survival, development: number, layingStarts: number): Turnover {
  const firstDaughterDay = development + layingStarts;
  const hers = (day: number, fromAge: number): number => survival.days(fromAge, Math.max(fromAge, day - firstDaughterDay));
  const old = (day: number, fromAge: number): number => survival.days(Math.max(fromAge, day - development), Infinity);
  const shareOn = (day: number, fromAge = 0): number | null => {
    const [a, b] = [hers(day, fromAge), old(day, fromAge)];
    return a + b > 0 ? a / (a + b) : null;
  };
  const dayOf = (share: number, fromAge = 0): number | null => {
    if (survival.days(fromAge, Infinity) <= 0) return null;
    // Her part only grows and the old one's only shrinks, so halving finds the day.
    let low = firstDaughterDay + fromAge;
    let high = low + 1;
    while (hers(high, fromAge) * (1 - share) < old(high, fromAge) * share) high = low + 2 * (high - low);
    for (let i = 0; i < halvings; i += 1) {
      const middle = (low + high) / 2;
      if (hers(middle, fromAge) * (1 - share) < old(middle, fromAge) * share) low = middle;
      else high = middle;
    }
    return high;
  };
  return { firstDaughterDay, dayOf, shareOn };
}

/** More than the digits of a number. */
const halvings = 60;
