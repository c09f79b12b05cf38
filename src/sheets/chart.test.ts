/** Charts against positions worked out by hand: points, axes, labels, today. What they look like is for the eye. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { addDays } from '../numbers/day.ts';
import { exactly } from '../numbers/range.ts';
import { chart, type ChartOptions, type ChartPanel } from './chart.ts';
import { drawnFaults, faultOf } from './drawn.contract.ts';

const from = '2014-04-01';
const base: ChartOptions = {
  width: 360,
  panelHeight: 140,
  from,
  to: addDays(from, 100),
  today: addDays(from, 40),
  todayLabel: 'today',
  dayLabel: (day) => day.slice(5),
  valueLabel: (value) => `${value}`,
  label: 'Bees',
};

const panel: ChartPanel = {
  title: 'Bees, thousands',
  points: [
    { day: addDays(from, 10), range: { low: 8, likely: 10, high: 12 }, ink: 'seen' },
    { day: addDays(from, 20), range: exactly(20), ink: 'worked out' },
    { day: addDays(from, 30), range: { low: 15, likely: 30, high: 40 }, ink: 'guessed' },
  ],
  bands: Array.from({ length: 11 }, (_, i) => ({
    day: addDays(from, i * 10),
    wide: { low: i, likely: 2 * i, high: 4 * i },
    half: { low: 1.5 * i, likely: 2 * i, high: 3 * i },
  })),
};

const circles = (svg: string) =>
  [...svg.matchAll(/<circle cx="([^"]+)" cy="([^"]+)"/g)].map((found) => [Number(found[1]), Number(found[2])] as const);

test('D7 points lie where their day and value say: equal steps of day and value are equal steps on the paper', () => {
  const [a, b, c] = circles(chart([panel], base));
  assert.ok(a && b && c);
  assert.ok(Math.abs(b[0] - a[0] - (c[0] - b[0])) < 0.02);
  assert.ok(Math.abs(b[1] - a[1] - (c[1] - b[1])) < 0.02);
  assert.ok(b[1] < a[1], 'more is higher');
});

test('D7 every counted point has its range as a bar, but a value known exactly has none', () => {
  const svg = chart([panel], base);
  const groups = [...svg.matchAll(/<g class="counted">(.*?)<\/g>/g)].map((found) => found[1] ?? '');
  assert.deepEqual(
    groups.map((group) => group.includes('<path')),
    [true, false, true],
  );
});

test('D7 the axis starts at nothing and holds the highest range of all', () => {
  const svg = chart([panel], base);
  const values = /<g class="values"[^>]*>(.*?)<\/g>/.exec(svg)?.[1] ?? '';
  const labels = [...values.matchAll(/>(\d+)<\/text>/g)].map((found) => Number(found[1]));
  assert.equal(labels[0], 0);
  assert.equal(Math.max(...labels), 40);
});

test('D7 day labels never run into each other on a phone or a table, for a month or for three years', () => {
  for (const width of [328, 360, 860])
    for (const textSize of [13, 20])
      for (const days of [3, 30, 100, 365, 1100]) {
        const svg = chart([panel], { ...base, width, textSize, to: addDays(from, days) });
        const axis = /<g class="days"[^>]*>(.*?)<\/g>/.exec(svg)?.[1] ?? '';
        const xs = [...axis.matchAll(/x="([^"]+)"/g)].map((found) => Number(found[1]));
        assert.ok(xs.length >= 2, `${days} days at ${width}`);
        xs.slice(1).forEach((x, i) => assert.ok(x - (xs[i] ?? 0) >= 3.8 * textSize, `${days} days at ${width}: ${xs.join()}`));
      }
});

test('D7 the likely line is whole up to today and broken after; without a today it is whole', () => {
  const both = chart([panel], base).match(/class="likely"[^>]*/g) ?? [];
  assert.deepEqual(
    both.map((line) => line.includes('dasharray')),
    [false, true],
  );
  const past = chart([panel], { ...base, today: null }).match(/class="likely"[^>]*/g) ?? [];
  assert.deepEqual(
    past.map((line) => line.includes('dasharray')),
    [false],
  );
});

test('D5 charts of nothing, of zeros and of one day are well-formed and name no colour', () => {
  const empty: ChartPanel = { title: 'Nothing <yet>', points: [], bands: [] };
  const zeros: ChartPanel = {
    title: 'Zero',
    points: [{ day: from, range: exactly(0), ink: 'seen' }],
    bands: [{ day: from, wide: exactly(0), half: null }],
  };
  for (const panels of [[], [empty], [zeros, panel, empty]])
    for (const to of [from, base.to]) {
      const svg = chart(panels, { ...base, to });
      assert.equal(faultOf(svg), null);
      assert.deepEqual(drawnFaults(svg), []);
    }
});

test('D13 a forecast as it was issued is an open bracket on the day it was for, from low to high', () => {
  const svg = chart(
    [{ ...panel, bands: [], issued: [{ day: addDays(from, 20), range: { low: 10, likely: 20, high: 40 } }] }],
    base,
  );
  const d = /class="issued" d="M(\S+) (\S+)h-8V(\S+)h8M\S+ (\S+)h5"/.exec(svg);
  const [x, high, low, likely] = (d ?? []).slice(1).map(Number);
  const [, , third] = circles(svg);
  const second = circles(svg)[1];
  assert.ok(x !== undefined && high !== undefined && low !== undefined && likely !== undefined && second && third);
  assert.ok(Math.abs(x - 4 - second[0]) < 0.02, 'on the day of the second point');
  assert.ok(Math.abs(likely - second[1]) < 0.02, 'its tick is at 20, as the second point');
  assert.ok(high < likely && likely < low);
});

test('D13 where “as last time” is no worse it is drawn and named, and the model ahead of today only by its edges', () => {
  const level = { from: addDays(from, 30), value: 30, label: 'as last time' };
  const svg = chart([{ ...panel, level }], base);
  assert.equal((svg.match(/class="likely"/g) ?? []).length, 1);
  assert.equal((svg.match(/class="level"/g) ?? []).length, 1);
  assert.ok(svg.includes('>as last time<'));
  const y = /class="level" d="M\S+ (\S+)H/.exec(svg)?.[1];
  assert.ok(Math.abs(Number(y) - (circles(svg)[2]?.[1] ?? 0)) < 0.02, 'at the height of 30');
  const right = (drawn: string) =>
    Math.max(
      ...[...drawn.matchAll(/d="([^"]+)" fill="var\(--band\)"/g)].flatMap((found) =>
        (found[1]?.match(/[ML](\d+\.?\d*),/g) ?? []).map((at) => Number(at.slice(1, -1))),
      ),
    );
  assert.ok(right(svg) < right(chart([panel], base)) - 100, 'the fill ends at today');
});
