/** What every figure must satisfy, whatever its topic. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { type Figure, topics } from './figure.ts';
import { figures } from './list.ts';
import { sources } from './sources.ts';

const all: readonly Figure[] = figures;
const keys = new Set(all.map((figure) => figure.key));

test('F1 every key is unique and in kebab case', () => {
  assert.equal(keys.size, all.length);
  for (const key of keys) assert.match(key, /^[a-z][a-z0-9]*(-[a-z0-9]+)*$/);
});

test('F2 every value lies in its range, and all three are numbers', () => {
  for (const figure of all) {
    assert.ok([figure.low, figure.value, figure.high].every(Number.isFinite), figure.key);
    assert.ok(figure.low <= figure.value && figure.value <= figure.high, figure.key);
  }
});

test('F3 every figure has a title, a unit, a condition and a topic of the list', () => {
  for (const figure of all) {
    assert.ok(figure.title.trim() !== '' && figure.unit !== '' && figure.when.trim() !== '', figure.key);
    assert.ok(topics.includes(figure.topic), figure.key);
    assert.doesNotMatch(figure.title, /\.$/, figure.key);
  }
});

test('F4 every basis is complete: a source with its place, other figures with the arithmetic, or a reason', () => {
  for (const { key, basis } of all) {
    if (basis.kind === 'source') assert.ok(basis.source in sources && basis.where.trim() !== '', key);
    if (basis.kind === 'our choice') assert.ok(basis.why.trim().length > 10, key);
    if (basis.kind === 'derived') {
      assert.ok(basis.from.length > 0 && basis.how.trim() !== '', key);
      for (const from of basis.from) assert.ok(keys.has(from) && from !== key, `${key} from ${from}`);
    }
  }
});

test('F5 no figure is derived from itself through others', () => {
  const from = new Map(all.map(({ key, basis }) => [key, basis.kind === 'derived' ? basis.from : []]));
  const reaches = (key: string, goal: string, seen: Set<string>): boolean =>
    (from.get(key) ?? []).some((next) => {
      if (next === goal) return true;
      if (seen.has(next)) return false;
      seen.add(next);
      return reaches(next, goal, seen);
    });
  for (const key of keys) assert.ok(!reaches(key, key, new Set()), key);
});

test('F6 no figure promises a warmth at which comb is safe', () => {
  for (const figure of all) {
    if (/comb/.test(figure.title) && figure.unit === 'degC') assert.doesNotMatch(figure.title, /safe/, figure.key);
  }
});
