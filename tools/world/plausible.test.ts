/**
 * The demo yard read as a bee scientist would, from the committed journal alone; and for each doubt that
 * the reading knows, a journal that one changed entry makes doubtful, so that no doubt is asleep.
 */
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import type { Reading } from '../../src/colony/reading.ts';
import type { VisitBody } from '../../src/colony/visit.ts';
import type { Entry } from '../../src/journal/entry.ts';
import { examine } from './bee-scientist.ts';
import type { Doubt } from './doubt.ts';

const journal = readFileSync('examples/ferry-road.jsonl', 'utf8')
  .trim()
  .split('\n')
  .map((line) => JSON.parse(line) as Entry);

const colonyNames = new Map(
  journal.flatMap((e): [string, string][] => {
    const body = e.body as Record<string, string | null>;
    if (e.kind === 'colony') return [[body['colony'] ?? '', body['name'] ?? '']];
    return (e.kind === 'swarm' || e.kind === 'split') && typeof body['child'] === 'string'
      ? [[body['child'], body['childName'] ?? '']]
      : [];
  }),
);

function visitsOf(name: string): readonly Entry[] {
  return journal.filter((e) => e.kind === 'visit' && colonyNames.get((e.body as VisitBody).colony) === name);
}

function visitOn(name: string, day: string): Entry {
  const found = visitsOf(name).find((e) => e.at.startsWith(day));
  assert.ok(found, `${name} was visited on ${day}`);
  return found;
}

function readingsOf(visit: Entry): readonly Entry[] {
  return journal.filter(
    (e) => e.kind === 'reading' && (e.body as Reading).visit === (visit.body as VisitBody).visit && e.by === visit.by,
  );
}

/** The journal with these entries' bodies changed. */
function changed<B>(targets: readonly Entry[], change: (body: B) => B): readonly Entry[] {
  const ids = new Set(targets.map((e) => e.id));
  return journal.map((e) => (ids.has(e.id) ? { ...e, body: change(e.body as B) } : e));
}

function moved(target: Entry, day: string): readonly Entry[] {
  return journal.map((e) => (e.id === target.id ? { ...e, at: `${day}${e.at.slice(10)}` } : e));
}

function first(list: readonly Entry[], choose: (reading: Reading) => boolean = () => true): Entry {
  const found = list.find((e) => choose(e.body as Reading));
  assert.ok(found, 'a reading to change');
  return found;
}

function eighths(brood8: number, food8: number): (body: Reading) => Reading {
  return (body) => ({ ...body, faces: [{ face: 'both', brood8, food8 }] });
}

function breaks(code: Doubt['code'], broken: readonly Entry[]): void {
  const codes = new Set(examine(broken).map((d) => d.code));
  assert.ok(codes.has(code), `found ${[...codes].join(', ') || 'nothing'}; ${code} was expected`);
}

test('Y4 a bee scientist finds nothing in the demo yard that cannot be true of bees', () => {
  assert.deepEqual(examine(journal), []);
  assert.ok(visitsOf('Alder').length >= 15 && visitsOf('Hazel').length >= 15, 'there was something to read');
});

const cases: readonly (readonly [Doubt['code'], string, () => readonly Entry[]])[] = [
  [
    'more than a face',
    'nine eighths on a face',
    () => changed([first(readingsOf(visitOn('Alder', '2014-05-15')))], eighths(5, 4)),
  ],
  [
    'brood without a stage',
    'brood without any stage',
    () =>
      changed<Reading>([first(readingsOf(visitOn('Alder', '2014-05-15')), (r) => (r.faces[0]?.brood8 ?? 0) > 2)], (r) => ({
        ...r,
        youngest: 'none',
      })),
  ],
  [
    'stage too early after hiving',
    'sealed brood five days after a swarm came on bare bars',
    () => changed<Reading>([first(readingsOf(visitOn('Rowan', '2014-05-12')))], (r) => ({ ...r, youngest: 'sealed' })),
  ],
  [
    'comb too soon',
    'six full combs five days after hiving',
    () =>
      changed<Reading>(readingsOf(visitOn('Rowan', '2014-05-12')), (r) => ({ ...r, built8: 8, faces: r.faces })).concat(
        ...[3, 4, 5].map((place): Entry[] => {
          const one = first(readingsOf(visitOn('Rowan', '2014-05-12')));
          return [{ ...one, id: `${one.id.slice(0, -1)}${place}`, body: { ...(one.body as Reading), place, built8: 8 } }];
        }),
      ),
  ],
  [
    'eggs without a queen',
    'eggs nine days after the queen was lost',
    () =>
      changed<Reading>([first(readingsOf(visitOn('Willow', '2013-07-22')))], (r) => ({
        ...r,
        eggs: 'seen',
        youngest: 'egg',
      })),
  ],
  [
    'brood outlives its queen',
    'as much brood as before, nine days after the queen was lost',
    () => changed(readingsOf(visitOn('Willow', '2013-07-22')), eighths(3.5, 4)),
  ],
  [
    'more brood than a queen lays',
    'eight full combs of brood',
    () => changed<Reading>(readingsOf(visitOn('Alder', '2014-05-15')), (r) => ({ ...eighths(8, 0)(r) })),
  ],
  [
    'brood out of season',
    'brood as in summer at a visit moved to January',
    () => moved(visitOn('Linden', '2013-07-08'), '2014-01-08'),
  ],
  ['brood out of season', 'a full nest in October', () => changed(readingsOf(visitOn('Linden', '2013-10-12')), eighths(5, 2))],
  [
    'no spring growth',
    'as much brood in April as at the peak',
    () =>
      changed<Reading>(readingsOf(visitOn('Linden', '2013-04-08')), (r) => ({
        ...eighths(4.5, 1)(r),
        youngest: 'egg',
        eggs: 'seen',
      })),
  ],
  [
    'no honey from the flow',
    'empty combs in July',
    () =>
      changed(
        visitsOf('Linden')
          .filter((e) => e.at >= '2013-06-20' && e.at < '2013-07-13')
          .flatMap(readingsOf),
        eighths(3, 0.5),
      ),
  ],
  [
    'food grew in winter',
    'combs full of food in April',
    () => changed(readingsOf(visitOn('Hazel', '2014-04-11')), eighths(0, 8)),
  ],
  [
    'strength out of range',
    'nineteen bars of bees in April',
    () => changed<VisitBody>([visitOn('Hazel', '2014-04-11')], (v) => ({ ...v, beesBars: 19 })),
  ],
  [
    'bees from nowhere',
    'a small colony three times as strong in two weeks',
    () => changed<VisitBody>([visitOn('Birch', '2014-05-11')], (v) => ({ ...v, beesBars: 14 })),
  ],
  [
    'cells out of order',
    'an emerged cell where six days ago all were open',
    () =>
      changed<Reading>([first(readingsOf(visitOn('Hazel', '2013-06-04')))], (r) => ({
        ...r,
        cells: { open: 0, sealed: 0, torn: 0, emerged: 1 },
      })).map((e) => (e.id === visitOn('Hazel', '2013-06-04').id ? { ...e, at: `2013-06-03${e.at.slice(10)}` } : e)),
  ],
  [
    'swarm without cells',
    'a swarm from a hive in which no cell was seen',
    () =>
      changed<Reading>(readingsOf(visitOn('Hazel', '2014-05-05')), (r) => ({
        ...r,
        cells: { open: 0, sealed: 0, torn: 0, emerged: 0 },
        cellsLooked: 'none seen',
      })),
  ],
  [
    'visit after the end',
    'a visit to a dead colony',
    () => {
      const last = visitsOf('Hazel swarm').at(-1);
      assert.ok(last);
      return moved(last, '2014-04-01');
    },
  ],
  [
    'comb shrank',
    'a comb that was built out is a quarter',
    () =>
      changed<Reading>([first(readingsOf(visitOn('Alder', '2014-05-15')), (r) => r.built8 === 8)], (r) => ({
        ...r,
        built8: 2,
      })),
  ],
  [
    'opened in the cold',
    'a visit on a winter day',
    () => {
      const visit = visitOn('Linden', '2014-04-12');
      return moved(visit, '2014-02-22');
    },
  ],
];

for (const [code, title, broken] of cases) {
  test(`Y5 a journal with ${title} is doubted: ${code}`, () => breaks(code, broken()));
}

test('Y5 every kind of doubt has a journal that wakes it', () => {
  const all = new Set<string>(cases.map(([code]) => code));
  const known = readFileSync('tools/world/doubt.ts', 'utf8').match(/readonly code:([\s\S]*?);/)?.[1] ?? '';
  const codes = [...known.matchAll(/'([^']+)'/g)].map((found) => found[1] ?? '');
  assert.ok(codes.length >= 15);
  assert.deepEqual(
    codes.filter((code) => !all.has(code)),
    [],
  );
});
