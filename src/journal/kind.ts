/**
 * A kind of entry: a frozen record of pure functions in its own file, in the room that owns the
 * thing. `apiary.ts` names all kinds in one array; adding a kind is one file and one line there.
 */
import type * as z from 'zod/mini';
import type { Issue } from '../numbers/result.ts';
import type { Entry } from './entry.ts';

export interface EntryKind<B, D> {
  readonly kind: string;
  /** The newest version that this program writes and understands. */
  readonly version: number;
  readonly schema: z.ZodMiniType<B>;
  /** Turns the body of an older version into the newest; absent while there is only version 1. */
  readonly upgrade?: (version: number, body: unknown) => unknown;
  /**
   * Works the entry into the draft of the state, which it may change in place (the draft belongs to
   * this one fold). What does not fit is returned as faults; the entry is then not applied and stays
   * in the journal.
   */
  readonly apply: (draft: D, entry: Entry<B>) => readonly Issue[];
}

/** A kind whose body type is forgotten, for lists. */
// eslint-disable-next-line @typescript-eslint/no-explicit-any
export type AnyKind<D> = EntryKind<any, D>;

/** Keeps the body's type while a kind is written down. */
export function entryKind<B, D>(given: EntryKind<B, D>): EntryKind<B, D> {
  return Object.freeze(given);
}

export const fits: readonly Issue[] = [];
