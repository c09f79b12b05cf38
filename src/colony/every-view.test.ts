/** What every view must satisfy, over made-up yards: readings and events at random, some of which do not fit. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { contents } from '../hive/contents.ts';
import { addDays } from '../numbers/day.ts';
import { bookOf } from './book-of.ts';
import { type BarSeen, sampleYard, type SampleYard } from './for-tests.ts';
import { lookedFor, stages } from './reading.ts';
import type { ColonyView } from './view.ts';
import { viewOf } from './view-of.ts';

const start = '2014-03-20';
const options = { seed: 20140516, numRuns: 120 };
const half8 = (most: number): fc.Arbitrary<number> => fc.integer({ min: 0, max: 2 * most }).map((n) => n / 2);
const maybe = <T>(some: fc.Arbitrary<T>): fc.Arbitrary<T | null> => fc.option(some, { nil: null });

const anyBar: fc.Arbitrary<BarSeen> = fc.record({
  brood: maybe(half8(4)),
  food: maybe(half8(4)),
  face: fc.record({ bees8: maybe(half8(8)) }),
  built8: maybe(half8(8)),
  combClass: maybe(
    fc.constantFrom('bare' as const, 'building' as const, 'food' as const, 'brood' as const, 'mostly drone' as const),
  ),
  eggs: fc.constantFrom(...lookedFor),
  youngest: maybe(fc.constantFrom(...stages)),
  cells: maybe(fc.record({ open: fc.nat(9), sealed: fc.nat(9), torn: fc.nat(2), emerged: fc.nat(2) })),
  cellsLooked: fc.constantFrom(...lookedFor),
});

type Deed =
  | {
      readonly kind: 'visit';
      readonly bars: readonly (readonly [number, BarSeen])[];
      readonly beesBars: number | null;
      readonly follower: number | null;
      readonly cut: boolean;
    }
  | { readonly kind: 'swarm' }
  | { readonly kind: 'split'; readonly combs: number; readonly side: 'stayed' | 'went' | 'unknown' };

const anyDeed: fc.Arbitrary<Deed> = fc.oneof(
  {
    weight: 6,
    arbitrary: fc.record({
      kind: fc.constant('visit' as const),
      bars: fc.array(fc.tuple(fc.integer({ min: 1, max: 12 }), anyBar), { maxLength: 10 }),
      beesBars: maybe(fc.nat(12)),
      follower: maybe(fc.integer({ min: 4, max: 12 })),
      cut: fc.boolean(),
    }),
  },
  { weight: 1, arbitrary: fc.constant({ kind: 'swarm' as const }) },
  {
    weight: 1,
    arbitrary: fc.record({
      kind: fc.constant('split' as const),
      combs: fc.integer({ min: 1, max: 3 }),
      side: fc.constantFrom('stayed' as const, 'went' as const, 'unknown' as const),
    }),
  },
);
const anyStory = fc.array(fc.tuple(fc.integer({ min: 1, max: 12 }), anyDeed), { minLength: 1, maxLength: 14 });

function play(story: readonly (readonly [number, Deed])[]): {
  readonly yard: SampleYard;
  readonly days: readonly string[];
} {
  const yard = sampleYard();
  const hive = yard.hive(start);
  const colony = yard.colony(start, hive);
  let day = start;
  const days = story.map(([wait, deed]) => {
    day = addDays(day, wait);
    enact(yard, colony, hive, day, deed);
    return day;
  });
  return { yard, days: [start, ...days, addDays(day, 40)] };
}

function enact(yard: SampleYard, colony: string, hive: string, day: string, deed: Deed): void {
  if (deed.kind === 'visit') {
    yard.visit(day, colony, hive, Object.fromEntries(deed.bars), {
      beesBars: deed.beesBars,
      followerAfter: deed.follower,
      cellsCut: deed.cut,
    });
  } else if (deed.kind === 'swarm') {
    yard.add('swarm', day, {
      what: 'left',
      from: colony,
      window: { earliest: addDays(day, -1), latest: day },
      child: null,
      childName: null,
      into: null,
    });
  } else {
    const other = yard.hive(day);
    const placed = [...(yard.fold().draft.placed.get(hive)?.values() ?? [])].slice(0, deed.combs);
    if (placed.length === 0) return;
    const combs = placed.map((comb, i) => ({ comb, place: i + 1 }));
    yard.add('split', day, {
      from: colony,
      child: yard.id(),
      childName: 'Willow',
      into: { hive: other, bay: null },
      combs,
      queenSide: deed.side,
    });
  }
}

function eachView(check: (view: ColonyView) => void): void {
  fc.assert(
    fc.property(anyStory, (story) => {
      const { yard, days } = play(story);
      const { draft } = yard.fold();
      const book = bookOf(draft);
      for (const day of days) for (const id of draft.colonies.keys()) check(viewOf(draft, id, day, book));
    }),
    options,
  );
}

/** Calls back for every record in the data. */
function walk(data: unknown, path: string, visit: (record: Record<string, unknown>, path: string) => void): void {
  if (typeof data !== 'object' || data === null) {
    if (typeof data === 'number') assert.ok(Number.isFinite(data), `${path} is ${data}`);
    return;
  }
  if (!Array.isArray(data)) visit(data as Record<string, unknown>, path);
  for (const [key, value] of Object.entries(data)) walk(value, `${path}.${key}`, visit);
}

test('C60 every number is finite, every range and window runs forward, and nothing is less than none', () => {
  eachView((view) => {
    walk(view, 'view', (record, path) => {
      const { low, likely, high, earliest, latest } = record;
      if (typeof low === 'number' && typeof likely === 'number' && typeof high === 'number') {
        assert.ok(
          low >= 0 && low <= likely * (1 + 1e-9) + 1e-9 && likely <= high * (1 + 1e-9) + 1e-9,
          `${path} ${low} ${likely} ${high}`,
        );
      }
      if (typeof earliest === 'string' && typeof latest === 'string')
        assert.ok(earliest <= latest, `${path} ${earliest} ${latest}`);
    });
  });
});

test('C61 the bars are the places of the bay, each once and in order, and what is known of one sums to a whole comb', () => {
  eachView((view) => {
    assert.deepEqual(
      view.bars.map((bar) => bar.place),
      Array.from({ length: view.bay.to - view.bay.from + 1 }, (_, i) => view.bay.from + i),
    );
    const combs = view.bars.flatMap((bar) => (bar.comb === null ? [] : [bar.comb]));
    assert.equal(new Set(combs).size, combs.length, 'no comb in two places');
    for (const bar of [...view.bars, ...view.film.flatMap((frame) => frame.bars)]) {
      assert.equal(bar.shares === null, bar.kind === 'unknown');
      if (bar.shares === null) continue;
      const { shares } = bar;
      assert.ok(Math.abs(contents.reduce((sum, content) => sum + shares[content], 0) - 1) < 1e-9);
    }
  });
});

test('C62 seen and carried make the whole, and the cells of all contents together are the cells there are', () => {
  let whole = 0;
  eachView((view) => {
    for (const [name, { seen, carried, total }] of Object.entries(view.totals)) {
      assert.ok(Math.abs(seen.likely + carried.likely - total.likely) <= 1e-9 * (1 + total.likely), name);
    }
    const { totals } = view;
    const read = view.bars.every((bar) => bar.kind !== 'unknown');
    if (!read) return;
    whole += 1;
    const workerCells = contents
      .filter((content) => content !== 'drone')
      .reduce((sum, content) => sum + totals[content].total.likely, 0);
    // A drone cell takes the room of 400/250 worker cells.
    const all = workerCells + (totals.drone.total.likely * 400) / 250;
    assert.ok(Math.abs(all - totals.workerCells.total.likely) <= 1e-6 * (1 + all), `${all} ${totals.workerCells.total.likely}`);
  });
  assert.ok(whole > 20, `${whole} views without an unknown bar`);
});

test('C63 a bar that a visit did not open is unknown in its strip', () => {
  let unopened = 0;
  let read = 0;
  fc.assert(
    fc.property(anyStory, (story) => {
      const { draft } = play(story).yard.fold();
      for (const id of draft.colonies.keys()) {
        for (const frame of viewOf(draft, id, '2015-06-01', bookOf(draft)).film) {
          const opened = new Set(draft.visits.get(frame.visit)?.readings.map((row) => row.body.place));
          for (const bar of frame.bars) {
            if (opened.has(bar.place)) read += 1;
            else unopened += 1;
            assert.ok(opened.has(bar.place) || bar.kind !== 'comb', `place ${bar.place}`);
          }
        }
      }
    }),
    options,
  );
  assert.ok(unopened > 500 && read > 500, `${unopened} bars not opened, ${read} opened`);
});
