/** When the device talks to the server: at start, after writing, when the line is back, and how long it waits. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { memoryCopy } from '../../../journal/memory-copy.ts';
import { memoryStore } from '../../../journal/memory-store.ts';
import { filled } from '../../../journal/sample.contract.ts';
import { remoteOver } from '../../../journal/sync.contract.ts';
import type { Remote } from '../../../journal/sync-ports.ts';
import { bad } from '../../../numbers/result.ts';
import { firstWaitMs, longestWaitMs, restMs, startSync, type SyncAround, type SyncStatus } from './sync-loop.ts';

interface World extends SyncAround {
  /** Waits that were asked for, and the work of the last one. */
  readonly waits: number[];
  readonly tick: () => void;
  readonly wake: () => void;
}

function world(): World {
  const waits: number[] = [];
  let work: (() => void) | null = null;
  let onWake: () => void = () => undefined;
  return {
    waits,
    now: () => new Date('2014-05-16T12:00:00Z'),
    later: (next, ms) => {
      waits.push(ms);
      work = next;
      return () => (work = null);
    },
    onWake: (next) => {
      onWake = next;
      return () => (onWake = () => undefined);
    },
    tick: () => work?.(),
    wake: () => onWake(),
  };
}

/** Until the loop waits for its timer again. */
async function settled(around: World, waits: number): Promise<void> {
  while (around.waits.length < waits) await new Promise((resolve) => setImmediate(resolve));
}

const silent: Remote = {
  push: () => Promise.resolve(bad({ code: 'no-answer', path: 'server', found: 'x', expected: 'y' })),
  pull: () => Promise.resolve(bad({ code: 'no-answer', path: 'server', found: 'x', expected: 'y' })),
};

test('S34 it tries at the start, after an append and when the device wakes, and counts what is not on the server yet', async () => {
  const around = world();
  const [copy, store] = [memoryCopy(), memoryStore()];
  await copy.append([filled(1, 'a', 1)]);
  const told: SyncStatus[] = [];
  const loop = startSync(copy, remoteOver(store), around, (status) => told.push(status));
  await settled(around, 1);
  assert.equal(told[0]?.pending, 1);
  assert.deepEqual([loop.status().pending, loop.status().lastOk, loop.status().error], [0, '2014-05-16T12:00:00Z', null]);
  assert.deepEqual(around.waits, [restMs]);
  await copy.append([filled(2, 'a', 1)]);
  loop.nudge();
  await settled(around, 2);
  assert.equal(await store.count(), 2);
  await store.append([filled(3, 'a', 1)]);
  around.wake();
  await settled(around, 3);
  assert.equal(loop.status().pulled, 1);
  loop.stop();
});

test('S35 while nobody answers it waits longer each time, keeps everything, and says since when', async () => {
  const around = world();
  const copy = memoryCopy();
  await copy.append([filled(1, 'a', 1)]);
  const loop = startSync(copy, silent, around, () => undefined);
  for (let n = 1; n <= 9; n += 1) {
    await settled(around, n);
    around.tick();
  }
  await settled(around, 10);
  assert.deepEqual(around.waits.slice(0, 4), [firstWaitMs, firstWaitMs * 2, firstWaitMs * 4, firstWaitMs * 8]);
  assert.equal(around.waits.at(-1), longestWaitMs);
  assert.deepEqual([loop.status().pending, loop.status().error?.code, loop.status().lastOk], [1, 'no-answer', null]);
  loop.stop();
});

test('S36 one exchange runs at a time; nudges meanwhile make one more, and after stopping there is none', async () => {
  const around = world();
  const store = memoryStore();
  let open = 0;
  let most = 0;
  let pulls = 0;
  const counted: Remote = {
    push: remoteOver(store).push,
    pull: async (cursor, limit) => {
      pulls += 1;
      most = Math.max(most, (open += 1));
      await new Promise((resolve) => setImmediate(resolve));
      open -= 1;
      return remoteOver(store).pull(cursor, limit);
    },
  };
  const told: SyncStatus[] = [];
  const loop = startSync(memoryCopy(), counted, around, (status) => told.push(status));
  for (let n = 0; n < 5; n += 1) loop.nudge();
  await settled(around, 1);
  assert.equal(most, 1);
  const before = pulls;
  loop.stop();
  around.tick();
  loop.nudge();
  around.wake();
  const heard = told.length;
  await new Promise((resolve) => setTimeout(resolve, 5));
  assert.deepEqual([pulls, told.length], [before, heard]);
});

test('S37 a store that fails is reported and tried again', async () => {
  const around = world();
  const copy = { ...memoryCopy(), place: () => Promise.reject(new Error('the disk is gone')) };
  const loop = startSync(copy, silent, around, () => undefined);
  await settled(around, 1);
  assert.deepEqual([loop.status().error?.code, loop.status().busy, around.waits], ['sync-stopped', false, [firstWaitMs]]);
  loop.stop();
});
