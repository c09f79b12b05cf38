/** The walls stand: every source file is seen by the dependency cruiser, nothing breaks a rule, and each room has its own project. */
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { test } from 'node:test';
import { rooms } from './rooms.mjs';

interface Cruise {
  readonly modules: readonly { readonly source: string }[];
  readonly summary: {
    readonly violations: readonly {
      readonly rule: { readonly name: string };
      readonly from: string;
      readonly to: string;
    }[];
  };
}

function cruise(...extra: readonly string[]): Cruise {
  const args = ['depcruise', 'src', 'checks', 'tools', '--config', '.dependency-cruiser.mjs', '--output-type', 'json', ...extra];
  try {
    return JSON.parse(execFileSync('npx', args, { encoding: 'utf8', maxBuffer: 1 << 28 })) as Cruise;
  } catch (thrown) {
    return JSON.parse((thrown as { stdout: string }).stdout) as Cruise;
  }
}

test('W1 the wall of imports saw every source file, and none breaks a rule', () => {
  const listed = execFileSync('git', ['ls-files', '--cached', '--others', '--exclude-standard', 'src'], {
    encoding: 'utf8',
  });
  const files = listed.split('\n').filter((path) => /\.tsx?$/.test(path) && !path.endsWith('.d.ts') && existsSync(path));
  const { modules, summary } = cruise();
  const seen = new Set(modules.map((module) => module.source));
  assert.ok(files.length > 60, `only ${files.length} source files listed`);
  assert.deepEqual(
    files.filter((file) => !seen.has(file)),
    [],
    'files that the cruiser did not see',
  );
  assert.deepEqual(
    summary.violations.map((broken) => `${broken.rule.name}: ${broken.from} -> ${broken.to}`),
    [],
  );
});

test('W2 a room is a project of its own that sees only the rooms before it, without a screen and without node', () => {
  rooms.forEach(([name], index) => {
    const project = JSON.parse(readFileSync(`src/${name}/tsconfig.json`, 'utf8')) as {
      compilerOptions: { lib?: string[]; types?: string[] };
      references: { path: string }[];
    };
    assert.deepEqual(
      project.references.map((reference) => reference.path),
      rooms.slice(0, index).map(([before]) => `../${before}`),
    );
    assert.equal(project.compilerOptions.lib, undefined);
    assert.equal(project.compilerOptions.types, undefined);
  });
  const base = JSON.parse(readFileSync('tsconfig.base.json', 'utf8')) as {
    compilerOptions: { lib: string[]; types: string[] };
  };
  assert.deepEqual(base.compilerOptions.lib, ['ES2023']);
  assert.deepEqual(base.compilerOptions.types, []);
});
