/**
 * The port of a store: where entries are kept, in memory, in a browser or on a server. A store is a
 * grow-only set of entries by id with a number of arrival (`seq`); it never changes or forgets one.
 * All stores pass the one suite in `store.contract.ts`.
 */
import type { Result } from '../numbers/result.ts';
import type { Entry, Id } from './entry.ts';

export interface Stored {
  /** Arrival number in this store, growing, gaps allowed. */
  readonly seq: number;
  /** The opening of the store at which it arrived. */
  readonly run: string;
  readonly entry: Entry;
}

export interface Page {
  readonly rows: readonly Stored[];
  /** Ask for rows after this number next; equal to the one asked with when there is nothing new. */
  readonly cursor: number;
  readonly more: boolean;
}

export interface Appended {
  readonly added: readonly Id[];
  /** Already there with the same content: nothing was done. */
  readonly known: readonly Id[];
}

export interface JournalStore {
  /** Names this copy of the data; changes when the store was restored or replaced, so that cursors are not trusted. */
  readonly epoch: string;
  /** Names this opening of the store: what a set back copy takes in never bears a run that another copy gave. */
  readonly run: string;
  /**
   * Adds all of the batch durably, or, when an id is there with other content (`duplicate-id`, both
   * hashes named) or the disk is full (`store-full`), none of it.
   */
  append(entries: readonly Entry[]): Promise<Result<Appended>>;
  /** Entries that arrived after `cursor`, oldest first, at most `limit`. */
  read(cursor: number, limit: number): Promise<Page>;
  count(): Promise<number>;
  close(): Promise<void>;
}
