/**
 * What one tap does to what is seen on the bar in the hand. A class sets both rulers to a plain starting value, "as
 * expected" to what should be there; a ruler that was set by a class gives way to one that was tapped, never the
 * other way round, because a finger knows more than a class.
 */
import type { Attachment } from '../../../apiary/visit-terms.ts';
import type { CellCounts, LookedFor, Stage } from '../../../colony/reading.ts';
import type { SignCode } from '../../../colony/signs.ts';
import type { CombClass, Seen } from './draft.ts';

export type SeenTap =
  | { readonly kind: 'brood'; readonly eighths: number }
  | { readonly kind: 'food'; readonly eighths: number }
  | { readonly kind: 'class'; readonly combClass: CombClass }
  /** What should be there today. */
  | { readonly kind: 'as expected'; readonly brood8: number; readonly food8: number }
  | { readonly kind: 'eggs'; readonly eggs: LookedFor }
  | { readonly kind: 'youngest'; readonly stage: Stage }
  | { readonly kind: 'cells'; readonly which: keyof CellCounts; readonly by: 1 | -1 }
  | { readonly kind: 'cells looked'; readonly looked: 'none seen' | 'not looked' }
  | { readonly kind: 'queen'; readonly queen: LookedFor }
  | { readonly kind: 'sign'; readonly code: SignCode }
  | { readonly kind: 'brushed'; readonly brushed: boolean }
  | { readonly kind: 'attached'; readonly attached: Attachment }
  | { readonly kind: 'double'; readonly double: boolean };

export const full8 = 8;
const mostCells = 200;
const mostSigns = 12;

/**
 * Brood and food that a class sets, in eighths. Our choice: a typical comb of that kind, shown at
 * once on both rulers, so that a keeper who sees otherwise taps the ruler.
 */
export const classStart: Readonly<Record<CombClass, { readonly brood8: number; readonly food8: number }>> = {
  bare: { brood8: 0, food8: 0 },
  building: { brood8: 0, food8: 0 },
  food: { brood8: 0, food8: 6 },
  'food and brood': { brood8: 4, food8: 3 },
  brood: { brood8: 6, food8: 1 },
  'mostly drone': { brood8: 5, food8: 1 },
};

export function seenAfter(before: Seen, tap: SeenTap): Seen {
  const { asExpected, ...seen } = before;
  switch (tap.kind) {
    case 'as expected':
      return { ...seen, combClass: null, brood8: tap.brood8, food8: tap.food8, byClass: 'none', asExpected: true };
    case 'class':
      return { ...seen, combClass: tap.combClass, ...classStart[tap.combClass], byClass: 'both' };
    case 'brood': {
      const yields = seen.byClass === 'both' || seen.byClass === 'food';
      const food8 = yields && seen.food8 !== null ? Math.min(seen.food8, full8 - tap.eighths) : seen.food8;
      return kept({ ...seen, brood8: tap.eighths, food8, byClass: yields ? 'food' : 'none' });
    }
    case 'food': {
      const yields = seen.byClass === 'both' || seen.byClass === 'brood';
      const brood8 = yields && seen.brood8 !== null ? Math.min(seen.brood8, full8 - tap.eighths) : seen.brood8;
      return kept({ ...seen, food8: tap.eighths, brood8, byClass: yields ? 'brood' : 'none' });
    }
    default:
      return { ...factAfter(seen, tap), ...(asExpected === undefined ? {} : { asExpected }) };
  }
}

function factAfter(seen: Seen, tap: Exclude<SeenTap, { kind: 'brood' | 'food' | 'class' | 'as expected' }>): Seen {
  switch (tap.kind) {
    case 'eggs':
      return afterEggs(seen, tap.eggs);
    case 'youngest':
      return { ...seen, youngest: tap.stage, eggs: tap.stage === 'egg' ? 'seen' : 'none seen' };
    case 'cells':
      return afterCells(seen, tap.which, tap.by);
    case 'cells looked':
      return { ...seen, cells: null, cellsLooked: tap.looked };
    case 'queen':
      return { ...seen, queen: tap.queen };
    case 'sign':
      return afterSign(seen, tap.code);
    case 'brushed':
      return { ...seen, brushed: tap.brushed };
    case 'attached':
      return { ...seen, attached: tap.attached };
    case 'double':
      return { ...seen, double: tap.double };
  }
}

/** True when the two rulers together are more than the whole face. */
export function tooMuch(seen: Seen): boolean {
  return (seen.brood8 ?? 0) + (seen.food8 ?? 0) > full8;
}

/** A class that the rulers contradict is dropped: a bare bar has no brood. */
function kept(seen: Seen): Seen {
  const { combClass, brood8, food8 } = seen;
  const brood = brood8 ?? 0;
  const fits =
    combClass === null ||
    (combClass === 'bare' && brood === 0 && (food8 ?? 0) === 0) ||
    ((combClass === 'building' || combClass === 'food') && brood === 0) ||
    ((combClass === 'brood' || combClass === 'mostly drone' || combClass === 'food and brood') && brood > 0);
  return fits ? seen : { ...seen, combClass: null };
}

function afterEggs(seen: Seen, eggs: LookedFor): Seen {
  if (eggs === 'seen') return { ...seen, eggs, youngest: 'egg' };
  return { ...seen, eggs, youngest: seen.youngest === 'egg' || eggs === 'not looked' ? null : seen.youngest };
}

function afterCells(seen: Seen, which: keyof CellCounts, by: 1 | -1): Seen {
  const before = seen.cells ?? { open: 0, sealed: 0, torn: 0, emerged: 0 };
  const cells = { ...before, [which]: Math.min(mostCells, Math.max(0, before[which] + by)) };
  const any = cells.open + cells.sealed + cells.torn + cells.emerged > 0;
  if (any) return { ...seen, cells, cellsLooked: 'seen' };
  // Stepping back to nothing takes the count back; it does not say that somebody looked.
  return seen.cells === null ? seen : { ...seen, cells: null, cellsLooked: 'not looked' };
}

function afterSign(seen: Seen, code: SignCode): Seen {
  if (seen.signs.includes(code)) return { ...seen, signs: seen.signs.filter((other) => other !== code) };
  return seen.signs.length >= mostSigns ? seen : { ...seen, signs: [...seen.signs, code] };
}
