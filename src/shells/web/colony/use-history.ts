/** What was believed of a colony on the days of its visits, asked of the engine one day at a time. */
import { useEffect, useState } from 'react';
import type { ColonyView } from '../../../colony/view.ts';
import type { Day } from '../../../numbers/day.ts';
import { pointOf } from '../model/engine.ts';
import type { HistoryPoint } from '../model/shown.ts';

/** About two seasons of usual visits; each needs the journal folded to its day. */
const mostPoints = 40;

/** Null until all of them are there. `from`: none before that day. */
export function useHistory(view: ColonyView, from: Day = ''): readonly HistoryPoint[] | null {
  const [points, setPoints] = useState<readonly HistoryPoint[] | null>(null);
  useEffect(() => {
    let wanted = true;
    // One day at a time, so that a new picture never waits behind a long history.
    async function gather(): Promise<void> {
      const found: HistoryPoint[] = [];
      const days = [...new Set(view.visits.map((visit) => visit.day))].filter((day) => day >= from);
      for (const day of days.slice(-mostPoints)) {
        const point = await pointOf(view.colony, day);
        if (!wanted) return;
        if (point !== null) found.push(point);
      }
      setPoints(found);
    }
    void gather().catch(() => undefined);
    return () => {
      wanted = false;
    };
  }, [view, from]);
  return points;
}
