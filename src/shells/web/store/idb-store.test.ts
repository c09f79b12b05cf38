/** The one suite of stores, run on the database of a browser as far as one can be had without a browser. */
import 'fake-indexeddb/auto';
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { filled, idOf } from '../../../journal/sample.contract.ts';
import { readAll, storeContract } from '../../../journal/store.contract.ts';
import { copyContract, setBackContract } from '../../../journal/sync.contract.ts';
import { openDatabase } from './idb-schema.ts';
import { askToStay, openBrowserStore } from './idb-store.ts';

let books = 0;
function freshName(): string {
  books += 1;
  return `book-${books}`;
}

storeContract('browser', async () => (await openBrowserStore(freshName())).journal, 12);
copyContract('browser', async () => (await openBrowserStore(freshName())).journal, 3);
setBackContract('browser', async () => (await openBrowserStore(freshName())).journal, 12);

test('J27 what a tab wrote is there when it is opened again: journal, outbox, place, drafts, snapshots, settings', async () => {
  const name = freshName();
  const server = { pair: () => Promise.resolve({ ok: true, value: null } as const) };
  const first = await openBrowserStore(name, { server });
  await first.journal.append([filled(1, 'a', 1), filled(2, 'b', 2)]);
  await first.journal.settle([idOf(1)]);
  const place = { epoch: 's', cursor: 9, last: { id: idOf(3), run: 'r' } };
  await first.journal.receive([filled(3, 'c', 3)], place, null);
  await first.drafts.put('visit', { taps: [1, 2] });
  await first.snapshots.put('picture', new Map([['a', 1]]));
  await first.settings.put('theme', 'dusk');
  await first.journal.close();
  const second = await openBrowserStore(name, { server });
  assert.equal(second.journal.epoch, first.journal.epoch);
  assert.deepEqual(
    (await readAll(second.journal, 2)).map((row) => row.entry.id),
    [1, 2, 3].map(idOf),
  );
  assert.deepEqual(
    (await second.journal.all()).map((entry) => entry.id),
    [1, 2, 3].map(idOf),
  );
  assert.equal(await second.unsent(), 1);
  assert.deepEqual(await second.journal.waiting(null, 5), [filled(2, 'b', 2)]);
  assert.deepEqual(await second.journal.place(), place);
  assert.deepEqual(await second.drafts.get('visit'), { taps: [1, 2] });
  assert.deepEqual(await second.snapshots.get('picture'), new Map([['a', 1]]));
  assert.equal(await second.settings.get('theme'), 'dusk');
  await second.drafts.remove('visit');
  assert.equal(await second.drafts.get('visit'), undefined);
  await second.journal.close();
});

test('J28 two tabs on one book see one journal, and neither overwrites the numbers of the other', async () => {
  const name = freshName();
  const [one, other] = [await openBrowserStore(name), await openBrowserStore(name)];
  await Promise.all(Array.from({ length: 10 }, (_, i) => (i % 2 === 0 ? one : other).journal.append([filled(i + 1, 'a', i)])));
  assert.deepEqual(await readAll(one.journal, 3), await readAll(other.journal, 4));
  assert.equal(await one.journal.count(), 10);
  await Promise.all([one.journal.close(), other.journal.close()]);
});

test('J29 a full browser refuses the batch as full and keeps what was there', async (t) => {
  const store = await openBrowserStore(freshName());
  await store.journal.append([filled(1, 'a', 1)]);
  const full = t.mock.method(IDBObjectStore.prototype, 'add', () => {
    throw new DOMException('no room', 'QuotaExceededError');
  });
  const refused = await store.journal.append([filled(2, 'b', 2)]);
  assert.ok(!refused.ok && refused.issues[0]?.code === 'store-full');
  full.mock.restore();
  assert.deepEqual(
    (await readAll(store.journal, 5)).map((row) => row.entry.id),
    [idOf(1)],
  );
  assert.equal((await store.journal.append([filled(2, 'b', 2)])).ok, true);
  await store.journal.close();
});

test('J30 the journal is written with strict durability, and a book that is sent nowhere has nothing unsent', async (t) => {
  const name = freshName();
  const store = await openBrowserStore(name);
  const asked = t.mock.method(IDBDatabase.prototype, 'transaction');
  await store.journal.append([filled(1, 'a', 1)]);
  await store.drafts.put('visit', 1);
  assert.deepEqual(
    asked.mock.calls.map((call) => (call.arguments[2] as { durability?: string } | undefined)?.durability),
    ['strict', 'strict'],
  );
  assert.equal(await store.unsent(), null);
  assert.equal(await askToStay(undefined), false);
  assert.equal(await askToStay({ persist: () => Promise.resolve(true) }), true);
  await store.journal.close();
  (await openDatabase(name)).close();
});
