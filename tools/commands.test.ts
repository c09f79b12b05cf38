/** The commands as a keeper calls them: `bin/festoon` as a process, on the build. */
import { Ajv2020 } from 'ajv/dist/2020.js';
import assert from 'node:assert/strict';
import { type SpawnSyncReturns, spawn, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, test } from 'node:test';

const folder = mkdtempSync(join(tmpdir(), 'festoon-commands-'));
after(() => rmSync(folder, { recursive: true, force: true }));

const demo = 'examples/ferry-road.jsonl';
const names = ['serve', 'demo', 'round', 'colony', 'visit', 'export', 'import', 'check', 'calc', 'figures'];

function festoon(args: readonly string[], data = 'none', input = ''): SpawnSyncReturns<string> {
  return spawnSync(process.execPath, ['bin/festoon', ...args], {
    encoding: 'utf8',
    input,
    maxBuffer: 1 << 27,
    env: { ...process.env, FESTOON_DATA: join(folder, data) },
  });
}

function file(name: string, text: string): string {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
}

test('Z1 --help lists every command, each says more of itself, and a wrong call exits with 2', () => {
  const overview = festoon(['--help']);
  assert.equal(overview.status, 0);
  for (const name of names) {
    assert.match(overview.stdout, new RegExp(`^ {2}${name}\\b`, 'm'));
    const own = festoon([name, '--help']);
    assert.equal(own.status, 0, name);
    assert.match(own.stdout, new RegExp(`^festoon ${name}`));
  }
  assert.equal(festoon([]).status, 2);
  assert.equal(festoon(['fly']).status, 2);
  assert.equal(festoon(['round', '--no-such-option']).status, 2);
});

test('Z2 calc prints one JSON object and nothing else, or one line a fault and nothing on standard output', () => {
  const good = festoon(['calc', 'hive-box', '{"floorWidthMm":200,"heightMm":300,"wallAngleDeg":30,"bars":27,"barWidthMm":35}']);
  assert.equal(good.status, 0);
  const answer = JSON.parse(good.stdout) as { innerLengthMm: number; topWidthMm: number; assumed: { expansionMm: number } };
  assert.equal(answer.innerLengthMm, 955);
  assert.ok(Math.abs(answer.topWidthMm - 546.41) < 0.01);
  assert.deepEqual(answer.assumed, { expansionMm: 10 });
  const bad: readonly (readonly [name: string, input: string, field: string])[] = [
    ['cells-per-area', '{"cellWidthMm":5.2,"cellsPer10cm":19}', 'cell'],
    ['cells-per-area', '{}', 'cell'],
    ['laying-rate', '{"sealedWorkerCells":-1}', 'sealedWorkerCells'],
    ['laying-rate', '{"sealedWorkerCells":100,"colour":"red"}', 'colour'],
    ['brood-dates', '{"caste":"worker","stage":"egg","seenOn":"2014-02-30"}', 'seenOn'],
    ['mark-colour', '[2014]', ''],
    ['mark-colour', '{"year":2014', ''],
  ];
  for (const [name, input, field] of bad) {
    const found = festoon(['calc', name, input]);
    assert.equal(found.status, 2, input);
    assert.equal(found.stdout, '', input);
    assert.match(found.stderr, new RegExp(`^\\S*${field}.*: .*; .*$|not JSON`, 'm'), input);
  }
  assert.equal(
    festoon(['calc', 'mark-colour', '-'], 'none', '{"year":2014}').stdout,
    festoon(['calc', 'mark-colour', '{"year":2014}']).stdout,
  );
  assert.equal(festoon(['calc', 'no-such-sum', '{}']).status, 2);
});

test('Z3 round, colony and figures speak to people and, with --json, to programs', () => {
  const round = JSON.parse(festoon(['round', '--demo', '--json']).stdout) as readonly { verb: string }[];
  assert.ok(round.length >= 6);
  assert.match(festoon(['round', '--demo']).stdout, /^1 {2}/);
  const view = JSON.parse(festoon(['colony', 'Alder', '--demo', '--json']).stdout) as { name: string; day: string };
  assert.deepEqual([view.name, view.day], ['Alder', '2014-05-16']);
  assert.equal(festoon(['colony', 'Nobody', '--demo']).status, 2);
  const figures = JSON.parse(festoon(['figures', '--json']).stdout) as readonly { key: string }[];
  assert.ok(figures.length > 100);
  assert.equal((JSON.parse(festoon(['figures', 'worker-sealed-days', '--json']).stdout) as { value: number }).value, 12);
  assert.equal(festoon(['figures', 'no-such-figure']).status, 2);
});

test('Z4 an exported journal imported elsewhere is the same export, and importing it again adds nothing', () => {
  assert.equal(festoon(['import', demo], 'first').status, 0);
  const first = festoon(['export'], 'first').stdout;
  const again = festoon(['import', file('first.jsonl', first)], 'second');
  assert.equal(again.status, 0);
  assert.equal(festoon(['export'], 'second').stdout, first);
  assert.match(festoon(['import', demo], 'second').stdout, /^0 entries added/);
  assert.equal(first.trim().split('\n').length, readFileSync(demo, 'utf8').trim().split('\n').length);
});

test('Z5 a visit by its printed schema is added once, however often it is given', () => {
  const schema = JSON.parse(festoon(['visit', '--schema']).stdout) as object;
  const visit = {
    colony: 'Alder',
    began: '2014-05-16T14:05',
    bars: [
      { place: 2, brood8: 5, food8: 2, eggs: 'seen', cells: { open: 0, sealed: 0, torn: 0, emerged: 0 } },
      { place: 3, brood8: 3, food8: 3 },
    ],
    beesBars: 8,
  };
  assert.ok(new Ajv2020({ strict: false, validateFormats: false }).validate(schema, visit));
  assert.equal(festoon(['import', demo], 'third').status, 0);
  const path = file('visit.json', JSON.stringify(visit));
  assert.match(festoon(['visit', path], 'third').stdout, /^3 entries added/);
  assert.match(festoon(['visit', path], 'third').stdout, /^0 entries added, 3 known/);
  assert.match(festoon(['colony', 'Alder', '--day', '2014-05-16'], 'third').stdout, /last seen on 16 May 2014/);
  const wrong = festoon(['visit', file('wrong.json', JSON.stringify({ ...visit, bars: [{ place: 2, brood8: 9 }] }))], 'third');
  assert.equal(wrong.status, 1);
  assert.match(wrong.stderr, /bars\.0\.brood8: 9; /);
});

test('Z6 check names every fault of a file and changes nothing', () => {
  const lines = readFileSync(demo, 'utf8').trim().split('\n');
  const first = JSON.parse(lines[0] ?? '') as Record<string, unknown>;
  const reading = JSON.parse(lines.find((line) => line.includes('"kind":"reading"')) ?? '') as {
    body: { faces: { brood8: number }[] };
  };
  const tooMuch = structuredClone(reading);
  Object.assign(tooMuch, { id: '00000000-0000-4000-8000-000000000001' });
  (tooMuch.body.faces[0] as { brood8: number }).brood8 = 9;
  const cases: readonly (readonly [what: string, text: string, says: RegExp])[] = [
    ['truncated', lines.join('\n').slice(0, -20), /breaks off/],
    ['bad JSON', [...lines, '{no}'].join('\n') + '\n', /no/],
    [
      'other content',
      [...lines, JSON.stringify({ ...first, at: '2013-04-02' })].join('\n') + '\n',
      /[0-9a-f]{12}[^]*[0-9a-f]{12}/,
    ],
    ['nine eighths', [...lines, JSON.stringify(tooMuch)].join('\n') + '\n', /brood8/],
  ];
  for (const [what, text, says] of cases) {
    const path = file(`${what}.jsonl`, text);
    const found = festoon(['check', path]);
    assert.equal(found.status, 1, what);
    assert.match(found.stdout, says, what);
    assert.equal(readFileSync(path, 'utf8'), text, what);
  }
  const unknown = { ...first, id: '00000000-0000-4000-8000-000000000002', kind: 'moon-phase', body: { phase: 'new' } };
  const kept = file('unknown.jsonl', [...lines, JSON.stringify(unknown)].join('\n') + '\n');
  assert.equal(festoon(['check', kept]).status, 0);
  assert.equal(festoon(['import', kept], 'fourth').status, 0);
  assert.ok(festoon(['export'], 'fourth').stdout.includes('"kind":"moon-phase"'));
  assert.equal(festoon(['check', join(folder, 'not-there.jsonl')]).status, 1);
});

test('Z7 a taken port, a folder that cannot be, and one that is held each give one clear line', async () => {
  const taken = createServer().listen(0, '127.0.0.1');
  await new Promise((resolve) => taken.once('listening', resolve));
  const { port } = taken.address() as { port: number };
  const busy = festoon(['serve', '--port', String(port)], 'fifth');
  taken.close();
  assert.equal(busy.status, 1);
  assert.equal(busy.stderr.trim().split('\n').length, 1, busy.stderr);
  file('a-file', 'no folder');
  const impossible = festoon(['serve', '--port', '0'], 'a-file/inside');
  assert.equal(impossible.status, 1);
  assert.equal(impossible.stderr.trim().split('\n').length, 1, impossible.stderr);
  const holder = spawn(process.execPath, ['bin/festoon', 'serve', '--port', '0'], {
    env: { ...process.env, FESTOON_DATA: join(folder, 'held') },
  });
  await new Promise((resolve) => holder.stdout.once('data', resolve));
  const held = festoon(['import', demo], 'held');
  const ended = new Promise((resolve) => holder.once('exit', resolve));
  holder.kill('SIGTERM');
  await ended;
  assert.equal(held.status, 1);
  assert.equal(held.stderr.trim().split('\n').length, 1, held.stderr);
});
