/** The forecasts of the demo yard: those that the program would have issued that day, from what had been noted by then. */
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { readJournal } from '../../src/apiary.ts';
import { recordOf } from '../../src/apiary/record.ts';
import type { ForecastIssuedBody } from '../../src/colony/kind-forecast-issued.ts';
import type { VisitBody } from '../../src/colony/visit.ts';
import type { Entry, Id } from '../../src/journal/entry.ts';
import { issuedForecasts } from './issued-forecasts.ts';

const journal = readFileSync('examples/ferry-road.jsonl', 'utf8')
  .trim()
  .split('\n')
  .map((line) => JSON.parse(line) as Entry);
const forecasts = journal.filter(({ kind }) => kind === 'forecast-issued') as Entry<ForecastIssuedBody>[];
const visits = journal.filter(({ kind }) => kind === 'visit') as Entry<VisitBody>[];
/** Of a colony that was visited first late in the story: the model then has little to live through. */
const last = forecasts.findLast(({ body }) => forecasts.filter((one) => one.body.colony === body.colony).length <= 3)!;
const isLast = ({ body, at }: Entry<VisitBody>): boolean => body.colony === last.body.colony && at === last.at;

test('Y10 each visit that counted something is followed by one forecast of its colony', () => {
  const counted = new Set(journal.filter(({ kind }) => kind === 'reading').map(({ body }) => (body as { visit: Id }).visit));
  const of = (entry: Entry<{ readonly colony: Id }>): string => `${entry.at} ${entry.body.colony}`;
  const expected = visits.filter(({ body }) => counted.has(body.visit)).map(of);
  assert.deepEqual(forecasts.map(of).sort(), expected.sort());
  for (const { at, body } of forecasts) for (const { day } of body.values) assert.ok(day > at.slice(0, 10), `${at} ${day}`);
});

test('Y10 a forecast made again is the one in the journal, and what was noted later does not touch it', () => {
  assert.deepEqual(issuedForecasts(journal, isLast), [last], 'run tools/make-demo.ts again');
  const known = journal.filter(({ noted }) => noted <= last.noted);
  assert.ok(known.length < journal.length);
  assert.deepEqual(issuedForecasts(known, isLast), [last]);
});

test('Y10 what was noted before the visit does touch it', () => {
  const own = visits.find(isLast)!.body.visit;
  const other = journal.map((entry) =>
    (entry.body as { visit?: Id }).visit === own && entry.kind === 'reading' ? lessFood(entry) : entry,
  );
  const [again] = issuedForecasts(other, isLast);
  assert.notDeepEqual((again?.body as ForecastIssuedBody).values, last.body.values);
});

test('Y11 enough of them have been met by visits for the record to say which way was better, in both years', () => {
  const { scores, years } = recordOf(readJournal(journal), null, null);
  assert.deepEqual(years, [2013, 2014]);
  for (const what of ['sealed', 'honeyKg'] as const) {
    const judged = scores.filter((score) => score.what === what && score.isBetter !== null);
    assert.ok(judged.length >= 2, what);
  }
});

function lessFood(entry: Entry): Entry {
  const body = entry.body as { readonly faces: readonly { readonly food8: number | null }[] };
  return { ...entry, body: { ...body, faces: body.faces.map((face) => ({ ...face, food8: 0 })) } };
}
