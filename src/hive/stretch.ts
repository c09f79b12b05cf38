/**
 * Stretches of a trough: which places are held by living colonies, and which are free. A bay whose
 * colony has ended stays in the record but keeps nobody out.
 */
import type { Entry, Id } from '../journal/entry.ts';
import { dayOf } from '../journal/entry.ts';
import type { Day } from '../numbers/day.ts';
import type { Bay, Hive, HiveDraft } from './state.ts';

/** A held bay of the hive that shares a place with from…to, other than the one named. */
export function overlapping(draft: HiveDraft, hive: Id, from: number, to: number, except: Id | null): Bay | null {
  for (const bay of draft.bays.values()) {
    if (bay.hive !== hive || bay.id === except || bay.held !== true) continue;
    if (bay.from <= to && from <= bay.to) return bay;
  }
  return null;
}

/** The held bay in which the place lies, else the one whose end is nearest to it. */
export function bayAt(draft: HiveDraft, hive: Id, place: number): Bay | null {
  const away = ({ from, to }: Bay): number => Math.max(0, from - place, place - to);
  const held = [...draft.bays.values()].filter((bay) => bay.hive === hive && bay.held === true);
  return held.sort((a, b) => away(a) - away(b) || a.from - b.from)[0] ?? null;
}

/** The longest run of places that no living colony holds; the one nearest the entrance when two are as long. */
export function freeStretch(draft: HiveDraft, hive: Hive): { readonly from: number; readonly to: number } | null {
  let best: { from: number; to: number } | null = null;
  let from = 0;
  for (let place = 1; place <= hive.bars + 1; place += 1) {
    const free = place <= hive.bars && overlapping(draft, hive.id, place, place, null) === null;
    if (free && from === 0) from = place;
    if (free || from === 0) continue;
    const found = { from, to: place - 1 };
    from = 0;
    if (best === null || length(found) > length(best) || (length(found) === length(best) && hive.entrance === 'last'))
      best = found;
  }
  return best;
}

/** Moves the ends of a bay and remembers since when. */
export function moveBay(bay: Bay, from: number, to: number, entry: Entry): void {
  if (bay.from === from && bay.to === to) return;
  bay.from = from;
  bay.to = to;
  bay.moves?.push({ day: dayOf(entry.at), from, to });
}

export function newBay(id: Id, hive: Id, from: number, to: number, entry: Entry): Bay {
  return { id, hive, from, to, held: false, moves: [{ day: dayOf(entry.at), from, to }] };
}

/** The ends as they stood at the end of that day. */
export function bayOn(bay: Bay, day: Day): { readonly from: number; readonly to: number } {
  const moves = bay.moves ?? [];
  let stood: { from: number; to: number } = moves[0] ?? bay;
  for (const move of moves) {
    if (move.day > day) break;
    stood = move;
  }
  return { from: stood.from, to: stood.to };
}

function length(run: { from: number; to: number }): number {
  return run.to - run.from + 1;
}
