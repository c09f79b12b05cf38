/**
 * `node --import tsx tools/fuzz/fuzz.ts --seed 1 --runs 2000`: spoils entries of the invented yard and
 * pushes them at a server over a store on disk. Prints what it did and every finding; ends with 1 if there is one.
 */
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { parseArgs } from 'node:util';
import { allKinds } from '../../src/apiary/kinds.ts';
import { emptyColonies } from '../../src/colony/state.ts';
import type { Entry } from '../../src/journal/entry.ts';
import { openSqliteStore } from '../../src/shells/disk/sqlite-store.ts';
import { type FuzzReport, runFuzz } from './run-fuzz.ts';

/** The invented yard ends before it. */
const today = '2014-12-31';

export async function fuzzTheYard(seed: number, runs: number): Promise<FuzzReport> {
  const folder = mkdtempSync(join(tmpdir(), 'festoon-fuzz-'));
  mkdirSync(join(folder, 'app'));
  writeFileSync(join(folder, 'app', 'index.html'), '<!doctype html>');
  const store = await openSqliteStore(join(folder, 'yard'));
  if (!store.ok) throw new Error(JSON.stringify(store.issues));
  const lines = readFileSync('examples/ferry-road.jsonl', 'utf8').trim().split('\n');
  const entries = lines.map((line) => JSON.parse(line) as Entry);
  try {
    return await runFuzz({
      seed,
      runs,
      entries,
      kinds: allKinds,
      emptyDraft: emptyColonies,
      store: store.value,
      staticDir: join(folder, 'app'),
      today,
    });
  } finally {
    await store.value.close();
    rmSync(folder, { recursive: true });
  }
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const { values } = parseArgs({
    options: { seed: { type: 'string', default: '1' }, runs: { type: 'string', default: '2000' } },
  });
  const { findings, codes, ...rest } = await fuzzTheYard(Number(values.seed), Number(values.runs));
  console.log(JSON.stringify(rest));
  console.log('refusals by code', JSON.stringify(codes));
  for (const finding of findings) console.log(`FOUND ${finding}`);
  console.log(findings.length === 0 ? 'nothing found' : `${findings.length} findings`);
  process.exitCode = findings.length === 0 ? 0 : 1;
}
