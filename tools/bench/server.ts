/**
 * How many entries a second the server takes in batches of 100, each batch on disk before it is
 * confirmed, and how long a pull of all of them takes, parsed. Over a real socket; the asking side
 * runs in the same process and shares its core, so the server alone is faster than this.
 */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { allKinds } from '../../src/apiary/kinds.ts';
import type { Entry } from '../../src/journal/entry.ts';
import { startServer } from '../../src/shells/server/start-server.ts';

export interface ServerBench {
  readonly pushed: number;
  readonly pushedPerSecond: number;
  readonly pulled: number;
  readonly pullSeconds: number;
}

export async function benchServer(count = 100_000): Promise<ServerBench> {
  const folder = mkdtempSync(join(tmpdir(), 'festoon-bench-'));
  const started = await startServer({
    port: 0,
    host: '127.0.0.1',
    dataDir: folder,
    staticDir: folder,
    version: 'bench',
    kinds: allKinds,
  });
  if (!started.ok) throw new Error(JSON.stringify(started.issues));
  const { url } = started.value;
  const own = readFileSync('examples/ferry-road.jsonl', 'utf8')
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line) as Entry);
  const bodies = Array.from({ length: count / 100 }, (_, b) =>
    JSON.stringify({
      entries: Array.from({ length: 100 }, (__, i) => ({
        ...(own[(b * 100 + i) % own.length] as Entry),
        id: `00000000-0000-4000-8000-${String(b * 100 + i).padStart(12, '0')}`,
      })),
    }),
  );
  try {
    const start = performance.now();
    for (const body of bodies) await push(url, body);
    const pushSeconds = (performance.now() - start) / 1000;
    const pullStart = performance.now();
    let pulled = 0;
    for (let cursor = 0, more = true; more;) {
      const page = (await (await fetch(`${url}/api/entries?after=${cursor}&limit=2000`)).json()) as {
        rows: unknown[];
        cursor: number;
        more: boolean;
      };
      pulled += page.rows.length;
      ({ cursor, more } = page);
    }
    return { pushed: count, pushedPerSecond: count / pushSeconds, pulled, pullSeconds: (performance.now() - pullStart) / 1000 };
  } finally {
    await started.value.close();
    rmSync(folder, { recursive: true });
  }
}

async function push(url: string, body: string): Promise<void> {
  const answer = await fetch(`${url}/api/entries`, { method: 'POST', body, headers: { 'Content-Type': 'application/json' } });
  if (answer.status !== 200) throw new Error(await answer.text());
  await answer.arrayBuffer();
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const { pushed, pushedPerSecond, pulled, pullSeconds } = await benchServer();
  console.log(`server: ${pushed} entries in durable batches of 100, ${pushedPerSecond.toFixed(0)} a second (at least 2000)`);
  console.log(`server: pull of ${pulled} entries in ${pullSeconds.toFixed(2)} s (at most 3)`);
}
