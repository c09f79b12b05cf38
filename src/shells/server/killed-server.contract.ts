/** A server in a process of its own that is killed while entries are pushed to it: what it had confirmed must be there. */
import assert from 'node:assert/strict';
import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
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

export interface Pushes {
  /** The number of the last entry pushed: what was on its way at a kill may be there, so that no number is used twice. */
  last: number;
  readonly confirmed: Set<string>;
}

/** Adds to `confirmed` what was confirmed before the kill, so many milliseconds after the first push that was. */
export async function killWhilePushing(folder: string, pushes: Pushes, afterMs: number): Promise<void> {
  const { child, url } = await started(folder);
  const { confirmed } = pushes;
  const before = confirmed.size;
  let open = true;
  const gone = once(child, 'exit').then(() => (open = false));
  while (open) {
    const entries = Array.from({ length: 20 }, () => filled((pushes.last += 1), 'a', 1));
    const answer = await fetch(`${url}/api/entries`, {
      method: 'POST',
      body: JSON.stringify({ entries }),
      headers: { 'Content-Type': 'application/json' },
    }).catch(() => null);
    if (answer?.ok !== true) continue;
    // The clock of the kill runs from the first push that was confirmed, however slow the machine is.
    if (confirmed.size === before) setTimeout(() => child.kill('SIGKILL'), afterMs);
    for (const entry of entries) confirmed.add(entry.id);
  }
  await gone;
  assert.ok(confirmed.size > before, 'the kill came in the middle of pushes, not before the first');
}

/** Entries that were confirmed and are not there. */
export async function missingIn(folder: string, confirmed: ReadonlySet<string>): Promise<readonly string[]> {
  const store = await openSqliteStore(folder);
  assert.ok(store.ok);
  const kept = new Set((await readAll(store.value, 1000)).map((row) => row.entry.id));
  await store.value.close();
  return [...confirmed].filter((id) => !kept.has(id));
}
