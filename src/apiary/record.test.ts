/** Forecasts scored against later visits, worked by hand: which visit meets which, between two days, by each way. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { engineName } from '../colony/engine/tell/tell.ts';
import { madeUpForeseen } from '../colony/foreseen.contract.ts';
import { type CountForecast, forecastMethods } from '../colony/foreseen.ts';
import { recordQuantities } from '../colony/record.ts';
import { type SampleYard, sampleYard } from '../colony/for-tests.ts';
import { addDays, type Day } from '../numbers/day.ts';
import type { Range } from '../numbers/range.ts';
import { type Apiary, readJournal } from '../apiary.ts';
import { forecastIssued, issuedName } from './issued.ts';
import { recordOf } from './record.ts';

const issuedOn = '2014-05-01';

function yardOf(): { yard: SampleYard; hive: string; colony: string } {
  const yard = sampleYard();
  const hive = yard.hive('2014-04-01');
  return { yard, hive, colony: yard.colony('2014-04-01', hive) };
}

function apiaryOf(yard: SampleYard): Apiary {
  const apiary = readJournal(yard.entries);
  assert.deepEqual(apiary.faults, []);
  return apiary;
}

/** Forecasts of bees for two days: the engine's as given, "last time" a level 1000. */
function issue(yard: SampleYard, colony: string, day: Day, rows: readonly (readonly [number, Range])[]): void {
  const values = rows.flatMap(([ahead, range]) => [
    { what: issuedName('bees', 'engine'), day: addDays(day, ahead), ...range },
    { what: issuedName('bees', 'last time'), day: addDays(day, ahead), low: 500, likely: 1000, high: 2000 },
  ]);
  yard.add('forecast-issued', day, { colony, engine: engineName, digest: 'none', values });
}

const wide: Range = { low: 100, likely: 1000, high: 10_000 };

function beesAt(apiary: Apiary, colony: string): number {
  const row = recordOf(apiary, colony, null).scores.find((score) => score.what === 'bees' && score.n > 0)?.rows[0];
  assert.ok(row);
  return row.came;
}

test('E120 a forecast meets the first whole count of its days, and is read between the days that were issued', () => {
  const { yard, hive, colony } = yardOf();
  const combs = { 1: { brood: 4, food: 2, face: { bees8: 8 } }, 2: { brood: 4, food: 2, face: { bees8: 8 } } };
  yard.visit(issuedOn, colony, hive, combs);
  issue(yard, colony, issuedOn, [
    [7, { low: 100, likely: 1000, high: 10_000 }],
    [14, { low: 400, likely: 4000, high: 40_000 }],
  ]);
  // Three days on is no forecast's day; one comb of two meets nothing.
  yard.visit('2014-05-04', colony, hive, combs);
  yard.visit('2014-05-06', colony, hive, { 1: { brood: 4, food: 2, face: { bees8: 8 } } });
  yard.visit('2014-05-12', colony, hive, combs);
  yard.visit('2014-05-13', colony, hive, combs);
  const record = recordOf(apiaryOf(yard), colony, null);
  const score = record.scores.find((one) => one.what === 'bees' && one.horizonDays === 7);
  assert.equal(score?.n, 1);
  const [row] = score.rows;
  assert.equal(row?.forDay, '2014-05-12');
  const part = 4 ** (4 / 7);
  assert.ok(Math.abs((row?.likely ?? 0) - 1000 * part) < 1e-6 && Math.abs((row?.high ?? 0) - 10_000 * part) < 1e-5);
  assert.ok(Math.abs((row?.lastTime ?? 0) - 1000) < 1e-9);
  assert.equal(score.inside, 1);
  assert.equal(score.shown, 'engine');
  assert.ok(Math.abs((score.logRmse.engine ?? 0) - Math.abs(Math.log((row?.came ?? 0) / (1000 * part)))) < 1e-9);
  assert.ok(Math.abs((score.logRmse['as last time'] ?? 0) - Math.log((row?.came ?? 0) / 1000)) < 1e-9);
  assert.equal(score.logRmse.challenger, null);
  assert.equal(score.isBetter, null, 'one forecast decides nothing');
  assert.deepEqual(record.years, [2014]);
  assert.equal(recordOf(apiaryOf(yard), colony, 2013).scores.find((one) => one.horizonDays === 7)?.n, 0);
});

test('E166 a count that was filled in as expected meets no forecast', () => {
  const { yard, hive, colony } = yardOf();
  const comb = { brood: 4, food: 2 };
  yard.visit(issuedOn, colony, hive, { 1: comb, 2: comb });
  const values = ['engine', 'last time'].map((method) => ({
    what: issuedName('sealed', method as 'engine'),
    day: addDays(issuedOn, 7),
    ...wide,
  }));
  yard.add('forecast-issued', issuedOn, { colony, engine: engineName, digest: 'none', values });
  const met = (): number =>
    recordOf(apiaryOf(yard), colony, null).scores.find((one) => one.what === 'sealed' && one.horizonDays === 7)?.n ?? 0;
  yard.visit('2014-05-08', colony, hive, { 1: comb, 2: { ...comb, method: 'as expected' } });
  assert.equal(met(), 0);
  yard.visit('2014-05-09', colony, hive, { 1: comb, 2: comb });
  assert.equal(met(), 1);
});

test('E121 enough forecasts say which way was better, ranges that failed are counted, and what nobody met is waiting', () => {
  const better = (likely: number): boolean | null => {
    const { yard, hive, colony } = yardOf();
    const combs = { 1: { brood: 4, food: 2, face: { bees8: 8 } } };
    for (let i = 0; i < 9; i += 1) {
      yard.visit(addDays('2014-05-01', 7 * i), colony, hive, combs);
      if (i < 8) issue(yard, colony, addDays('2014-05-01', 7 * i), [[7, { low: likely / 1.01, likely, high: likely * 1.01 }]]);
    }
    const score = recordOf(apiaryOf(yard), null, null).scores.find((one) => one.what === 'bees' && one.horizonDays === 7);
    assert.equal(score?.n, 8);
    const came = beesAt(apiaryOf(yard), colony);
    assert.equal(score.inside, Math.abs(came / likely - 1) < 0.01 ? 8 : 0);
    return score.isBetter;
  };
  const { yard, hive, colony } = yardOf();
  yard.visit(issuedOn, colony, hive, { 1: { brood: 4, food: 2, face: { bees8: 8 } } });
  issue(yard, colony, issuedOn, [[7, wide]]);
  assert.equal(recordOf(apiaryOf(yard), colony, null).waiting, 3);
  yard.visit('2014-05-08', colony, hive, { 1: { brood: 4, food: 2, face: { bees8: 8 } } });
  const came = beesAt(apiaryOf(yard), colony);
  assert.equal(recordOf(apiaryOf(yard), colony, null).waiting, 2);
  assert.equal(better(came), true);
  assert.equal(better(came * (1000 / came) ** 3), false);
});

test('E122 what is issued is what the model told of that day, by each way that spoke; else what was read, carried on', () => {
  const { yard, hive, colony } = yardOf();
  yard.visit(issuedOn, colony, hive, { 1: { brood: 4, food: 2 } });
  const apiary = apiaryOf(yard);
  const forecasts: CountForecast[] = [
    { what: 'bees', day: '2014-05-23', ranges: { engine: wide, challenger: null, blend: null, 'last time': wide } },
  ];
  const foreseen = madeUpForeseen(colony, { forecasts });
  const body = forecastIssued(apiary, colony, foreseen.day, 'digest', foreseen);
  assert.deepEqual(
    body.values.map(({ what, likely }) => [what, likely]),
    [
      ['bees, engine', 1000],
      ['bees, last time', 1000],
    ],
  );
  assert.equal(body.engine, foreseen.engine);
  assert.equal(forecastIssued(apiary, colony, addDays(foreseen.day, 1), 'digest', foreseen).engine, 'plain 1');
  for (const what of recordQuantities) for (const method of forecastMethods) assert.ok(issuedName(what, method).length <= 40);
});
