/**
 * Reads one entry that came from outside: envelope, then body by its kind. What this program does
 * not understand (a kind or a version that it has not learnt) is kept exactly as it came; what is
 * wrong is refused with the field, what was found and what is expected. The stored entry is always
 * the one that came; upgrades of older versions are made on reading and never written back.
 */
import { addDays, type Day, daysBetween } from '../numbers/day.ts';
import { bad, good, type Issue, type Result } from '../numbers/result.ts';
import { canonicalText, isWhole, jsonFault } from './canonical.ts';
import { dayOf, type Entry, envelopeSchema } from './entry.ts';
import type { AnyKind } from './kind.ts';
import { issuesOf, shown } from './zod-issues.ts';

export type KindMap<D> = ReadonlyMap<string, AnyKind<D>>;

export interface ReadEntry {
  /** As it came. */
  readonly entry: Entry;
  readonly understood: boolean;
  /** The body in the newest version; the body as it came when it is not understood. */
  readonly body: unknown;
  /** Odd but possible: a clock that was wrong. The entry is kept. */
  readonly warnings: readonly Issue[];
}

export interface ReadOptions {
  /** The last day that it can be anywhere on Earth now; absent when no clock is to be trusted. */
  readonly today?: Day;
}

/** Characters of canonical text in one entry: fifty thousand words of notes, or some hundred full readings. */
export const longestEntry = 256 * 1024;

export function kindMap<D>(kinds: readonly AnyKind<D>[]): KindMap<D> {
  return new Map(kinds.map((kind) => [kind.kind, kind]));
}

export function readEntry<D>(value: unknown, kinds: KindMap<D>, options: ReadOptions = {}): Result<ReadEntry> {
  const owner = idOf(value);
  const unfit = jsonFault(value) ?? sizeFault(value);
  if (unfit !== null) return bad(owner === null ? unfit : { ...unfit, entry: owner });
  const envelope = envelopeSchema.safeParse(value);
  if (!envelope.success) return { ok: false, issues: issuesOf(envelope.error.issues, value, '', owner ?? undefined) };
  const entry = value as Entry;
  const early = [...aheadOfNow(entry, options.today), ...targetFaults(entry, kinds)];
  if (early.length > 0) return { ok: false, issues: early };
  const warnings = clockWarnings(entry);
  const body = readBody(entry, kinds);
  if (!body.ok) return body;
  return good({ entry, understood: body.value.understood, body: body.value.body, warnings });
}

/** The body in the newest version, checked. Also used for the body that a correction brings. */
export function readBody<D>(entry: Entry, kinds: KindMap<D>): Result<{ readonly understood: boolean; readonly body: unknown }> {
  const kind = kinds.get(entry.kind);
  if (kind === undefined || entry.version > kind.version) return good({ understood: false, body: entry.body });
  const older = entry.version < kind.version && kind.upgrade !== undefined;
  const body: unknown = older ? upgraded(kind, entry) : entry.body;
  const parsed = kind.schema.safeParse(body);
  if (parsed.success) return good({ understood: true, body });
  return { ok: false, issues: issuesOf(parsed.error.issues, body, 'body', entry.id) };
}

/** An upgrade may meet a body that its old schema would have refused; what it makes of it is then refused by the new one. */
function upgraded<D>(kind: AnyKind<D>, entry: Entry): unknown {
  try {
    return kind.upgrade?.(entry.version, entry.body);
  } catch {
    return undefined;
  }
}

function idOf(value: unknown): string | null {
  if (typeof value !== 'object' || value === null || !Object.hasOwn(value, 'id')) return null;
  const id = (value as { id: unknown }).id;
  return typeof id === 'string' && id.length <= 60 && isWhole(id) ? id : null;
}

function sizeFault(value: unknown): Issue | null {
  const { length } = canonicalText(value);
  if (length <= longestEntry) return null;
  return { code: 'entry-too-large', path: '', found: `${length} characters`, expected: `at most ${longestEntry} in one entry` };
}

function aheadOfNow(entry: Entry, today: Day | undefined): readonly Issue[] {
  if (today === undefined) return [];
  const days: readonly (readonly [string, string])[] = [
    ['at', entry.at],
    ['noted', entry.noted],
  ];
  return days
    .filter(([, text]) => dayOf(text) > today)
    .map(([path, text]) => ({ code: 'ahead-of-now', path, found: text, expected: `not after ${today}`, entry: entry.id }));
}

/** Only corrections and voids name another entry, and they must. Of what is not understood nothing is asked. */
function targetFaults<D>(entry: Entry, kinds: KindMap<D>): readonly Issue[] {
  const { kind, version, corrects, id } = entry;
  if (version > (kinds.get(kind)?.version ?? 0)) return [];
  const amends = kind === 'correction' || kind === 'void';
  if (amends && corrects === undefined) {
    return [
      { code: 'missing', path: 'corrects', found: 'nothing', expected: 'the id of the entry that is corrected', entry: id },
    ];
  }
  if (corrects === id)
    return [{ code: 'corrects-itself', path: 'corrects', found: id, expected: 'the id of another entry', entry: id }];
  if (!amends && corrects !== undefined) {
    return [
      { code: 'unknown-field', path: 'corrects', found: shown(corrects), expected: 'no such field in this kind', entry: id },
    ];
  }
  return [];
}

/** Noted before it was so, by more than time zones explain: one of the two clocks was wrong. */
function clockWarnings(entry: Entry): readonly Issue[] {
  if (daysBetween(dayOf(entry.noted), dayOf(entry.at)) <= 1) return [];
  const expected = `not before ${addDays(dayOf(entry.at), -1)}, the day before it was so`;
  return [{ code: 'clock-fault', path: 'noted', found: entry.noted, expected, entry: entry.id }];
}
