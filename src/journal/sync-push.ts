/**
 * The pushing half of `sync.ts`: batches of what waits. What was taken goes on waiting until it was read
 * back, because a server may be set back in between. A batch is taken whole or not at all; when
 * the server names the entries that it will not take, the others are pushed without them, and when
 * it names none, the batch is halved until the one at fault stands alone.
 */
import type { Issue } from '../numbers/result.ts';
import type { Entry, Id } from './entry.ts';
import type { LocalCopy, Remote } from './sync-ports.ts';

export interface Pushed {
  /** What the server took or had, and at which of its runs. */
  readonly taken: readonly Id[];
  readonly run: string | null;
  readonly refused: readonly Issue[];
  readonly otherEpoch: string | null;
  readonly stopped: readonly Issue[] | null;
}

/** Issues with these codes say nothing about the entries: the server cannot be reached, or not now. */
export const passingTroubles: readonly string[] = [
  'no-answer',
  'not-paired',
  'store-full',
  'server-fault',
  'too-many-tries',
  'wrong-host',
  'wrong-origin',
  'strange-answer',
];

interface Tally {
  readonly taken: Id[];
  run: string | null;
  readonly refused: Issue[];
  otherEpoch: string | null;
  stopped: readonly Issue[] | null;
}

export async function pushWaiting(local: LocalCopy, remote: Remote, epoch: string, size: number): Promise<Pushed> {
  const tally: Tally = { taken: [], run: null, refused: [], otherEpoch: null, stopped: null };
  let after: Id | null = null;
  while (tally.stopped === null && tally.otherEpoch === null) {
    const batch: readonly Entry[] = await local.waiting(after, size);
    const last = batch.at(-1);
    if (last === undefined) break;
    await pushBatch(batch, remote, epoch, tally);
    after = last.id;
  }
  return tally;
}

async function pushBatch(batch: readonly Entry[], remote: Remote, epoch: string, tally: Tally): Promise<void> {
  const open: (readonly Entry[])[] = [batch];
  for (let part = open.pop(); part !== undefined; part = open.pop()) {
    const answer = await remote.push(part);
    if (answer.ok) {
      if (answer.value.epoch !== epoch) {
        tally.otherEpoch = answer.value.epoch;
        return;
      }
      // A server that was opened anew in the middle proves nothing of what it took before.
      if (tally.run !== null && tally.run !== answer.value.run) tally.taken.length = 0;
      tally.run = answer.value.run;
      tally.taken.push(...part.map((entry) => entry.id));
      continue;
    }
    if (answer.issues.some((issue) => passingTroubles.includes(issue.code))) {
      tally.stopped = answer.issues;
      return;
    }
    open.push(...withoutRefused(part, answer.issues, tally));
  }
}

/** What to try next: the batch without the entries named, or its two halves; an entry refused alone is left waiting. */
function withoutRefused(part: readonly Entry[], issues: readonly Issue[], tally: Tally): readonly (readonly Entry[])[] {
  const named = new Set(issues.map((issue) => issue.entry));
  const rest = part.filter((entry) => !named.has(entry.id));
  if (rest.length < part.length) {
    tally.refused.push(...issues);
    return rest.length === 0 ? [] : [rest];
  }
  const [only] = part;
  if (part.length === 1 && only !== undefined) {
    tally.refused.push(...issues.map((issue) => ({ ...issue, entry: only.id })));
    return [];
  }
  const middle = Math.ceil(part.length / 2);
  return [part.slice(middle), part.slice(0, middle)];
}
