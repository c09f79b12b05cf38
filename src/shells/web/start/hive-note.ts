/** A hive as it is written down after the three questions: what was not asked is a typical value, and marked so. */
import { printed } from '../../../apiary/handbook.ts';
import type { HiveBody } from '../../../hive/kind-hive.ts';
import type { Dimension, Hive } from '../../../hive/state.ts';
import type { Id } from '../../../journal/entry.ts';
import type { Day } from '../../../numbers/day.ts';
import type { Note } from '../model/notes.ts';

type Length = Dimension & { readonly unit: 'mm' | 'cm' | 'in' };

export interface HiveMeasures {
  readonly bars: number;
  readonly topWidth: Length;
  readonly depth: Length;
}

export function hiveNote(given: HiveMeasures & { readonly hive: Id; readonly name: string }, today: Day): Note<HiveBody> {
  return {
    kind: 'hive',
    at: today,
    body: {
      hive: given.hive,
      name: given.name,
      bars: given.bars,
      barWidth: { value: printed('bar-width').value, unit: 'mm', how: 'typical' },
      topWidth: given.topWidth,
      depth: given.depth,
      wallAngleDeg: printed('wall-angle').value,
      wallAngleHow: 'typical',
      entrance: 'first',
    },
  };
}

/** Another hive like one that stands already. */
export function likeHive(hive: Hive, id: Id, name: string, today: Day): Note<HiveBody> {
  const { bars, barWidth, topWidth, depth, wallAngleDeg, wallAngleHow, entrance } = hive;
  return {
    kind: 'hive',
    at: today,
    body: {
      hive: id,
      name,
      bars,
      barWidth: barWidth as Length,
      topWidth: topWidth as Length,
      depth: depth as Length,
      wallAngleDeg,
      wallAngleHow,
      entrance,
    },
  };
}
