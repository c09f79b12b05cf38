/**
 * What the model tells of each colony, worked out one colony at a time when the picture stands, in a worker of its
 * own, and kept beside the snapshot. New entries make what was told of the colonies they touch stale: of these the
 * plain rules speak until the model has spoken again. Nothing waits for it.
 */
import type { Foreseen, ForeseenColony, KeptColony } from '../../../apiary/foresee.ts';
import type { Picture } from '../../../apiary.ts';
import type { Entry, Id } from '../../../journal/entry.ts';
import type { Work } from './yard-work.ts';
import type { YardStore } from './yard-store.ts';

/** What was told, with the number of entries that it was told by. */
interface StoredTold {
  readonly foreseen: Foreseen;
  readonly entries: number;
}

const toldKey = (colony: Id): string => `told ${colony}`;
const keptKey = (colony: Id): string => `kept ${colony}`;

/** What stands for the day of the state. */
export function toldToday({ told, state }: Work): readonly Foreseen[] {
  return [...told.values()].filter(({ day }) => day === state.today);
}

/** What was told when the book was open last, as far as nothing was written since. */
export async function restoreTold(work: Work, store: YardStore, picture: Picture | null): Promise<void> {
  const stored = await Promise.all(
    (picture?.colonies ?? []).map(async ({ colony }) => (await store.snapshots.get(toldKey(colony))) as StoredTold | undefined),
  );
  if (work.store !== store) return;
  for (const one of stored) {
    if (one !== undefined && one.entries === work.state.entries.length) work.told.set(one.foreseen.colony, one.foreseen);
  }
}

/** What was told no longer stands for the colonies that an entry touches. */
export function forget(work: Work, entry: Entry): void {
  const touched = touchedBy(entry, work.state.picture);
  if (touched === null) work.told.clear();
  else for (const colony of touched) work.told.delete(colony);
}

/** Told of one colony, from memory or by the engine; null where nothing can be told, or somebody asked anew meanwhile. */
export async function foreseeOne(work: Work, store: YardStore, colony: Id, ticket: number): Promise<Foreseen | null> {
  const { today, entries } = work.state;
  const known = work.told.get(colony);
  if (known !== undefined && known.day === today) return known;
  const kept = ((await store.snapshots.get(keptKey(colony))) ?? null) as KeptColony | null;
  const made = await work.around.foresee(entries, today, colony, kept);
  if (made === null || ticket !== work.asked || work.store !== store) return null;
  work.told.set(colony, made.foreseen);
  await keepTold(store, colony, made, kept, entries.length);
  return made.foreseen;
}

/**
 * All living colonies, the most urgent first; true when anything new was told, and nobody asked anew meanwhile. While a
 * visit is on the screen nothing is asked: the picture that follows it goes on.
 */
export async function foreseeYard(work: Work, store: YardStore, ticket: number): Promise<boolean> {
  const before = new Set(work.told.values());
  for (const colony of inOrder(work.state.picture)) {
    if (work.holds > 0) return false;
    await foreseeOne(work, store, colony, ticket);
    if (ticket !== work.asked || work.store !== store) return false;
  }
  return work.holds === 0 && [...work.told.values()].some((foreseen) => !before.has(foreseen));
}

function inOrder(picture: Picture | null): readonly Id[] {
  if (picture === null) return [];
  const living = picture.colonies.filter((view) => view.ended === null).map((view) => view.colony);
  const urgent = picture.round.map((stop) => stop.colony).filter((colony) => living.includes(colony));
  return [...new Set([...urgent, ...living])];
}

/** Derived things: that they cannot be kept costs time at the next start, nothing else. */
async function keepTold(
  store: YardStore,
  colony: Id,
  made: ForeseenColony,
  was: KeptColony | null,
  entries: number,
): Promise<void> {
  const told: StoredTold = { foreseen: made.foreseen, entries };
  try {
    await store.snapshots.put(toldKey(colony), told);
    if (made.kept === null) await store.snapshots.remove(keptKey(colony));
    else if (made.kept.key !== was?.key) await store.snapshots.put(keptKey(colony), made.kept);
  } catch {
    return;
  }
}

/** Entries that say nothing of any colony to the model. */
const silent: ReadonlySet<string> = new Set(['advice-issued', 'forecast-issued', 'note', 'contact', 'day-weather']);
const namers = ['colony', 'from', 'into', 'child'] as const;

/** Null: it may touch any of them. */
function touchedBy(entry: Entry, picture: Picture | null): readonly Id[] | null {
  if (silent.has(entry.kind) && entry.corrects === undefined) return [];
  const body = (typeof entry.body === 'object' && entry.body !== null ? entry.body : {}) as Readonly<Record<string, unknown>>;
  const hive = picture?.hives.find(({ id }) => id === body['hive']);
  if (entry.kind === 'reading' && hive !== undefined) return hive.colonies;
  if (!['visit', 'feeding', 'reign', 'swarm', 'split', 'unite', 'look', 'colony-ended'].includes(entry.kind)) return null;
  const named = namers.flatMap((name) => (typeof body[name] === 'string' ? [body[name]] : []));
  return named.length === 0 ? null : [...named, ...(hive?.colonies ?? [])];
}
