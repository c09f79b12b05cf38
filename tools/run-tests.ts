/**
 * Runs every test of the tree in one run of node's runner, browser tests included: they are never
 * left out silently. Arguments are passed on, so `npm test -- --test-name-pattern=J4` works.
 */
import { spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { ensureChromium, howToGetChromium } from './chromium.ts';

const files = ['src', 'checks', 'tools'].flatMap((top) =>
  readdirSync(top, { recursive: true, encoding: 'utf8' })
    .filter((path) => /\.test\.tsx?$/.test(path))
    .map((path) => `${top}/${path}`),
);

if (ensureChromium() === null) {
  console.error(howToGetChromium);
  process.exit(1);
}

const run = spawnSync(
  process.execPath,
  ['--import', 'tsx', '--test', '--test-concurrency=2', ...process.argv.slice(2), ...files.sort()],
  { stdio: 'inherit', env: { ...process.env, TZ: 'UTC' } },
);
process.exit(run.status ?? 1);
