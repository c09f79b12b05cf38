/** A short run of the fuzz by seed, and the proof that its judges can find a fault. */
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { allKinds } from '../../src/apiary/kinds.ts';
import type { Entry } from '../../src/journal/entry.ts';
import { diceOf } from './dice.ts';
import { fuzzTheYard } from './fuzz.ts';
import { type Judged, judgePush, newTally } from './judge-push.ts';
import { spoilt } from './mutate.ts';
import { secondValidator } from './second-validator.ts';

const entries = readFileSync('examples/ferry-road.jsonl', 'utf8')
  .trim()
  .split('\n')
  .map((line) => JSON.parse(line) as Entry);
const judge = secondValidator(allKinds);

test('S40 a short fuzz finds nothing: refusals name field and expectation, nothing confirmed is lost, no fault of the server', async () => {
  const report = await fuzzTheYard(20140516, 250);
  assert.deepEqual(report.findings, []);
  assert.ok(report.confirmed > 20 && report.refused > 100, 'both sides were tried');
  assert.ok(Object.keys(report.codes).length >= 6, 'many kinds of faults were made');
});

test('S41 the same seed throws the same dice', () => {
  const spoil = (seed: number): unknown => entries.slice(0, 20).map((entry) => spoilt(entry, diceOf(seed)));
  assert.deepEqual(spoil(7), spoil(7));
  assert.notDeepEqual(spoil(7), spoil(8));
});

test('S42 the second validator takes every entry of the invented yard and refuses what is wrong by its own calendar and forms', () => {
  const [good] = entries as [Entry];
  for (const entry of entries)
    assert.ok(judge.envelope(entry) && judge.body(entry.kind, entry.version, entry.body) === true, entry.id);
  for (const wrong of [
    { at: '2014-02-29' },
    { at: '2014-05-16T24:00' },
    { noted: '2014-05-16' },
    { id: 'x' },
    { version: 0 },
    { version: 1.5 },
    { kind: 'Visit' },
    { more: 1 },
  ]) {
    assert.equal(judge.envelope({ ...good, ...wrong }), false, JSON.stringify(wrong));
  }
  assert.equal(judge.envelope({ ...good, at: '2016-02-29' }), true);
});

test('S43 the judge is awake: each promise broken on purpose is a finding', async () => {
  const [good] = entries as [Entry];
  const batch = (...list: readonly unknown[]): string => JSON.stringify({ entries: list });
  const yes = (): Response => Response.json({ added: [] });
  const no = (issues: unknown, status = 422): Response => Response.json({ issues }, { status });
  const broken: readonly (readonly [string, Response, RegExp])[] = [
    [batch({ ...good, at: '2014-02-29' }), yes(), /envelope/],
    [batch({ ...good, body: { name: 1 } }), yes(), /body/],
    [batch({ ...good, at: '2030-01-01' }), yes(), /ahead of now/],
    [batch(good, { ...good, by: good.yard }), yes(), /other content/],
    ['{"entries"', yes(), /no batch/],
    [batch({}), no([]), /without an issue/],
    [batch({}), no([{ code: 'a', path: '', found: 'b', expected: 'c' }]), /says nothing/],
    [batch({}), no([{ code: 'a', path: 'a', found: 'b', expected: 'c' }], 500), /status 500/],
    [batch(good), no([{ code: 'wrong-type', path: 'a', found: 'b', expected: 'c' }]), /refused against/],
  ];
  for (const [text, answer, finding] of broken) {
    const judged: Judged = { judge, kept: new Map(), today: '2014-12-31', tally: newTally() };
    await judgePush(text, answer, judged);
    assert.match(judged.tally.findings.join('\n'), finding);
  }
});
