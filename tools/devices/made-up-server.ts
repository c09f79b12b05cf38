/**
 * A server that can be opened anew and set back to an older copy of itself, with the numbers and runs that a real one
 * gives. What it holds is text, so that nothing is shared with the devices by accident.
 */
import type { Entry } from '../../src/journal/entry.ts';
import { sortOut } from '../../src/journal/sort-out.ts';
import type { Remote, SyncPlace } from '../../src/journal/sync-ports.ts';
import { bad, good } from '../../src/numbers/result.ts';

interface Row {
  readonly seq: number;
  readonly run: string;
  readonly id: string;
  readonly text: string;
}

export interface MadeUpServer {
  readonly remote: Remote;
  readonly ids: () => readonly string[];
  readonly has: (id: string) => boolean;
  /** Whether what a device remembers of its place is still true. */
  readonly proves: (place: SyncPlace) => boolean;
  readonly copy: () => void;
  /** Back to one of the copies, opened anew; false when there is none. */
  readonly setBack: (which: number) => boolean;
  readonly openAnew: () => void;
}

/** `forgetful`: it gives every run the same name, as a server without runs would. */
export function madeUpServer(forgetful = false): MadeUpServer {
  let rows: readonly Row[] = [];
  let opened = 1;
  const copies: (readonly Row[])[] = [];
  const run = (): string => (forgetful ? 'run' : `run ${opened}`);
  const epoch = 'one';
  const entryOf = (row: Row): Entry => JSON.parse(row.text) as Entry;
  const byId = (): ReadonlyMap<string, Row> => new Map(rows.map((row) => [row.id, row]));
  return {
    remote: {
      push: (entries) => {
        const known = byId();
        const sorted = sortOut(entries, (id) => known.get(id)?.text);
        if (sorted.issues.length > 0) return Promise.resolve(bad(...sorted.issues));
        const last = rows.at(-1)?.seq ?? 0;
        const fresh = [...sorted.fresh].map(([id, text], i) => ({ seq: last + 1 + i, run: run(), id, text }));
        rows = [...rows, ...fresh];
        return Promise.resolve(good({ epoch, run: run(), added: [...sorted.fresh.keys()], known: sorted.known }));
      },
      pull: (cursor, limit) => {
        const found = rows.filter((row) => row.seq > cursor);
        const page = found.slice(0, limit);
        return Promise.resolve(
          good({
            epoch,
            run: run(),
            rows: page.map((row) => ({ seq: row.seq, run: row.run, id: row.id, entry: entryOf(row) })),
            cursor: page.at(-1)?.seq ?? cursor,
            more: found.length > limit,
            issues: [],
          }),
        );
      },
    },
    ids: () => rows.map((row) => row.id),
    has: (id) => rows.some((row) => row.id === id),
    proves: ({ epoch: known, cursor, last }) => {
      if (known !== epoch) return false;
      if (last === null) return true;
      return rows.some((row) => row.seq === cursor && row.id === last.id && row.run === last.run);
    },
    copy: () => copies.push(rows),
    setBack: (which) => {
      const copy = copies[which % Math.max(1, copies.length)];
      if (copy === undefined) return false;
      rows = copy;
      opened += 1;
      return true;
    },
    openAnew: () => {
      opened += 1;
    },
  };
}
