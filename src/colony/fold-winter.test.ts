/** The list for winter through the fold. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { printedBook } from '../figures/book.ts';
import { sampleYard } from './for-tests.ts';
import type { VisitBody } from './visit.ts';
import { viewOf } from './view-of.ts';

function closing(more: Partial<VisitBody>) {
  const yard = sampleYard();
  const hive = yard.hive('2014-05-01');
  const colony = yard.colony('2014-05-01', hive);
  yard.visit('2014-10-12', colony, hive, { 1: { food: 8 }, 2: { food: 7 } }, more);
  const { draft, faults } = yard.fold();
  const view = viewOf(draft, colony, '2014-11-01', printedBook);
  return { visit: view.visits.at(-1), film: view.film.at(-1)?.day, faults: faults.map(({ code, path }) => `${code} ${path}`) };
}

test('C113 closing for winter keeps its list, and the nest as closed stays in the film for comparison', () => {
  const winter = { mouseGuard: 'done', mites: 'not done' } as const;
  const { visit, film, faults } = closing({ visitKind: 'closing for winter', winter });
  assert.deepEqual([visit?.winter, visit?.kind, film, faults], [winter, 'closing for winter', '2014-10-12', []]);
  assert.equal(closing({ visitKind: 'closing for winter' }).visit?.winter, undefined);
});

test('C113 the list for winter at another visit is refused and changes nothing', () => {
  const { visit, faults } = closing({ winter: { roof: 'done' } });
  assert.deepEqual([visit?.kind, visit?.winter, faults], ['not closed', undefined, ['winter-of-another-visit winter']]);
});
