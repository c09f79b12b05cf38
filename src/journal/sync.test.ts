/** Devices and a server over a bad line, by seed: all come to hold the same entries. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { good } from '../numbers/result.ts';
import { memoryCopy } from './memory-copy.ts';
import { memoryStore } from './memory-store.ts';
import { filled, idOf } from './sample.contract.ts';
import { copyContract, remoteOver, setBackContract } from './sync.contract.ts';
import { syncOnce } from './sync.ts';
import type { Remote } from './sync-ports.ts';

copyContract('memory', () => Promise.resolve(memoryCopy()), 150);
setBackContract('memory', () => Promise.resolve(memoryCopy()), 300);

test('J35 what came and cannot be kept is reported and passed over; the rest is kept and the cursor goes on', async () => {
  const store = memoryStore();
  await store.append([1, 2, 3].map((n) => filled(n, 'a', n)));
  const issue = { code: 'wrong-type', path: 'body.grams', found: 'null', expected: 'a number', entry: idOf(3) };
  const remote: Remote = {
    ...remoteOver(store),
    pull: async (cursor, limit) => {
      const page = await store.read(cursor, limit);
      const rows = page.rows.map((row) => ({
        seq: row.seq,
        run: row.run,
        id: row.entry.id,
        entry: row.entry.id === idOf(3) ? null : row.entry,
      }));
      return good({
        ...page,
        epoch: store.epoch,
        run: store.run,
        rows,
        issues: rows.some((row) => row.entry === null) ? [issue] : [],
      });
    },
  };
  const copy = memoryCopy();
  const first = await syncOnce(copy, remote);
  assert.deepEqual([first.pulled, first.refused, (await copy.place())?.cursor], [2, [issue], 3]);
  await store.append([filled(4, 'a', 4)]);
  assert.equal((await syncOnce(copy, remote)).pulled, 1);
});

test('J36 a server that changes its epoch again and again stops the exchange instead of turning for ever', async () => {
  let n = 0;
  const remote: Remote = {
    push: () => Promise.resolve(good({ added: [], known: [], run: 'r', epoch: `e${(n += 1)}` })),
    pull: (cursor) => Promise.resolve(good({ rows: [], cursor, more: false, run: 'r', epoch: `e${(n += 1)}`, issues: [] })),
  };
  const copy = memoryCopy();
  await copy.append([filled(1, 'a', 1)]);
  const done = await syncOnce(copy, remote);
  assert.equal(done.pending, 1);
  assert.equal(done.stopped?.[0]?.code, 'restless-server');
});
