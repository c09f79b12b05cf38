/** The two ports of a sync: a copy of the journal on this device, and the server's. Both are sets of entries by id. */
import type { Issue, Result } from '../numbers/result.ts';
import type { Entry, Id } from './entry.ts';
import type { Appended } from './store.ts';

/** How far this copy has read the server. */
export interface SyncPlace {
  readonly epoch: string;
  readonly cursor: number;
  /**
   * The entry at the cursor and the run at which it arrived there. If the server has another one there, or took it in at
   * another run, it was set back to an older copy and the cursor means nothing.
   */
  readonly last: { readonly id: string; readonly run: string } | null;
}

export interface LocalCopy {
  place(): Promise<SyncPlace | null>;
  /**
   * Forgets the place and offers every entry again, in one step. False, and nothing done, when the place is no longer the
   * one named: another window of this device was there first.
   */
  restart(epoch: string, from: SyncPlace | null): Promise<boolean>;
  /** Entries that the server has not confirmed, by id, after the one named. */
  waiting(after: Id | null, limit: number): Promise<readonly Entry[]>;
  waitingCount(): Promise<number>;
  /** The server has these. */
  settle(ids: readonly Id[]): Promise<void>;
  /**
   * Keeps what came, leaves out an id that is here with other content (an issue each), drops what is
   * now on both sides from the waiting ones and remembers the place, all in one step. Null, and nothing
   * done, when the place is no longer the one that was read on from.
   */
  receive(entries: readonly Entry[], place: SyncPlace, from: SyncPlace | null): Promise<Received | null>;
}

export interface Received {
  readonly added: readonly Id[];
  readonly issues: readonly Issue[];
}

export interface Remote {
  push(entries: readonly Entry[]): Promise<Result<Appended & { readonly epoch: string; readonly run: string }>>;
  pull(cursor: number, limit: number): Promise<Result<PulledPage>>;
}

export interface PulledRow {
  readonly seq: number;
  readonly run: string;
  /** As found, even when the entry is wrong. */
  readonly id: string;
  /** Null for what this program refuses to keep; the reason is among the page's issues. */
  readonly entry: Entry | null;
}

export interface PulledPage {
  readonly epoch: string;
  /** The server's run as it answers. */
  readonly run: string;
  readonly rows: readonly PulledRow[];
  readonly cursor: number;
  readonly more: boolean;
  readonly issues: readonly Issue[];
}

/** Two places that are the same, wherever they were kept meanwhile. */
export function samePlace(a: SyncPlace | null, b: SyncPlace | null): boolean {
  if (a === null || b === null) return a === b;
  return a.epoch === b.epoch && a.cursor === b.cursor && a.last?.id === b.last?.id && a.last?.run === b.last?.run;
}
