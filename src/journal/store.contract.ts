/** The one suite that every journal store passes, wherever it keeps its entries. Its promises are J20 to J26 of docs/spec/journal.md. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { canonicalText, entryHash } from './canonical.ts';
import type { Entry } from './entry.ts';
import { anyEntry, anyJournal, filled, idOf, keeper, yard } from './sample.contract.ts';
import type { JournalStore, Stored } from './store.ts';

export function storeContract(name: string, makeStore: () => Promise<JournalStore>, runs = 25): void {
  async function withStore<T>(work: (store: JournalStore) => Promise<T>): Promise<T> {
    const store = await makeStore();
    try {
      return await work(store);
    } finally {
      await store.close();
    }
  }

  test(`J20 ${name}: what was appended is read back the same, oldest first, with growing numbers`, () =>
    fc.assert(
      fc.asyncProperty(anyJournal(), fc.integer({ min: 1, max: 20 }), async (entries, limit) => {
        await withStore(async (store) => {
          const appended = await store.append(entries);
          assert.deepEqual(appended, { ok: true, value: { added: entries.map((entry) => entry.id), known: [] } });
          const rows = await readAll(store, limit);
          assert.deepEqual(
            rows.map((row) => canonicalText(row.entry)),
            entries.map(canonicalText),
          );
          assert.ok(rows.every((row, i) => i === 0 || row.seq > (rows[i - 1]?.seq ?? 0)));
          assert.equal(await store.count(), entries.length);
        });
      }),
      { numRuns: runs },
    ));

  test(`J21 ${name}: appending again changes nothing and says so`, () =>
    withStore(async (store) => {
      const batch = [filled(1, 'a', 10), filled(2, 'b', 20)];
      await store.append(batch);
      const again = await store.append([...batch, filled(3, 'c', 30)]);
      assert.deepEqual(again, { ok: true, value: { added: [idOf(3)], known: [idOf(1), idOf(2)] } });
      assert.equal(await store.count(), 3);
      const twice = await store.append([filled(4, 'd', 1), filled(4, 'd', 1)]);
      assert.deepEqual(twice, { ok: true, value: { added: [idOf(4)], known: [] } });
    }));

  test(`J22 ${name}: an id with other content is refused with both hashes, and with it the whole batch`, () =>
    withStore(async (store) => {
      const kept = filled(1, 'a', 10);
      const other = filled(1, 'a', 11);
      await store.append([kept]);
      const refused = await store.append([filled(2, 'b', 20), other]);
      assert.ok(!refused.ok);
      const [issue] = refused.issues;
      assert.equal(issue?.code, 'duplicate-id');
      assert.equal(issue.entry, idOf(1));
      assert.ok(issue.found.includes(entryHash(other)) && issue.expected.includes(entryHash(kept)));
      assert.deepEqual(
        (await readAll(store, 10)).map((row) => row.entry),
        [kept],
      );
      const within = await store.append([filled(5, 'e', 1), filled(5, 'e', 2)]);
      assert.ok(!within.ok && within.issues[0]?.code === 'duplicate-id');
      assert.equal(await store.count(), 1);
    }));

  test(`J23 ${name}: pages join without gap or overlap, and an empty page keeps the cursor`, () =>
    withStore(async (store) => {
      assert.deepEqual(await store.read(0, 5), { rows: [], cursor: 0, more: false });
      await store.append([1, 2, 3].map((n) => filled(n, 'a', n)));
      await store.append([4, 5].map((n) => filled(n, 'a', n)));
      const first = await store.read(0, 2);
      assert.equal(first.more, true);
      const second = await store.read(first.cursor, 3);
      assert.equal(second.more, false);
      assert.deepEqual(
        [...first.rows, ...second.rows].map((row) => row.entry.id),
        [1, 2, 3, 4, 5].map(idOf),
      );
      assert.deepEqual(await store.read(second.cursor, 5), { rows: [], cursor: second.cursor, more: false });
    }));

  test(`J24 ${name}: what it does not understand is kept whole`, () =>
    withStore(async (store) => {
      const strange: Entry = {
        id: idOf(7),
        yard,
        at: '2014-05-16',
        noted: '2014-05-16T18:00:00Z',
        by: keeper,
        kind: 'from-tomorrow',
        version: 12,
        body: JSON.parse(
          '{"__proto__":{"x":1},"toString":null,"é😀":[1e-7,-0,123456789012345680,"\\u0000\\u2028"],"deep":[[[{}]]]}',
        ) as unknown,
      };
      await store.append([strange]);
      const [row] = await readAll(store, 10);
      assert.equal(canonicalText(row?.entry), canonicalText(strange));
    }));

  test(`J25 ${name}: appends at the same time are each whole, and none is lost`, () =>
    withStore(async (store) => {
      const batches = Array.from({ length: 8 }, (_, i) => Array.from({ length: 5 }, (__, k) => filled(i * 5 + k + 1, 'a', i)));
      const answers = await Promise.all(batches.map((batch) => store.append(batch)));
      assert.ok(answers.every((answer) => answer.ok && answer.value.added.length === 5));
      assert.equal(new Set((await readAll(store, 7)).map((row) => row.entry.id)).size, 40);
    }));

  test(`J26 ${name}: after any run of batches it holds the first content of every id whose batch was taken`, () =>
    fc.assert(
      fc.asyncProperty(fc.array(fc.array(anyEntry(12), { maxLength: 4 }), { maxLength: 12 }), async (batches) => {
        await withStore(async (store) => {
          const model = new Map<string, string>();
          for (const batch of batches) {
            const answer = await store.append(batch);
            const texts = batch.map((entry) => [entry.id, canonicalText(entry)] as const);
            const clash = texts.some(([id, text]) => (model.get(id) ?? texts.find(([one]) => one === id)?.[1]) !== text);
            assert.equal(answer.ok, !clash);
            if (!clash) for (const [id, text] of texts) model.set(id, text);
          }
          const rows = await readAll(store, 3);
          assert.deepEqual(new Map(rows.map((row) => [row.entry.id, canonicalText(row.entry)])), model);
          assert.equal(rows.length, model.size);
        });
      }),
      { numRuns: runs },
    ));
}

export async function readAll(store: JournalStore, limit: number): Promise<readonly Stored[]> {
  const rows: Stored[] = [];
  for (let cursor = 0; ;) {
    const page = await store.read(cursor, limit);
    assert.ok(page.rows.length <= limit);
    rows.push(...page.rows);
    cursor = page.cursor;
    if (!page.more) return rows;
  }
}
