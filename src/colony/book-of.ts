/**
 * The figures in force for one yard: the printed ones, with the keeper's measurements and then the
 * keeper's own choices on top, the newest last. A measurement of one comb stands for all, with the
 * range that a single one deserves.
 */
import { isFigureKey, type FigureBook, type Override, printed, printedBook, value } from '../figures/book.ts';
import type { FigureKey } from '../figures/list.ts';
import { cellsPerDm2, cellWidthMm } from '../hive/cells-per-area.ts';
import { hiveMeasures } from '../hive/hive-measures.ts';
import type { Measurement } from '../hive/state.ts';
import { inBase } from '../numbers/units.ts';
import type { ColonyState } from './state.ts';

export function bookOf(state: ColonyState): FigureBook {
  const overrides = new Map<FigureKey, Override>();
  for (const measurement of state.measurements) {
    for (const made of fromMeasurement(state, measurement)) overrides.set(made.key, made);
  }
  for (const chosen of state.overrides) {
    if (isFigureKey(chosen.key)) overrides.set(chosen.key, { ...chosen, key: chosen.key });
  }
  return { overrides };
}

function fromMeasurement(state: ColonyState, measurement: Measurement): readonly Override[] {
  const { what, typed } = measurement;
  switch (what) {
    case 'cells along 10 cm': {
      const width = cellWidthMm(typed.value);
      const half = halfCell / typed.value;
      return [
        of(measurement, 'worker-cell-width', width, half),
        of(measurement, 'worker-cells-per-dm2', cellsPerDm2(width), 2 * half),
      ];
    }
    case 'bees on a face': {
      const dm2 = faceOf(state, measurement);
      return dm2 === null ? [] : [of(measurement, 'bees-per-dm2', typed.value / dm2, ownSpread('bees-per-dm2'))];
    }
    case 'honey comb weight': {
      const kg = inBase(typed, 'kg');
      const dm2 = faceOf(state, measurement);
      if (kg === null || dm2 === null) return [];
      const cm = value(printedBook, 'comb-thickness-honey') / mmInCm;
      const honey = kg - dm2 * value(printedBook, 'wax-per-dm2');
      return honey <= 0 ? [] : [of(measurement, 'honey-kg-per-dm2-cm', honey / dm2 / cm, ownSpread('honey-kg-per-dm2-cm'))];
    }
    case 'box length':
      return [];
  }
}

/** One careful count along a row is wrong by at most half a cell. */
const halfCell = 0.5;
const mmInCm = 10;
/** One comb weighed or counted halves what the printed range leaves open. */
const ownCount = 0.5;

function of(measurement: Measurement, key: FigureKey, likely: number, spread: number): Override {
  return { key, value: likely, low: likely * (1 - spread), high: likely * (1 + spread), entry: measurement.entry };
}

/** Half width of a single measurement, as a share of its value. */
function ownSpread(key: FigureKey): number {
  const { low, high, value: likely } = printed(key);
  return ((high - low) / likely / 2) * ownCount;
}

/** One face of the comb that was measured, as built; of the only hive when neither comb nor hive was named. */
function faceOf(state: ColonyState, measurement: Measurement): number | null {
  const comb = measurement.comb === null ? null : (state.combs.get(measurement.comb) ?? null);
  const spot = comb?.at ?? null;
  const only = state.hives.size === 1 ? [...state.hives.keys()][0] : undefined;
  const hive = state.hives.get(measurement.hive ?? (spot?.kind === 'place' ? spot.hive : (only ?? '')));
  if (hive === undefined) return null;
  const dm2 = hiveMeasures(hive, printedBook).fullFaceDm2 * (comb?.built ?? 1);
  return dm2 > 0 ? dm2 : null;
}
