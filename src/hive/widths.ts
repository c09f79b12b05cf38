/**
 * Widths of the bars and spacers of a trough against its measured length: the closing check of a visit, and what keeps
 * a strip of wood out that cannot be there. Bars without a width of their own have the hive's.
 */
import type { Id } from '../journal/entry.ts';
import { inBase } from '../numbers/units.ts';
import { combAt } from './hanging.ts';
import type { Hive, HiveDraft } from './state.ts';

export interface Widths {
  /** Of all bars the trough has places for, with the spacers between. */
  readonly sumMm: number;
  /** Inside, as measured last; null when nobody measured it. */
  readonly lengthMm: number | null;
  /** One bar more or less. */
  readonly barMm: number;
}

/** `spacer`: one that is about to be set, in the place of what is there. */
export function widthsOf(
  draft: HiveDraft,
  hive: Hive,
  spacer: { readonly place: number; readonly widthMm: number } | null = null,
): Widths {
  const barMm = inBase(hive.barWidth, 'mm') ?? 0;
  const spacers = new Map(draft.spacers.get(hive.id) ?? []);
  if (spacer !== null) spacers.set(spacer.place, spacer.widthMm);
  let sumMm = 0;
  for (let place = 1; place <= hive.bars; place += 1) {
    const bar = draft.bars.get(combAt(draft, hive.id, place)?.bar ?? '');
    sumMm += (bar?.width ? inBase(bar.width, 'mm') : null) ?? barMm;
  }
  for (const widthMm of spacers.values()) sumMm += widthMm;
  return { sumMm, lengthMm: lengthMm(draft, hive.id), barMm };
}

/** Bars and strips stand out of the measured trough by more than a bar: one was counted twice, or something was measured wrongly. */
export function isTooWide({ sumMm, lengthMm: length, barMm }: Widths): boolean {
  return length !== null && sumMm > length + barMm;
}

function lengthMm(draft: HiveDraft, hive: Id): number | null {
  const found = draft.measurements.findLast((one) => one.what === 'box length' && one.hive === hive);
  return found === undefined ? null : inBase(found.typed, 'mm');
}
