/** Worked examples of the words engine and its formats. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { Cite, Slot } from '../advice/advice.ts';
import { english } from './en/list.ts';
import { formatChance } from './format-chance.ts';
import { formatDay, formatSpan, formatWeekday, formatWindow } from './format-day.ts';
import { formatEnds, formatNumber, formatRange, plainNumber, twoFigures } from './format-number.ts';
import { formatPlaces } from './format-place.ts';
import { formatClock, formatDuration, formatHours } from './format-time.ts';
import { issueText } from './issue-text.ts';
import type { Manner } from './say.ts';
import { say, sayChance, type TextKey, text } from './text.ts';

const today: Manner = { language: 'en', units: 'metric', hours: 24, today: '2014-05-16' };
const US: Manner = { ...today, units: 'US', hours: 12 };
const counted: Cite = { kind: 'entry', id: 'e' };
const worked: Cite = { kind: 'worked out', from: [counted] };

test('Wd1 a missing slot and a slot too many both throw', () => {
  assert.throws(() => text('place.one'), /slot n/);
  assert.throws(() => text('place.one', { n: '8', m: '9' }), /slot m/);
  assert.throws(() => text('act.open', { n: 1 }), /slot n/);
});

test('Wd1 a saying whose key is not in the catalogue throws', () => {
  assert.throws(() => say({ key: 'nothing.of.the.kind', slots: {} }), /catalogue/);
});

test('Wd3 a day has its year only when the year is not today’s', () => {
  assert.equal(formatDay('2014-05-16', today), '16 May');
  assert.equal(formatDay('2013-09-02', today), '2 September 2013');
  assert.equal(formatDay('2014-05-16', { language: 'en', units: 'metric', hours: 24 }), '16 May 2014');
  assert.equal(formatWeekday('2014-05-16', today), 'Fri 16 May 2014');
});

test('Wd3 a window says its month once, and its years when they differ', () => {
  assert.equal(formatWindow({ earliest: '2014-05-16', latest: '2014-05-21' }, today), 'between 16 and 21 May');
  assert.equal(formatWindow({ earliest: '2014-05-28', latest: '2014-06-02' }, today), 'between 28 May and 2 June');
  assert.equal(formatWindow({ earliest: '2014-05-16', latest: '2014-05-16' }, today), 'on 16 May');
  assert.equal(formatSpan({ earliest: '2013-12-28', latest: '2014-01-02' }, today), '28 December 2013 to 2 January');
});

test('Wd4 numbers have two significant figures unless counted or weighed', () => {
  assert.equal(twoFigures(20_840), 21_000);
  assert.equal(twoFigures(0.0456), 0.046);
  assert.equal(plainNumber(1234567.891), '1,234,567.89');
  assert.equal(plainNumber(-0.001), '0');
  assert.equal(plainNumber(-3.5), '−3.5');
  assert.equal(plainNumber(100), '100');
  assert.equal(formatNumber(20_840, 'none', false, today), '21 thousand');
  assert.equal(formatNumber(20_840, 'none', true, today), '20,840');
  assert.equal(formatNumber(1_290, 'none', false, today), '1,300');
});

test('Wd4 a range is said with its ends on the scale of its likely value', () => {
  assert.equal(formatRange({ low: 17_900, likely: 20_840, high: 25_300 }, 'none', false, today), '21 thousand (18 to 25)');
  assert.equal(formatRange({ low: 6.51, likely: 8.23, high: 10.04 }, 'kg', false, today), '8.2 kg (6.5 to 10)');
  assert.equal(formatRange({ low: 8, likely: 8, high: 8 }, 'kg', false, today), '8 kg');
  assert.equal(formatEnds({ low: 905, likely: 1100, high: 1290 }, 'none', false, today), '910 to 1,300');
});

test('Wd5 units are the person’s own', () => {
  assert.equal(formatNumber(14, 'degC', true, today), '14 °C');
  assert.equal(formatNumber(14, 'degC', true, US), '57 °F');
  assert.equal(formatNumber(8.23, 'kg', false, US), '18 lb');
  assert.equal(formatNumber(482, 'mm', true, US), '18.98 in');
  assert.equal(formatHours(11, 16, today), '11 to 16 h');
  assert.equal(formatHours(11, 16, US), '11 am to 4 pm');
  assert.equal(formatClock('2014-05-16T14:05', US), '2:05 pm');
  assert.equal(formatClock('2014-05-16T00:05', US), '12:05 am');
  assert.equal(formatClock('2014-05-16', US), null);
  assert.equal(formatDuration(80, today), '1 h 20 min');
});

test('Wd6 places are listed, and long runs are said by their ends', () => {
  assert.equal(formatPlaces([8], today), 'place 8');
  assert.equal(formatPlaces([7, 3, 4], today), 'places 3, 4 and 7');
  assert.equal(formatPlaces([3, 4, 5, 6, 9], today), 'places 3 to 6 and 9');
});

test('Wd7 a chance is said in words and out of ten', () => {
  assert.equal(formatChance(0.68, today), 'likely, about 7 in 10');
  assert.equal(formatChance(0.01, today), 'very unlikely, fewer than 1 in 10');
  assert.equal(formatChance(0.99, today), 'very likely, more than 9 in 10');
  assert.throws(() => formatChance(7, today), /chance/);
  const of = { key: 'act.split', slots: {} };
  assert.equal(sayChance({ chance: 0.5, of }, today), 'split: about even, about 5 in 10');
});

test('Wd2 a slot in a sentence is said by its kind, unit and where it comes from', () => {
  const slots: readonly (readonly [Slot, string])[] = [
    [{ kind: 'number', value: 20_840, unit: 'bees', cite: counted }, '20,840'],
    [{ kind: 'number', value: 20_840, unit: 'bees', cite: worked }, '21 thousand'],
    [{ kind: 'places', places: [4, 3], cite: counted }, 'places 3 and 4'],
    [{ kind: 'term', key: 'stage.egg' }, 'eggs'],
    [{ kind: 'name', name: 'Alder' }, 'Alder'],
  ];
  for (const [slot, said] of slots) assert.equal(text('unit.kg' as TextKey, { n: slot }, today), `${said} kg`);
});

test('Wd8 an issue is said by its code, or with path, found and expected', () => {
  const issue = { code: 'never-heard-of', path: 'faces.0.brood8', found: '9', expected: 'a number from 0 to 8' };
  assert.equal(issueText(issue), 'faces.0.brood8: 9; a number from 0 to 8.');
  assert.match(issueText({ ...issue, path: '', entry: 'abc' }), /^the whole input of entry abc: 9;/);
});

test('Wd8 every code with a sentence of its own can be said with the facts of an issue alone', () => {
  const facts = { path: 'faces.0.brood8', found: 'what was there', expected: 'what should be', entry: 'abc' };
  const codes = Object.keys(english).filter((key) => key.startsWith('issue.') && !/\.(other|at-entry|whole)$/.test(key));
  assert.ok(codes.length > 40);
  for (const key of codes) {
    const said = issueText({ code: key.slice('issue.'.length), ...facts });
    assert.match(said, /^\S.*\.$/);
    assert.doesNotMatch(said, /[{}]/);
  }
});
