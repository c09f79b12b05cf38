/**
 * What the screens ask of a place to keep things: a journal that only grows, and two shelves beside
 * it: drafts that are not yet entries, and derived things that may be thrown away. The browser's
 * database is one of these; the memory store of the tests is another.
 */
import type { JournalStore } from '../../../journal/store.ts';

/** Named values on disk; a promise that has been kept is on disk. */
export interface Shelf {
  get(key: string): Promise<unknown>;
  put(key: string, value: unknown): Promise<void>;
  remove(key: string): Promise<void>;
}

export interface YardStore {
  readonly journal: JournalStore;
  /** Taps of visits that are not closed; never thrown away by the program itself. */
  readonly drafts: Shelf;
  /** The last Picture and other derived things: safe to lose. */
  readonly snapshots: Shelf;
  /** True when nothing survives the page. */
  readonly forgets: boolean;
  /** Entries that no server has yet; null when this store knows of no server. */
  unsent(): Promise<number | null>;
  /** Sends the pairing code to the server; true when it was taken. */
  pair(code: string): Promise<boolean>;
}
