/**
 * Brings a local copy and a server together: what waits here is pushed in batches, what arrived there
 * is pulled from a cursor. Every step may be cut short or done twice without harm, because both sides
 * are sets of entries by id. Pure but for its two ports; timers and networks live in the shells.
 */
import type { Issue } from '../numbers/result.ts';
import type { LocalCopy, PulledPage, PulledRow, Remote, SyncPlace } from './sync-ports.ts';
import { pushWaiting } from './sync-push.ts';

export interface Synced {
  readonly pushed: number;
  readonly pulled: number;
  /** What the server would not take, or what came and could not be kept. These entries stay where they are. */
  readonly refused: readonly Issue[];
  /** Entries not yet on the server. */
  readonly pending: number;
  /** What cut the exchange short; null when both sides are through. */
  readonly stopped: readonly Issue[] | null;
}

export interface SyncOptions {
  readonly pushSize?: number;
  readonly pullSize?: number;
}

/** Epochs may change while we talk, but hardly often: then somebody is restoring, and we come back later. */
const mostRestarts = 3;

export async function syncOnce(local: LocalCopy, remote: Remote, options: SyncOptions = {}): Promise<Synced> {
  let pulled = 0;
  let pushed = 0;
  const refused: Issue[] = [];
  const pull = async (): Promise<Pulled> => {
    const done = await pullAll(local, remote, options.pullSize ?? 1000);
    pulled += done.count;
    refused.push(...done.issues);
    return done;
  };
  const through = async (stopped: readonly Issue[] | null): Promise<Synced> => {
    return { pushed, pulled, refused, pending: await local.waitingCount(), stopped };
  };
  let before = await pull();
  for (let round = 0; ; round += 1) {
    if (before.epoch === null) return through(before.stopped);
    const push = await pushWaiting(local, remote, before.epoch, options.pushSize ?? 100);
    refused.push(...push.refused);
    if (push.otherEpoch === null && (push.stopped !== null || push.run === null)) return through(push.stopped);
    if (round === mostRestarts) return through([restless(push.otherEpoch ?? before.epoch)]);
    if (push.otherEpoch !== null) await local.restart(push.otherEpoch, await local.place());
    before = await pull();
    // The same run before and after: what it took then is there now, though it may lie before the cursor.
    if (push.otherEpoch !== null || before.run !== push.run) continue;
    await local.settle(push.taken);
    pushed += push.taken.length;
    return through(before.stopped);
  }
}

interface Pulled {
  readonly count: number;
  readonly issues: readonly Issue[];
  /** Null when the exchange was cut. */
  readonly epoch: string | null;
  /** Null when the exchange was cut, or the server was opened anew in the middle of it. */
  readonly run: string | null;
  readonly stopped: readonly Issue[] | null;
}

/** Windows of one device that read at the same time come past each other; more often than this something else is wrong. */
const mostTurns = 1000;

/** Asks from one before the cursor, so that the first row proves that the cursor still means what it meant. */
async function pullAll(local: LocalCopy, remote: Remote, size: number): Promise<Pulled> {
  let count = 0;
  const issues: Issue[] = [];
  const runs = new Set<string>();
  const cut = (stopped: readonly Issue[]): Pulled => ({ count, issues, epoch: null, run: null, stopped });
  let place = await local.place();
  for (let turns = 0, restarts = 0; ; turns += 1) {
    const overlap = place !== null && place.last !== null;
    const answer = await remote.pull(overlap && place !== null ? place.cursor - 1 : 0, size + 1);
    if (!answer.ok) return cut(answer.issues);
    const page = answer.value;
    runs.add(page.run);
    if (place === null || page.epoch !== place.epoch || (overlap && !proves(page, place))) {
      if (turns === mostTurns || (place !== null && (restarts += 1) > mostRestarts)) return cut([restless(page.epoch)]);
      const from = place;
      place = { epoch: page.epoch, cursor: 0, last: null };
      if (!(await local.restart(page.epoch, from))) place = await local.place();
      continue;
    }
    const rows = overlap ? page.rows.slice(1) : page.rows;
    const last = rows.at(-1);
    const next: SyncPlace = { epoch: page.epoch, cursor: page.cursor, last: last === undefined ? place.last : placeOf(last) };
    const received = await local.receive(
      rows.flatMap((row) => row.entry ?? []),
      next,
      place,
    );
    if (received === null && turns === mostTurns) return cut([restless(page.epoch)]);
    place = received === null ? await local.place() : next;
    if (received === null) continue;
    count += received.added.length;
    issues.push(...page.issues, ...received.issues);
    if (!page.more) return { count, issues, epoch: page.epoch, run: runs.size === 1 ? page.run : null, stopped: null };
  }
}

function placeOf({ id, run }: PulledRow): NonNullable<SyncPlace['last']> {
  return { id, run };
}

function proves(page: PulledPage, place: SyncPlace): boolean {
  const [first] = page.rows;
  return first !== undefined && first.seq === place.cursor && first.id === place.last?.id && first.run === place.last.run;
}

function restless(epoch: string): Issue {
  return { code: 'restless-server', path: 'epoch', found: `again another epoch, ${epoch}`, expected: 'one server that stays' };
}
