/**
 * How far each correction or void is from the plain entry that it ends up at: 1 when it names that
 * entry, 2 when it names a correction of it, and so on. Each names one entry, so the levels are
 * found by walking, without recursion; those that name each other in a ring have no level.
 */
import type { Entry, Id } from './entry.ts';

export interface AmendmentLevels {
  readonly outermostFirst: readonly Entry[];
  readonly rings: readonly Entry[];
}

export function levelsOf(amendments: readonly Entry[]): AmendmentLevels {
  const byId = new Map(amendments.map((entry) => [entry.id, entry]));
  const levels = new Map<Id, number>();
  const rings = new Set<Entry>();
  for (const start of amendments) walk(start, byId, levels, rings);
  const level = (entry: Entry): number => levels.get(entry.id) ?? 0;
  const outermostFirst = amendments.filter((entry) => !rings.has(entry)).sort((a, b) => level(b) - level(a));
  return { outermostFirst, rings: [...rings] };
}

function walk(start: Entry, byId: ReadonlyMap<Id, Entry>, levels: Map<Id, number>, rings: Set<Entry>): void {
  const path: Entry[] = [];
  const onPath = new Set<Entry>();
  let at: Entry | undefined = start;
  while (at !== undefined && !levels.has(at.id) && !onPath.has(at)) {
    path.push(at);
    onPath.add(at);
    at = byId.get(at.corrects ?? '');
  }
  const ringFrom = at !== undefined && onPath.has(at) ? path.indexOf(at) : path.length;
  for (const entry of path.splice(ringFrom)) {
    rings.add(entry);
    levels.set(entry.id, 0);
  }
  let level = at === undefined ? 0 : (levels.get(at.id) ?? 0);
  for (const entry of path.reverse()) levels.set(entry.id, (level += 1));
}
