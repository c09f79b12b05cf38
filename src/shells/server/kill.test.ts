/** A server killed in the middle of pushes loses no confirmed entry. */
import assert from 'node:assert/strict';
import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test } from 'node:test';
import { fileURLToPath } from 'node:url';
import { filled } from '../../journal/sample.contract.ts';
import { readAll } from '../../journal/store.contract.ts';
import { openSqliteStore } from '../disk/sqlite-store.ts';

const program = fileURLToPath(
  new URL(`./jar-server.contract${import.meta.url.endsWith('.ts') ? '.ts' : '.js'}`, import.meta.url),
);

async function started(folder: string): Promise<{ child: ChildProcess; url: string }> {
  const child = spawn(process.execPath, [...process.execArgv.filter((arg) => !arg.startsWith('--test')), program, folder], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const [line] = (await once(child.stdout, 'data')) as [Buffer];
  return { child, url: line.toString().trim() };
}

test(
  'S17 a server killed in the middle of pushes has lost no entry that it confirmed, and starts again',
  { timeout: 60_000 },
  async () => {
    const folder = mkdtempSync(join(tmpdir(), 'festoon-kill-'));
    const confirmed = new Set<string>();
    let n = 0;
    for (let kill = 0; kill < 4; kill += 1) {
      const { child, url } = await started(folder);
      const before = confirmed.size;
      let open = true;
      const gone = once(child, 'exit').then(() => (open = false));
      while (open) {
        const entries = Array.from({ length: 20 }, () => filled((n += 1), 'a', 1));
        const answer = await fetch(`${url}/api/entries`, {
          method: 'POST',
          body: JSON.stringify({ entries }),
          headers: { 'Content-Type': 'application/json' },
        }).catch(() => null);
        if (answer?.ok !== true) continue;
        // The clock of the kill runs from the first push that was confirmed, however slow the machine is.
        if (confirmed.size === before) setTimeout(() => child.kill('SIGKILL'), 40 + 70 * kill);
        for (const entry of entries) confirmed.add(entry.id);
      }
      await gone;
      assert.ok(confirmed.size > before, 'the kill came in the middle of pushes, not before the first');
    }
    const store = await openSqliteStore(folder);
    assert.ok(store.ok);
    const kept = new Set((await readAll(store.value, 1000)).map((row) => row.entry.id));
    assert.deepEqual(
      [...confirmed].filter((id) => !kept.has(id)),
      [],
    );
    await store.value.close();
    rmSync(folder, { recursive: true });
  },
);
