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
      return appended.ok ? good({ ...appended.value, epoch: store.epoch, run: store.run }) : appended;
    },
    pull: async (cursor, limit) => {
      const page = await store.read(cursor, limit);
      return good({
        ...page,
        epoch: store.epoch,
        run: store.run,
        rows: page.rows.map((row) => ({ ...row, id: row.entry.id })),
        issues: [],
      });
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

/** What only a server that is set back to an older copy, and several windows of one device, bring about. */
export function setBackContract(name: string, makeCopy: () => Promise<Copy>, runs: number): void {
  test(`J64 ${name}: what was pushed waits until it was read back, so that a server set back in between gets it again`, async () => {
    const copy = await makeCopy();
    await copy.append([1, 2].map((n) => filled(n, 'a', n)));
    const [lost, older] = [memoryStore('one', 'first'), memoryStore('one', 'second')];
    let store: JournalStore = lost;
    const remote: Remote = {
      pull: (cursor, limit) => remoteOver(store).pull(cursor, limit),
      push: async (entries) => {
        const answer = await remoteOver(store).push(entries);
        store = older;
        return answer;
      },
    };
    const done = await syncOnce(copy, remote);
    assert.deepEqual([done.pending, done.stopped, await idsOf(older)], [0, null, [1, 2].map(idOf)]);
    await copy.close();
  });

  test(`J65 ${name}: a server set back that came to the same entry at the same number is not taken for the old one`, async () => {
    const [one, other] = [await makeCopy(), await makeCopy()];
    const before = memoryStore('one', 'first');
    await one.append([1, 2, 3].map((n) => filled(n, 'a', n)));
    await syncOnce(one, remoteOver(before));
    await syncOnce(other, remoteOver(before));
    // Set back to nothing, it took in entry 3 at number 3 again, but never had 1 and 2.
    const after = memoryStore('one', 'second');
    for (const n of [11, 12, 3]) await after.append([filled(n, 'a', n)]);
    const done = await syncOnce(one, remoteOver(after));
    assert.deepEqual([done.pending, done.stopped], [0, null]);
    assert.deepEqual(await idsOf(after), [1, 2, 3, 11, 12].map(idOf));
    assert.deepEqual(await idsOf(one), await idsOf(after));
    await Promise.all([one.close(), other.close()]);
  });

  test(`J66 ${name}: two windows that exchange at once while the server is replaced leave nothing waiting and nothing out`, () =>
    fc.assert(
      fc.asyncProperty(fc.scheduler(), fc.nat({ max: 8 }), fc.nat({ max: 3 }), async (scheduler, replacedAt, here) => {
        const copy = await makeCopy();
        const [old, fresh] = [memoryStore('one', 'first'), memoryStore('two', 'second')];
        await old.append([1, 2, 3, 4].map((n) => filled(n, 'a', n)));
        await syncOnce(copy, remoteOver(old));
        await old.append([5, 6].map((n) => filled(n, 'a', n)));
        await copy.append([21, 22, 23].slice(0, here).map((n) => filled(n, 'b', n)));
        let asked = 0;
        const now = () => remoteOver((asked += 1) > replacedAt ? fresh : old);
        // An answer may be on its way while the server is replaced.
        const arrive = scheduler.scheduleFunction((answer: unknown) => Promise.resolve(answer));
        const slow: Remote = {
          push: async (entries) => (await arrive(await now().push(entries))) as Awaited<ReturnType<Remote['push']>>,
          pull: async (cursor, limit) => (await arrive(await now().pull(cursor, limit))) as Awaited<ReturnType<Remote['pull']>>,
        };
        const both = Promise.all([syncOnce(copy, slow, { pullSize: 2, pushSize: 2 }), syncOnce(copy, slow, { pullSize: 3 })]);
        await scheduler.waitFor(both);
        const done = await syncOnce(copy, remoteOver(fresh));
        assert.deepEqual([done.pending, done.stopped], [0, null]);
        assert.deepEqual(await idsOf(fresh), await idsOf(copy));
        await copy.close();
      }),
      { numRuns: runs },
    ));
}

async function idsOf(store: JournalStore): Promise<readonly string[]> {
  return (await readAll(store, 50)).map((row) => row.entry.id).sort();
}
