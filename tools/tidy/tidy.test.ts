/** The tree keeps the house rules; and each rule can fail, shown on a file made to break it. */
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { test } from 'node:test';
import { rules, type SourceFile } from './rules.ts';

const textFile = /\.(ts|tsx|mjs|js|json|jsonl|md|css|html|svg|csv|txt|webmanifest)$|(^|\/)(festoon|run)$/;

function tree(): readonly SourceFile[] {
  const listed = execFileSync('git', ['ls-files', '--cached', '--others', '--exclude-standard'], { encoding: 'utf8' });
  return listed
    .split('\n')
    .filter((path) => textFile.test(path) && existsSync(path))
    .map((path) => ({ path, text: readFileSync(path, 'utf8') }));
}

test('T1 the tree keeps every house rule', () => {
  const files = tree();
  assert.ok(files.length > 50, `only ${files.length} files seen`);
  const faults = files.flatMap((file) => rules.flatMap((rule) => rule(file)));
  assert.deepEqual(
    faults.map((fault) => `${fault.path}:${fault.line} ${fault.what}`),
    [],
  );
});

test('T2 each house rule can fail', () => {
  const broken: readonly SourceFile[] = [
    { path: 'src/a.ts', text: `// ${'x'.repeat(140)}` },
    { path: 'src/b.ts', text: '// b\n'.repeat(401) },
    { path: 'src/utils.ts', text: '// u' },
    { path: 'docs/c.md', text: ['to', 'do'].join('').toUpperCase() },
    { path: 'tools/d.ts', text: 'export const d = 1;' },
    { path: 'src/e.ts', text: '// e\nexport default 1;' },
    { path: 'src/hive/f.ts', text: '// f\nexport class Hive {}' },
  ];
  rules.forEach((rule, index) => {
    const file = broken[index];
    assert.ok(file !== undefined && rule(file).length > 0, `rule ${index} did not fail`);
  });
});
