/** The dots of a record against ratios that are given: where they stand, how many, full or open. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { drawnFaults, faultOf } from './drawn.contract.ts';
import { type DotOptions, recordDots } from './record-dots.ts';

const base: DotOptions = { width: 360, label: 'Bees', fewerWord: 'half', asWord: 'as forecast', moreWord: 'twice' };

const circles = (svg: string) =>
  [...svg.matchAll(/<circle class="(\w+)" cx="([^"]+)" cy="([^"]+)" r="([^"]+)"/g)].map((found) => ({
    inside: found[1] === 'inside',
    x: Number(found[2]),
    y: Number(found[3]),
    r: Number(found[4]),
  }));

test('D12 a dot stands by equal steps of doubling: half as far left of the middle as twice is right of it', () => {
  const [half, same, twice] = circles(
    recordDots(
      [0.5, 1, 2].map((ratio) => ({ ratio, inside: true })),
      base,
    ),
  );
  assert.ok(half && same && twice);
  assert.ok(Math.abs(same.x - half.x - (twice.x - same.x)) <= 2 * same.r * 1.3, 'to a column');
  assert.ok(Math.abs(same.x - base.width / 2) <= 2 * same.r);
});

test('D12 every forecast is one dot, a ring where what came lay outside its range, and none leaves the drawing or covers another', () => {
  for (const n of [1, 40, 400, 3000]) {
    const dots = Array.from({ length: n }, (_, i) => ({ ratio: Math.exp(Math.sin(i * 1.7) * 0.7), inside: i % 5 > 0 }));
    const drawn = circles(recordDots(dots, base));
    assert.equal(drawn.length, n);
    assert.equal(drawn.filter((dot) => dot.inside).length, dots.filter((dot) => dot.inside).length);
    assert.ok(drawn.every((dot) => dot.x - dot.r >= 0 && dot.x + dot.r <= base.width));
    assert.ok(drawn.every((dot) => dot.y - dot.r >= 0));
    assert.equal(new Set(drawn.map((dot) => `${dot.x} ${dot.y}`)).size, n);
  }
});

test('D12 what came ten times or a tenth as much stands at the edges', () => {
  const [low, high] = circles(
    recordDots(
      [
        { ratio: 0.1, inside: false },
        { ratio: 10, inside: false },
      ],
      base,
    ),
  );
  assert.ok(low && high && low.x < 10 && high.x > base.width - 10);
});

test('D5 dots of nothing and of nothing that came are well-formed and name no colour', () => {
  for (const dots of [[], [{ ratio: 0, inside: false }]]) {
    const svg = recordDots(dots, { ...base, asWord: 'a < b' });
    assert.equal(faultOf(svg), null);
    assert.deepEqual(drawnFaults(svg), []);
  }
});
