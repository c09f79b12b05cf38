/** A server killed in the middle of pushes loses no confirmed entry. `npm run kills` kills more often. */
import assert from 'node:assert/strict';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test } from 'node:test';
import { killWhilePushing, missingIn } from './killed-server.contract.ts';

test(
  'S17 a server killed in the middle of pushes has lost no entry that it confirmed, and starts again',
  { timeout: 60_000 },
  async () => {
    const folder = mkdtempSync(join(tmpdir(), 'festoon-kill-'));
    const pushes = { last: 0, confirmed: new Set<string>() };
    for (let kill = 0; kill < 4; kill += 1) await killWhilePushing(folder, pushes, 40 + 70 * kill);
    assert.deepEqual(await missingIn(folder, pushes.confirmed), []);
    rmSync(folder, { recursive: true });
  },
);
