/**
 * What corrections of one entry that did not know of each other come to, one beside the other: how the entry would
 * stand if each were kept alone, and only the values in which that differs. It writes nothing; `keepOne` says what keeping one means.
 */
import { type Conflict, isAmendment } from '../../../journal/correct.ts';
import type { Entry, Id } from '../../../journal/entry.ts';
import { type Kept, keepOne } from '../../../journal/keep-one.ts';
import { allLeavesOf } from './leaves.ts';

export interface Rival {
  readonly head: Entry;
  /** Kept, it strikes the entry out. */
  readonly struck: boolean;
}

export interface RivalRow {
  /** Dotted, into the body; null for the day and time of the entry. */
  readonly path: string | null;
  /** As first written; null where there was nothing. */
  readonly first: string | null;
  /** One for each rival, in their order; null where it would hold nothing. */
  readonly values: readonly (string | null)[];
}

export interface SideBySide {
  readonly rivals: readonly Rival[];
  readonly rows: readonly RivalRow[];
}

interface Side {
  readonly at: string;
  readonly leaves: ReadonlyMap<string, string>;
}

/** How a value and its unit are said together. */
export type SayTyped = (value: string, unit: string) => string;

/** `entries` is the journal; `heads` are the amendments of a conflict, all of `target`. */
export function sideBySide(entries: readonly Entry[], target: Entry, heads: readonly Entry[], say: SayTyped): SideBySide {
  const first = { at: target.at, leaves: leafMap(target, say) };
  const kept = heads.map((head) => keepOne(entries, target, head, ''));
  const sides = kept.map((one) => sideOf(target, one, say));
  const rivals = heads.map((head, n) => ({ head, struck: sides[n] === null }));
  const standing = sides.filter((side) => side !== null);
  // Beside one that strikes out, what the others changed is shown as well.
  const compared = standing.length < sides.length || standing.length === 1 ? [first, ...standing] : standing;
  const rowOf = (path: string | null, of: (side: Side) => string | null): readonly RivalRow[] => {
    if (new Set(compared.map(of)).size < 2) return [];
    return [{ path, first: of(first), values: sides.map((side) => (side === null ? null : of(side))) }];
  };
  const paths = new Set([first, ...standing].flatMap(({ leaves }) => [...leaves.keys()]));
  const rows = [
    ...rowOf(null, ({ at }) => at),
    ...[...paths].flatMap((path) => rowOf(path, ({ leaves }) => leaves.get(path) ?? null)),
  ];
  return { rivals, rows };
}

/** Whether one who had seen all of them has decided, and not taken it back: the picture may not have caught up with that yet. */
export function isSettled(entries: readonly Entry[], { target, amendments }: Conflict): boolean {
  const voided = new Set(entries.flatMap(({ kind, corrects }) => (kind === 'void' ? (corrects ?? []) : [])));
  return entries.some((entry) => {
    if (entry.corrects !== target || voided.has(entry.id) || !isAmendment(entry)) return false;
    const { knew } = entry.body as { readonly knew: readonly Id[] };
    return amendments.every((id) => knew.includes(id));
  });
}

function sideOf(target: Entry, kept: Kept, say: SayTyped): Side | null {
  if (kept.kind === 'void') return null;
  const { at, body } = kept.body as { readonly at: string; readonly body: unknown };
  return { at, leaves: leafMap({ ...target, body }, say) };
}

/** An empty field is nothing; what a correction had seen is no matter of the keeper's; a value stands with its unit. */
function leafMap(entry: Entry, say: SayTyped): ReadonlyMap<string, string> {
  const leaves = allLeavesOf(entry.body).filter(
    ({ path, text }) => text !== '' && !(entry.corrects !== undefined && path.startsWith('knew.')),
  );
  const plain = new Map(leaves.map(({ path, text }) => [path, text]));
  for (const { path, text: unit } of leaves) {
    const whole = path.replace(/\.unit$/, '');
    const value = plain.get(`${whole}.value`);
    if (whole === path || value === undefined) continue;
    plain.delete(path);
    plain.delete(`${whole}.value`);
    plain.set(whole, say(value, unit));
  }
  return plain;
}
