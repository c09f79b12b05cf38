/**
 * Brings a local copy and a server together: what waits here is pushed in batches, what arrived there
 * is pulled from a cursor. Every step may be cut short or done twice without harm, because both sides
 * are sets of entries by id. Pure but for its two ports; timers and networks live in the shells.
 */
import type { Issue } from '../numbers/result.ts';
import type { LocalCopy, PulledPage, Remote, SyncPlace } from './sync-ports.ts';
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
  let stopped: readonly Issue[] | null = null;
  for (let round = 0; ; round += 1) {
    const pull = await pullAll(local, remote, options.pullSize ?? 1000);
    pulled += pull.count;
    refused.push(...pull.issues);
    const epoch = pull.epoch;
    if (epoch === null) {
      stopped = pull.stopped;
      break;
    }
    const push = await pushWaiting(local, remote, epoch, options.pushSize ?? 100);
    pushed += push.count;
    refused.push(...push.refused);
    stopped = push.stopped;
    if (push.otherEpoch === null) break;
    if (round + 1 === mostRestarts) {
      stopped = [restless(push.otherEpoch)];
      break;
    }
    await local.restart(push.otherEpoch);
  }
  return { pushed, pulled, refused, pending: await local.waitingCount(), stopped };
}

interface Pulled {
  readonly count: number;
  readonly issues: readonly Issue[];
  /** Null when the exchange was cut. */
  readonly epoch: string | null;
  readonly stopped: readonly Issue[] | null;
}

/** Asks from one before the cursor, so that the first row proves that the cursor still means what it meant. */
async function pullAll(local: LocalCopy, remote: Remote, size: number): Promise<Pulled> {
  let count = 0;
  const issues: Issue[] = [];
  let place = await local.place();
  for (let restarts = 0; ;) {
    const overlap = place !== null && place.last !== null;
    const answer = await remote.pull(overlap && place !== null ? place.cursor - 1 : 0, size + 1);
    if (!answer.ok) return { count, issues, epoch: null, stopped: answer.issues };
    const page = answer.value;
    if (place === null || page.epoch !== place.epoch || (overlap && !proves(page, place))) {
      if (place !== null && (restarts += 1) > mostRestarts)
        return { count, issues, epoch: null, stopped: [restless(page.epoch)] };
      await local.restart(page.epoch);
      place = { epoch: page.epoch, cursor: 0, last: null };
      continue;
    }
    const rows = overlap ? page.rows.slice(1) : page.rows;
    place = { epoch: page.epoch, cursor: page.cursor, last: rows.at(-1)?.id ?? place.last };
    const received = await local.receive(
      rows.flatMap((row) => row.entry ?? []),
      place,
    );
    count += received.added.length;
    issues.push(...page.issues, ...received.issues);
    if (!page.more) return { count, issues, epoch: page.epoch, stopped: null };
  }
}

function proves(page: PulledPage, place: SyncPlace): boolean {
  const [first] = page.rows;
  return first !== undefined && first.seq === place.cursor && first.id === place.last;
}

function restless(epoch: string): Issue {
  return { code: 'restless-server', path: 'epoch', found: `again another epoch, ${epoch}`, expected: 'one server that stays' };
}
