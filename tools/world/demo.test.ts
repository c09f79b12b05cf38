/** The committed demo yard: told again byte for byte, lawful, folded without faults, and holding what it promises to show. */
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { gzipSync } from 'node:zlib';
import { allKinds } from '../../src/apiary/kinds.ts';
import { emptyColonies } from '../../src/colony/state.ts';
import { signs } from '../../src/colony/signs.ts';
import type { Reading } from '../../src/colony/reading.ts';
import type { VisitBody } from '../../src/colony/visit.ts';
import { type Entry, envelopeSchema } from '../../src/journal/entry.ts';
import { foldJournal } from '../../src/journal/fold.ts';
import { demoToday, ferryRoadEntries } from './ferry-road.ts';
import { linesOf } from './scribe.ts';

const weather = readFileSync('examples/newyork-weather-2013-2014.csv', 'utf8');
const committed = readFileSync('examples/ferry-road.jsonl', 'utf8');
const journal = committed
  .trim()
  .split('\n')
  .map((line) => JSON.parse(line) as Entry);
/** What the world told; what the program forecast of it is added by `tools/demo`, and tested there. */
const told = journal.filter((e) => e.kind !== 'forecast-issued');
const of = (kind: string): readonly Entry[] => journal.filter((e) => e.kind === kind);
const visits = of('visit').map((e) => e.body as VisitBody);
const readings = of('reading').map((e) => e.body as Reading);

test('Y1 the same seed tells the committed journal again, byte for byte, forecasts apart', () => {
  assert.equal(
    linesOf(ferryRoadEntries(weather)) === linesOf(told),
    true,
    'tools/make-demo.ts writes another journal than examples/ferry-road.jsonl',
  );
  assert.equal(linesOf(journal) === committed, true, 'canonical lines in the order of the fold');
});

test('Y2 every entry passes the schemas of envelope and kind, and no id stands twice', () => {
  const kinds = new Map(allKinds.map((kind) => [kind.kind, kind]));
  for (const e of journal) {
    assert.ok(envelopeSchema.safeParse(e).success, e.id);
    const kind = kinds.get(e.kind);
    assert.ok(kind?.schema.safeParse(e.body).success, `${e.kind} ${e.id}`);
  }
  assert.equal(new Set(journal.map((e) => e.id)).size, journal.length);
});

test('Y2 nothing is dated or noted after the demo’s today, and what was so is noted within two days', () => {
  for (const e of journal) {
    assert.ok(e.at.slice(0, 10) <= demoToday && e.noted.slice(0, 10) <= '2014-05-17', e.id);
    const late = (Date.parse(e.noted) - Date.parse(`${e.at.slice(0, 10)}T00:00:00Z`)) / 3600000;
    assert.ok(late >= 0 && late < 48, `${e.kind} ${e.at} ${e.noted}`);
  }
});

test('Y2 the journal folds without a fault, a conflict or an entry that is not understood', () => {
  const folded = foldJournal(journal, allKinds, emptyColonies);
  assert.deepEqual(folded.faults, []);
  assert.deepEqual([folded.conflicts.length, folded.notUnderstood.length], [0, 0]);
  const living = [...folded.draft.colonies.values()].filter((colony) => colony.ended === null).map((colony) => colony.name);
  assert.deepEqual(living.sort(), ['Alder', 'Birch', 'Hazel', 'Linden', 'Linden back', 'Rowan', 'Willow']);
});

test('Y3 the demo is of the promised size', () => {
  const own = linesOf(told).length;
  assert.ok(own < 1.5e6, `${own} bytes without forecasts`);
  const sent = gzipSync(committed).length;
  assert.ok(sent < 300e3, `${sent} bytes as they are sent, forecasts and all`);
  assert.ok(visits.length >= 80 && visits.length <= 140, `${visits.length} visits`);
  assert.ok(readings.length >= 800 && readings.length <= 1500, `${readings.length} readings`);
});

test('Y3 it holds one each of what a yard goes through', () => {
  const roles = of('observer')
    .map((e) => (e.body as { role: string }).role)
    .sort();
  assert.deepEqual(roles, ['helper', 'keeper', 'learner']);
  const swarms = of('swarm').map((e) => (e.body as { what: string }).what);
  for (const what of ['seen', 'left', 'hived']) assert.ok(swarms.includes(what), what);
  for (const kind of [
    'split',
    'colony-ended',
    'feeding',
    'look',
    'note',
    'measurement',
    'correction',
    'void',
    'contact',
    'day-weather',
    'reign',
    'queen',
  ]) {
    assert.ok(of(kind).length > 0, kind);
  }
  const ends = of('reign').map((e) => (e.body as { change: { how: string } }).change.how);
  for (const how of ['removed', 'lost', 'left with a swarm', 'introduced', 'raised here']) assert.ok(ends.includes(how), how);
  const writers = new Set(of('reading').map((e) => e.by));
  assert.equal(writers.size, 3);
  for (const kind of ['usual', 'first of the year', 'glance', 'after a swarm'])
    assert.ok(
      visits.some((visit) => visit.visitKind === kind),
      kind,
    );
  const levels = new Set(
    readings.flatMap((reading) => reading.signs).map((code) => signs.find((sign) => sign.code === code)?.level),
  );
  for (const level of ['note', 'ask', 'stop'] as const) assert.ok(levels.has(level), level);
  assert.ok(
    visits.some((visit) => readings.filter((reading) => reading.visit === visit.visit).length < (visit.barsCounted ?? 0) - 2),
    'bars not opened',
  );
});

test('Y3 two colonies live in one trough, with boards between them', () => {
  const { draft } = foldJournal(journal, allKinds, emptyColonies);
  const living = [...draft.colonies.values()].filter((colony) => colony.ended === null);
  const bays = living
    .filter((colony) => colony.name.startsWith('Linden'))
    .map((colony) => draft.bays.get(colony.stays.at(-1)?.bay ?? ''));
  assert.equal(bays.length, 2);
  assert.equal(new Set(bays.map((bay) => bay?.hive)).size, 1);
  const [near, far] = bays.sort((a, b) => (a?.from ?? 0) - (b?.from ?? 0));
  assert.ok((near?.to ?? 99) < (far?.from ?? 0));
});
