/** How often forecasts were right, asked of the engine when a screen shows it: nothing else waits for it. */
import { useEffect, useState } from 'react';
import type { ForecastRecord, RecordScore } from '../../../colony/record.ts';
import { recordFor } from '../model/engine.ts';
import { useYard } from '../model/use-yard.tsx';

/** Null until it is there, "failed" when the engine could not tell. A colony, or null for all; a year, or null for all. */
export function useRecord(colony: string | null, year: number | null): ForecastRecord | 'failed' | null {
  const { picture } = useYard();
  const [record, setRecord] = useState<ForecastRecord | 'failed' | null>(null);
  useEffect(() => {
    let wanted = true;
    recordFor(colony, year).then(
      (found) => (wanted ? setRecord(found) : undefined),
      () => (wanted ? setRecord('failed') : undefined),
    );
    return () => {
      wanted = false;
    };
  }, [picture, colony, year]);
  return record;
}

/** The score of a quantity whose horizon is nearest to so many days; null where there is none yet. */
export function scoreNear(record: ForecastRecord | 'failed' | null, what: RecordScore['what'], days: number): RecordScore | null {
  if (record === null || record === 'failed') return null;
  const far = (score: RecordScore) => Math.abs(score.horizonDays - days);
  const [nearest = null] = record.scores.filter((score) => score.what === what && score.n > 0).sort((a, b) => far(a) - far(b));
  return nearest;
}

/**
 * Whether the model alone, which is what the outlook draws, did better than "as last time"; null when too few to say. A
 * score judges what was issued, which for bees and sealed brood is model and trend together.
 */
export function isModelBetter(score: RecordScore | null): boolean | null {
  const { engine = null, 'as last time': last = null } = score?.logRmse ?? {};
  return score === null || score.isBetter === null || engine === null || last === null ? null : engine < last;
}
