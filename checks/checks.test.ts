/** Every check is a test; and the checks themselves are whole: ids, sources, answers, and none that cannot fail. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { figures } from '../src/figures/list.ts';
import type { Basis, Figure } from '../src/figures/figure.ts';
import { sources } from '../src/figures/sources.ts';
import { answerTo, verdictOf } from './answer.ts';
import type { Check, Origin } from './check.ts';
import { checks } from './list.ts';

for (const check of checks) {
  test(`K1 ${check.id}: ${check.what}`, () => {
    const verdict = verdictOf(check);
    assert.ok(verdict.ours !== null, 'the program has no answer');
    const found = `ours ${verdict.ours}, theirs ${check.expected} ${check.unit}, error ${verdict.error}, tolerance ${check.tolerance}`;
    assert.ok(verdict.passes, found);
  });
}

test('K2 ids are unique and in kebab case, and every check says why its tolerance is what it is', () => {
  assert.equal(new Set(checks.map((check) => check.id)).size, checks.length);
  for (const check of checks) {
    assert.match(check.id, /^[a-z0-9]+(-[a-z0-9]+)*$/);
    assert.ok(check.why !== '' && check.what !== '' && check.unit !== '' && check.tolerance >= 0, check.id);
  }
});

test('K3 every check can fail: moved by more than its tolerance, or to another word, it does', () => {
  for (const check of checks.filter((one) => one.differs === undefined)) {
    assert.ok(!verdictOf(moved(check)).within, check.id);
  }
});

test('K4 a check that exercises the very row it was taken from is marked circular', () => {
  for (const check of checks) {
    if (check.ask.kind !== 'figure' && check.ask.kind !== 'range') continue;
    const { figure } = check.ask;
    const basis = (figures as readonly Figure[]).find((one) => one.key === figure)?.basis;
    assert.ok(basis);
    if (same(check.origin, basis)) assert.ok(check.circular, `${check.id} rests on what ${figure} rests on`);
  }
});

function same(origin: Origin, basis: Basis): boolean {
  if (origin.kind === 'common practice') return basis.kind === 'common practice';
  return origin.kind === 'published' && basis.kind === 'source' && basis.source === origin.source;
}

test('F7 every source is used by a figure or a check', () => {
  const used = new Set<string>();
  for (const { basis } of figures as readonly Figure[]) if (basis.kind === 'source') used.add(basis.source);
  for (const { origin } of checks) if (origin.kind === 'published') used.add(origin.source);
  assert.deepEqual(
    Object.keys(sources).filter((key) => !used.has(key)),
    [],
  );
});

test('K5 at least one check of each kind of question is asked, and every question has an answer', () => {
  for (const kind of ['sum', 'figure', 'range', 'worked', 'wording'] as const) {
    assert.ok(
      checks.some((check) => check.ask.kind === kind),
      kind,
    );
  }
  for (const check of checks) assert.notEqual(answerTo(check.ask), null, check.id);
});

/** The same check with an expected value that is surely wrong. */
function moved(check: Check): Check {
  if (typeof check.expected === 'string') {
    return { ...check, expected: /^\d{4}-/.test(check.expected) ? '1999-12-31' : 'another' };
  }
  const range = check.ask.kind === 'range' ? 1e6 : 0;
  return { ...check, expected: check.expected + range + 3 * check.tolerance + 1e-3 * Math.max(1, Math.abs(check.expected)) };
}
