/** The generated pages are those that the present figures and checks give, and a stale one is noticed. */
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { mkdtempSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { test } from 'node:test';
import { checksPage } from './checks-page.ts';
import { figuresPage } from './figures-page.ts';

test('K6 docs/figures.md and docs/checks.md are not stale: npm run pages writes them', () => {
  assert.ok(readFileSync('docs/figures.md', 'utf8') === figuresPage(), 'docs/figures.md is stale');
  assert.ok(readFileSync('docs/checks.md', 'utf8') === checksPage(), 'docs/checks.md is stale');
});

test('K6 a stale page is refused with exit code 1, a written one accepted', () => {
  const place = mkdtempSync(join(tmpdir(), 'pages-'));
  const run = (...args: readonly string[]): number | null =>
    spawnSync(process.execPath, ['--import', import.meta.resolve('tsx'), resolve('tools/write-figures.ts'), ...args], {
      cwd: place,
    }).status;
  try {
    mkdirSync(join(place, 'docs'));
    assert.equal(run('--check'), 1);
    assert.equal(run(), 0);
    assert.equal(run('--check'), 0);
    writeFileSync(join(place, 'docs/figures.md'), `${readFileSync(join(place, 'docs/figures.md'), 'utf8')}x`);
    assert.equal(run('--check'), 1);
  } finally {
    rmSync(place, { recursive: true });
  }
});

test("K6 the pages are made the same twice, and hold no machine's rounding", () => {
  assert.equal(figuresPage(), figuresPage());
  assert.doesNotMatch(checksPage(), /\d\.\d{9}/);
});
