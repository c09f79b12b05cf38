/**
 * Keeps the browser's journal and the server together: tries at the start, after every append, when
 * the device is online again, and now and then; after a failure it waits longer each time. One
 * exchange runs at a time. It reports how many entries are not yet on the server.
 */
import type { Instant } from '../../../journal/entry.ts';
import { syncOnce } from '../../../journal/sync.ts';
import type { LocalCopy, Remote } from '../../../journal/sync-ports.ts';
import type { Issue } from '../../../numbers/result.ts';

export interface SyncStatus {
  /** Entries not yet on the server. */
  readonly pending: number;
  readonly busy: boolean;
  /** When both sides were last through with each other; null since the app was opened. */
  readonly lastOk: Instant | null;
  /** What cut the last exchange short; null after a good one. Code `not-paired`: ask for the code. */
  readonly error: Issue | null;
  /** Entries that the server will not take, or that came and could not be kept. */
  readonly refused: readonly Issue[];
  /** Entries that came from the server since the app was opened: when it grows, read the store again. */
  readonly pulled: number;
}

export interface SyncAround {
  readonly now: () => Date;
  /** Returns what stops the timer. */
  readonly later: (work: () => void, ms: number) => () => void;
  /** Calls when the device is online again, or the app is looked at again; returns what stops it. */
  readonly onWake: (work: () => void) => () => void;
}

export interface SyncLoop {
  /** Something was appended, or a device was paired: try now. */
  readonly nudge: () => void;
  readonly status: () => SyncStatus;
  readonly stop: () => void;
}

export const firstWaitMs = 2_000;
export const longestWaitMs = 300_000;
export const restMs = 60_000;

export function startSync(copy: LocalCopy, remote: Remote, around: SyncAround, onStatus: (status: SyncStatus) => void): SyncLoop {
  let status: SyncStatus = { pending: 0, busy: false, lastOk: null, error: null, refused: [], pulled: 0 };
  let failures = 0;
  let again = false;
  let stopped = false;
  let cancel: () => void = () => undefined;

  function report(part: Partial<SyncStatus>): void {
    status = { ...status, ...part };
    if (!stopped) onStatus(status);
  }

  async function exchange(): Promise<void> {
    report({ busy: true, pending: await copy.waitingCount() });
    const done = await syncOnce(copy, remote);
    const error = done.stopped?.[0] ?? null;
    failures = error === null ? 0 : failures + 1;
    report({
      busy: false,
      pending: done.pending,
      error,
      refused: done.refused,
      pulled: status.pulled + done.pulled,
      lastOk: error === null ? `${around.now().toISOString().slice(0, 19)}Z` : status.lastOk,
    });
  }

  function run(): void {
    if (stopped) return;
    if (status.busy) {
      again = true;
      return;
    }
    cancel();
    again = false;
    status = { ...status, busy: true };
    exchange()
      .catch((error: unknown) => {
        failures += 1;
        report({
          busy: false,
          error: { code: 'sync-stopped', path: 'store', found: String(error), expected: 'a store that can be read and written' },
        });
      })
      .finally(() => {
        if (again) run();
        else cancel = around.later(run, failures === 0 ? restMs : Math.min(longestWaitMs, firstWaitMs * 2 ** (failures - 1)));
      });
  }

  const unwake = around.onWake(run);
  run();
  return {
    nudge: run,
    status: () => status,
    stop: () => {
      stopped = true;
      cancel();
      unwake();
    },
  };
}

/** The real surroundings, in a window of a browser. */
export function browserAround(window: Window): SyncAround {
  return {
    now: () => new Date(),
    later: (work, ms) => {
      const timer = window.setTimeout(work, ms);
      return () => window.clearTimeout(timer);
    },
    onWake: (work) => {
      const onSight = (): void => {
        if (window.document.visibilityState === 'visible') work();
      };
      window.addEventListener('online', work);
      window.document.addEventListener('visibilitychange', onSight);
      return () => {
        window.removeEventListener('online', work);
        window.document.removeEventListener('visibilitychange', onSight);
      };
    },
  };
}
