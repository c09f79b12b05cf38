/** The plan of a round: the longest need first, as long as it fits into the minutes. A hive that does not fit is passed over for a shorter one. */
import type { Stop } from '../../../apiary.ts';
import type { ColonyView } from '../../../colony/view.ts';

export interface VerbMinutes {
  readonly open: number;
  readonly glance: number;
  readonly 'no visit': number;
}

export interface PlanItem {
  readonly view: ColonyView;
  readonly verb: 'open' | 'glance' | 'no visit';
  readonly places: readonly number[];
}

export interface Plan {
  readonly items: readonly PlanItem[];
  readonly minutes: number;
  /** Hives with a need for which no time is left. */
  readonly left: number;
}

export function planFor(stops: readonly { readonly stop: Stop; readonly view: ColonyView }[], minutes: number, takes: VerbMinutes): Plan {
  const items: PlanItem[] = [];
  let used = 0;
  let left = 0;
  for (const { stop, view } of stops) {
    if (stop.first === null || stop.verb === 'leave shut') continue;
    if (used + takes[stop.verb] > minutes) {
      left += 1;
      continue;
    }
    used += takes[stop.verb];
    items.push({ view, verb: stop.verb, places: stop.first.places });
  }
  return { items, minutes: used, left };
}
