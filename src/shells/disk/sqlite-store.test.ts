/** The one suite of stores, run on the database; and folders that cannot be used. */
import assert from 'node:assert/strict';
import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, test } from 'node:test';
import Database from 'better-sqlite3';
import { filled, idOf } from '../../journal/sample.contract.ts';
import { readAll, storeContract } from '../../journal/store.contract.ts';
import { holdFolder } from './data-folder.ts';
import { openSqliteStore, type SqliteStore } from './sqlite-store.ts';

const root = mkdtempSync(join(tmpdir(), 'festoon-store-'));
let folders = 0;
after(() => rmSync(root, { recursive: true, force: true }));

function freshFolder(): string {
  folders += 1;
  return join(root, `yard-${folders}`);
}

async function opened(folder: string, mostPages?: number): Promise<SqliteStore> {
  const store = await openSqliteStore(folder, mostPages === undefined ? {} : { mostPages });
  assert.ok(store.ok, JSON.stringify(store));
  return store.value;
}

async function refusal(folder: string): Promise<string> {
  const store = await openSqliteStore(folder);
  assert.ok(!store.ok);
  assert.equal(store.issues.length, 1);
  return store.issues[0]?.code ?? '';
}

storeContract('server', () => opened(freshFolder()), 12);

test('S20 what was stored is there after closing and opening again, under the same epoch', async () => {
  const folder = freshFolder();
  const first = await opened(folder);
  await first.append([filled(1, 'a', 10), filled(2, 'b', 20)]);
  await first.close();
  const second = await opened(folder);
  assert.equal(second.epoch, first.epoch);
  assert.deepEqual(
    (await readAll(second, 1)).map((row) => row.entry),
    [filled(1, 'a', 10), filled(2, 'b', 20)],
  );
  await second.close();
});

test('S38 every opening of the folder is a run of its own, and each row bears the one at which it came', async () => {
  const folder = freshFolder();
  const first = await opened(folder);
  await first.append([filled(1, 'a', 10)]);
  await first.close();
  const second = await opened(folder);
  await second.append([filled(2, 'b', 20)]);
  assert.notEqual(second.run, first.run);
  assert.deepEqual(
    (await readAll(second, 5)).map((row) => row.run),
    [first.run, second.run],
  );
  await second.close();
});

test('S21 the write-ahead log is on and a commit waits for the disk', async () => {
  const folder = freshFolder();
  const store = await opened(folder);
  await store.append([filled(1, 'a', 10)]);
  assert.ok(readdirSync(folder).includes('festoon.db-wal'));
  await store.close();
});

test('S22 a folder that another program holds is refused until it lets go', async () => {
  const folder = freshFolder();
  const store = await opened(folder);
  assert.equal(await refusal(folder), 'folder-in-use');
  await store.close();
  await (await opened(folder)).close();
});

test('S23 a folder that cannot be made or written is refused in one line', async () => {
  const file = join(root, 'a-file');
  writeFileSync(file, '');
  assert.equal(await refusal(join(file, 'yard')), 'folder-unwritable');
  assert.equal(await refusal('/proc/festoon'), 'folder-unwritable');
});

test('S24 a database of a newer program is refused and left as it is', async () => {
  const folder = freshFolder();
  await (await opened(folder)).close();
  const newer = new Database(join(folder, 'festoon.db'));
  newer.exec("UPDATE facts SET value = '99' WHERE name = 'schema'");
  newer.close();
  assert.equal(await refusal(folder), 'database-newer');
  const same = new Database(join(folder, 'festoon.db'), { readonly: true });
  assert.deepEqual(same.prepare("SELECT value FROM facts WHERE name = 'schema'").get(), { value: '99' });
  same.close();
  assert.ok(holdFolder(folder).ok, 'the folder is free again');
});

test('S25 a file that is no database is refused and not overwritten', async () => {
  const folder = freshFolder();
  await (await opened(folder)).close();
  for (const name of readdirSync(folder)) rmSync(join(folder, name));
  writeFileSync(join(folder, 'festoon.db'), 'a shopping list, much longer than a header '.repeat(100));
  assert.equal(await refusal(folder), 'database-damaged');
});

test('S26 a full disk refuses the batch, keeps what was stored, and takes entries again when there is room', async () => {
  const folder = freshFolder();
  const small = await opened(folder, 24);
  const kept: string[] = [];
  let full = false;
  for (let n = 1; n < 2000 && !full; n += 1) {
    const answer = await small.append([
      filled(n, 'a', n, '2014-05-16', { body: { jar: 'x'.repeat(20), grams: n, eighths: [1, 2, 3, 4] } }),
    ]);
    if (answer.ok) kept.push(idOf(n));
    else {
      assert.equal(answer.issues[0]?.code, 'store-full');
      full = true;
    }
  }
  assert.ok(full && kept.length > 10);
  assert.deepEqual(
    (await readAll(small, 50)).map((row) => row.entry.id),
    kept,
  );
  await small.close();
  const roomy = await opened(folder);
  assert.equal(await roomy.count(), kept.length);
  assert.ok((await roomy.append([filled(5000, 'b', 1)])).ok);
  await roomy.close();
});

test('S27 paired devices are remembered by the hash of their secret', async () => {
  const folder = freshFolder();
  const store = await opened(folder);
  assert.equal(await store.pairings.has('h'), false);
  await store.pairings.keep('h', '2014-05-16T18:00:00Z');
  await store.pairings.keep('h', '2014-05-17T18:00:00Z');
  await store.close();
  const again = await opened(folder);
  assert.equal(await again.pairings.has('h'), true);
  await again.close();
});
