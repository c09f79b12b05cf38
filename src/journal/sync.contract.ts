/**
 * The suite that every local copy passes: devices that push and pull over a bad line end up with the
 * same journal. The line loses requests, loses answers after the server has committed, repeats
 * requests and cuts an exchange short, all by the seed of the run.
 */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { bad, good, type Result } from '../numbers/result.ts';
import { memoryStore } from './memory-store.ts';
import { filled, idOf } from './sample.contract.ts';
import { readAll } from './store.contract.ts';
import type { JournalStore } from './store.ts';
import { syncOnce } from './sync.ts';
import type { LocalCopy, Remote } from './sync-ports.ts';

export type Copy = JournalStore & LocalCopy;

/** Every promise is kept: what goes in goes out. */
export function remoteOver(store: JournalStore): Remote {
  return {
    push: async (entries) => {
      const appended = await store.append(entries);
      return appended.ok ? good({ ...appended.value, epoch: store.epoch }) : appended;
    },
    pull: async (cursor, limit) => {
      const page = await store.read(cursor, limit);
      return good({ ...page, epoch: store.epoch, rows: page.rows.map((row) => ({ ...row, id: row.entry.id })), issues: [] });
    },
  };
}

type Fate = 'well' | 'lost before' | 'lost after' | 'twice';

/** Each request meets the next fate; when there is none left the line is good. */
function badLine(remote: Remote, fates: Fate[]): Remote {
  async function through<T>(ask: () => Promise<Result<T>>): Promise<Result<T>> {
    const fate = fates.shift() ?? 'well';
    if (fate === 'lost before') return silence();
    if (fate === 'twice') await ask();
    const answer = await ask();
    return fate === 'lost after' ? silence() : answer;
  }
  return {
    push: (entries) => through(() => remote.push(entries)),
    pull: (cursor, limit) => through(() => remote.pull(cursor, limit)),
  };
}

function silence<T>(): Result<T> {
  return bad({ code: 'no-answer', path: 'server', found: 'nothing', expected: 'an answer' });
}

const anyFates = fc.array(fc.constantFrom<Fate>('well', 'well', 'lost before', 'lost after', 'twice'), { maxLength: 8 });
const anyStep = fc.record({
  device: fc.nat({ max: 2 }),
  writes: fc.nat({ max: 7 }),
  fates: anyFates,
  pushSize: fc.integer({ min: 1, max: 4 }),
  pullSize: fc.integer({ min: 1, max: 5 }),
});

export function copyContract(name: string, makeCopy: () => Promise<Copy>, runs: number): void {
  test(`J31 ${name}: three devices on a bad line end up with one journal`, () =>
    fc.assert(
      fc.asyncProperty(fc.array(anyStep, { minLength: 3, maxLength: 14 }), async (steps) => {
        const store = memoryStore();
        const remote = remoteOver(store);
        const devices = [await makeCopy(), await makeCopy(), await makeCopy()] as const;
        let n = 0;
        for (const step of steps) {
          const device = devices[step.device] as Copy;
          const batch = Array.from({ length: step.writes }, () => filled(((n += 1) * 7919) % 100003, 'a', n));
          await device.append(batch);
          await syncOnce(device, badLine(remote, [...step.fates]), step);
        }
        for (const device of devices) await syncOnce(device, remote);
        for (const device of devices) {
          const done = await syncOnce(device, remote, { pullSize: 3 });
          assert.deepEqual([done.pending, done.stopped, done.refused], [0, null, []]);
          assert.deepEqual(await idsOf(device), await idsOf(store));
        }
        assert.equal(await store.count(), n);
        for (const device of devices) await device.close();
      }),
      { numRuns: runs },
    ));

  test(`J32 ${name}: a server that was restored from an old copy gets everything back from the devices`, async () => {
    const [one, other] = [await makeCopy(), await makeCopy()];
    const first = memoryStore('first');
    await one.append([1, 2, 3].map((n) => filled(n, 'a', n)));
    await syncOnce(one, remoteOver(first));
    await syncOnce(other, remoteOver(first));
    const restored = memoryStore('first');
    await restored.append([filled(1, 'a', 1)]);
    await restored.append([11, 12, 13].map((n) => filled(n, 'b', n)));
    const done = await syncOnce(one, remoteOver(restored));
    assert.deepEqual([done.pulled, done.pending], [3, 0]);
    await syncOnce(other, remoteOver(restored));
    assert.deepEqual(await idsOf(restored), [1, 2, 3, 11, 12, 13].map(idOf));
    assert.deepEqual(await idsOf(other), await idsOf(restored));
    const replaced = memoryStore('second');
    await syncOnce(other, remoteOver(replaced));
    assert.deepEqual(await idsOf(replaced), await idsOf(other));
    await Promise.all([one.close(), other.close()]);
  });

  test(`J33 ${name}: an entry that the server refuses is named, stays here and holds nothing up`, async () => {
    const copy = await makeCopy();
    const store = memoryStore();
    await store.append([filled(2, 'a', 99)]);
    await copy.append([1, 2, 3].map((n) => filled(n, 'a', n)));
    const done = await syncOnce(copy, remoteOver(store));
    assert.deepEqual([done.pushed, done.pending], [2, 1]);
    assert.ok(done.refused.every((issue) => issue.code === 'duplicate-id' && issue.entry === idOf(2)));
    assert.deepEqual(
      (await copy.waiting(null, 9)).map((entry) => entry.body),
      [{ jar: 'a', grams: 2 }],
    );
    const vague: Remote = {
      ...remoteOver(store),
      push: (entries) =>
        entries.length > 1 || entries[0]?.id === idOf(5)
          ? Promise.resolve(bad({ code: 'body-too-large', path: 'body', found: 'much', expected: 'less' }))
          : remoteOver(store).push(entries),
    };
    await copy.append([4, 5, 6, 7].map((n) => filled(n, 'a', n)));
    const halved = await syncOnce(copy, vague);
    assert.deepEqual([halved.pushed, halved.pending], [3, 2]);
    assert.deepEqual([...new Set(halved.refused.map((issue) => issue.entry))].sort(), [idOf(2), idOf(5)]);
    await copy.close();
  });

  test(`J34 ${name}: a full server stops the exchange and keeps everything waiting`, async () => {
    const copy = await makeCopy();
    await copy.append([1, 2].map((n) => filled(n, 'a', n)));
    const full: Remote = {
      ...remoteOver(memoryStore()),
      push: () => Promise.resolve(bad({ code: 'store-full', path: '', found: 'full', expected: 'room' })),
    };
    const done = await syncOnce(copy, full);
    assert.deepEqual([done.pushed, done.pending, done.stopped?.[0]?.code, done.refused], [0, 2, 'store-full', []]);
    await copy.close();
  });
}

async function idsOf(store: JournalStore): Promise<readonly string[]> {
  return (await readAll(store, 50)).map((row) => row.entry.id).sort();
}
