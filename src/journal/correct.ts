/**
 * Works corrections and voids into the entries that they name, before the fold. The entries given
 * are not changed: a corrected entry is a new record with the same id. A correction can itself be
 * corrected or voided, and a void too; a ring of them is a fault and none of the ring is in force.
 */
import type { Issue } from '../numbers/result.ts';
import { type AmendmentLevels, levelsOf } from './amendment-levels.ts';
import { settle } from './amendments.ts';
import { canonicalText } from './canonical.ts';
import type { Entry, Id } from './entry.ts';
import { type CorrectionBody, correctionKind } from './kind-correction.ts';
import { voidKind } from './kind-void.ts';
import { type KindMap, kindMap, readBody } from './read-entry.ts';

/** Two or more amendments of one entry whose writers did not know of each other. */
export interface Conflict {
  readonly target: Id;
  /** In order; the last is used until one that knew all of them settles it. */
  readonly amendments: readonly Id[];
}

export interface Corrected {
  /** The entries as they now stand, without corrections, voids and what is struck out; order as given. */
  readonly entries: readonly Entry[];
  /** Voided entries: still in the journal, shown struck out. */
  readonly struck: readonly Id[];
  readonly conflicts: readonly Conflict[];
  readonly faults: readonly Issue[];
}

export function isAmendment(entry: Entry): boolean {
  return (entry.kind === 'correction' || entry.kind === 'void') && entry.version === 1;
}

interface Work<D> {
  readonly kinds: KindMap<D>;
  /** Amendments in force, by the entry that they name. */
  readonly inForce: Map<Id, Entry[]>;
  readonly conflicts: Conflict[];
  readonly faults: Issue[];
}

interface Standing {
  readonly entry: Entry;
  readonly struck: boolean;
}

export function correctEntries<D>(entries: readonly Entry[], kinds: KindMap<D>): Corrected {
  const amendments = entries.filter(isAmendment);
  if (amendments.length === 0) return { entries, struck: [], conflicts: [], faults: [] };
  const work: Work<D> = { kinds, inForce: new Map(), conflicts: [], faults: [] };
  const struckAmendments = layUp(levelsOf(amendments), namedBy(entries, amendments), work);
  const standing: Entry[] = [];
  const struck: Id[] = [];
  for (const entry of entries) {
    if (isAmendment(entry)) {
      if (struckAmendments.has(entry.id)) struck.push(entry.id);
      continue;
    }
    const now = amended(entry, work, work.kinds);
    if (now.struck) struck.push(entry.id);
    else standing.push(now.entry);
  }
  return { entries: standing, struck, conflicts: work.conflicts, faults: work.faults };
}

const amendingKinds = kindMap<unknown>([correctionKind, voidKind]);

/** Settles the amendments from the outermost inwards: what corrects a correction is worked in before that correction is used. */
function layUp<D>(levels: AmendmentLevels, named: ReadonlyMap<Id, Entry>, work: Work<D>): ReadonlySet<Id> {
  const struck = new Set<Id>();
  for (const entry of levels.rings)
    work.faults.push(
      fault('correction-ring', entry, 'entries that correct each other in a ring', 'an entry that was there before'),
    );
  for (const entry of levels.outermostFirst) {
    const now = amended(entry, work, amendingKinds);
    if (now.struck) {
      struck.add(entry.id);
      continue;
    }
    const target = named.get(entry.corrects ?? '');
    if (target === undefined)
      work.faults.push(fault('target-missing', entry, entry.corrects ?? 'nothing', 'the id of an entry of this journal'));
    else if (target.yard !== entry.yard)
      work.faults.push(fault('other-yard', entry, `an entry of yard ${target.yard}`, `one of yard ${entry.yard}`));
    else work.inForce.set(target.id, [...(work.inForce.get(target.id) ?? []), now.entry]);
  }
  return struck;
}

function amended<D, K>(entry: Entry, work: Work<D>, kinds: KindMap<K>): Standing {
  const amendments = work.inForce.get(entry.id);
  if (amendments === undefined) return { entry, struck: false };
  const { chain, heads } = settle(amendments, sameChange);
  if (heads.length > 0) work.conflicts.push({ target: entry.id, amendments: heads.map((head) => head.id) });
  let now: Standing = { entry, struck: false };
  for (const amendment of chain) {
    if (amendment.kind === 'void') {
      now = { entry: now.entry, struck: true };
      continue;
    }
    const changed = withCorrection(now.entry, amendment.body as CorrectionBody);
    const read = readBody(changed, kinds);
    if (read.ok) now = { entry: changed, struck: false };
    else work.faults.push(...read.issues.map((issue) => ({ ...issue, path: `body.${issue.path}`, entry: amendment.id })));
  }
  return now;
}

/** The entry with one correction worked in: what it does not name stays. */
export function withCorrection(entry: Entry, correction: CorrectionBody): Entry {
  const newBody = Object.hasOwn(correction, 'body');
  return {
    ...entry,
    at: correction.at ?? entry.at,
    version: newBody ? (correction.version ?? entry.version) : entry.version,
    body: newBody ? correction.body : entry.body,
  };
}

function sameChange(a: Entry, b: Entry): boolean {
  if (a.kind !== b.kind) return false;
  if (a.kind === 'void') return true;
  const [one, other] = [a.body as CorrectionBody, b.body as CorrectionBody];
  const change = ({ body, at, version }: CorrectionBody): string => canonicalText({ body, at, version });
  return change(one) === change(other);
}

/** The entries that amendments name; only these are looked up. */
function namedBy(entries: readonly Entry[], amendments: readonly Entry[]): ReadonlyMap<Id, Entry> {
  const wanted = new Set(amendments.map((entry) => entry.corrects));
  return new Map(entries.filter((entry) => wanted.has(entry.id)).map((entry) => [entry.id, entry]));
}

function fault(code: string, entry: Entry, found: string, expected: string): Issue {
  return { code, path: 'corrects', found, expected, entry: entry.id };
}
