/**
 * Which of several corrections and voids of one entry holds. Each names in `knew` those that its
 * writer had seen. One that nobody later knew of is a *head*; a single head holds. Two heads did not
 * know of each other: both are shown, and until the keeper settles it the later in order is used.
 */
import type { Entry, Id } from './entry.ts';
import { byOrder } from './order.ts';

export interface Settled {
  /** What to work into the entry, first to last; the last one decides. */
  readonly chain: readonly Entry[];
  /** Heads that disagree, in order; empty when there is nothing to settle. */
  readonly heads: readonly Entry[];
}

/** `amendments` are those in force, of one target. `sameChange` says whether two of them come to the same. */
export function settle(amendments: readonly Entry[], sameChange: (a: Entry, b: Entry) => boolean): Settled {
  const byId = new Map(amendments.map((entry) => [entry.id, entry]));
  const seen = new Map(amendments.map((entry) => [entry.id, knownTo(entry, byId)]));
  const known = new Set<Id>();
  for (const [id, before] of seen) for (const one of before) if (one !== id) known.add(one);
  const free = amendments.filter((entry) => !known.has(entry.id));
  const heads = (free.length === 0 ? [...amendments] : free).sort(byOrder);
  const winner = heads.at(-1);
  if (winner === undefined) return { chain: [], heads: [] };
  const size = (entry: Entry): number => seen.get(entry.id)?.size ?? 0;
  const before = [...(seen.get(winner.id) ?? [])].flatMap((id) => (id === winner.id ? [] : [byId.get(id) as Entry]));
  before.sort((a, b) => size(a) - size(b) || byOrder(a, b));
  const differ = heads.some((head) => head !== winner && !sameChange(head, winner));
  return { chain: [...before, winner], heads: differ ? heads : [] };
}

/** All amendments of the same target that the writer of this one knew, directly or through those. */
export function knownTo(entry: Entry, byId: ReadonlyMap<Id, Entry>): ReadonlySet<Id> {
  const found = new Set<Id>();
  const open = [...knewOf(entry)];
  for (let id = open.pop(); id !== undefined; id = open.pop()) {
    const one = byId.get(id);
    if (one === undefined || found.has(id)) continue;
    found.add(id);
    open.push(...knewOf(one));
  }
  return found;
}

function knewOf(entry: Entry): readonly Id[] {
  return (entry.body as { readonly knew: readonly Id[] }).knew;
}
