/** What is told of a bar, and what the strip shows: nothing before the keeper has read it. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { Reading } from '../../../colony/reading.ts';
import type { BarView, ColonyView } from '../../../colony/view.ts';
import { bareShares } from '../../../hive/contents.ts';
import { drawnReading } from './drawn-reading.ts';
import { unseen } from './draft.ts';
import { expectationOf } from './expectation.ts';
import { type VisitStrip, visitStrip } from './strip-of-visit.ts';
import { readingOf } from './to-entries.ts';

const visit = { visit: 'today', hive: 'hive' };
const trough = { topWidthMm: 450, depthMm: 300, wallAngleDeg: 22, sideGapMm: 8, floorGapMm: 20 };

function bar(place: number, sealed: number, honey: number, readOn: string | null): BarView {
  return {
    place,
    comb: null,
    mark: null,
    widthMm: 35,
    kind: 'comb',
    built: 1,
    shares: { ...bareShares, empty: 1 - sealed - honey, sealed, honey },
    ink: 'worked out',
    bees: 1,
    cells: null,
    queenSeen: true,
    readOn,
    spot: null,
  };
}

/** Four bars, of which place 2 was read at the last visit with 4 and 2, and should be at 5 and 2 today. */
function viewWith(film: ColonyView['film'] = []): ColonyView {
  const before = { visit: 'before', day: '2014-05-08', kind: 'usual', by: 'k', follower: 4, event: null } as const;
  return {
    hiveBars: 10,
    entrance: 'first',
    day: '2014-05-16',
    bars: [1, 2, 3, 4].map((place) => bar(place, 5 / 8, 2 / 8, '2014-05-08')),
    film: [{ ...before, bars: [bar(2, 4 / 8, 2 / 8, '2014-05-08'), bar(3, 4 / 8, 2 / 8, '2014-04-20')] }, ...film],
  } as unknown as ColonyView;
}

function reading(place: number, brood8: number | null, food8: number | null): Reading {
  return readingOf(visit, place, { ...unseen, brood8, food8 });
}

test("V15 after the reading: last time with its day, and the day's expectation in the eighths of the rulers", () => {
  const told = expectationOf(viewWith(), reading(2, 4, 2), []);
  assert.deepEqual(told.lastTime, { day: '2014-05-08', brood8: 4, food8: 2 });
  assert.deepEqual([told.today, told.surprise], [{ brood8: 5, food8: 2 }, null]);
});

test('V15 far more or less than expected is a surprise, an eighth is not, and what was not read surprises nobody', () => {
  const word = (brood8: number | null, food8: number | null) => expectationOf(viewWith(), reading(2, brood8, food8), []).surprise;
  assert.deepEqual([word(1, 2), word(8, 0), word(5, 3), word(4, 2)], ['less brood', 'more brood', null, null]);
  assert.deepEqual([word(3, 5), word(null, null)], ['more food', null]);
});

test('V15 last time is a time at which this bar was read, and never this very visit', () => {
  assert.equal(expectationOf(viewWith(), reading(3, 4, 2), []).lastTime, null);
  const own = {
    visit: 'today',
    day: '2014-05-16',
    kind: 'not closed',
    by: 'k',
    follower: 4,
    event: null,
    bars: [bar(2, 0, 0, '2014-05-16')],
  } as const;
  const told = expectationOf(viewWith([own]), reading(2, 0, 0), []);
  assert.deepEqual([told.lastTime?.brood8, told.today], [4, null]);
});

function stripWith(change: Partial<VisitStrip>): string {
  return visitStrip({
    view: viewWith(),
    trough,
    read: new Map(),
    gaps: new Set<number>(),
    current: 2,
    end: 4,
    bay: { from: 1, to: 4 },
    width: 360,
    height: 100,
    label: 'strip',
    told: null,
    ...change,
  });
}

test('V16 before anything is read the strip shows four unknown combs and nothing that is believed', () => {
  const svg = stripWith({});
  assert.equal(svg.match(/class="unknown"/g)?.length, 4);
  for (const believed of ['class="comb"', 'class="bees"', 'class="queen"', 'told-']) assert.ok(!svg.includes(believed), believed);
  const bare = {
    ...viewWith(),
    bars: viewWith().bars.map((each) => ({ ...each, built: 0.2, shares: null, kind: 'bare' as const })),
  };
  assert.equal(stripWith({ view: bare }), svg, 'whatever is believed, the strip is the same');
});

test('V16 a bar read today is drawn in full ink, and only then stand last time and the expectation beside it', () => {
  const body = reading(3, 4, 2);
  const view = viewWith();
  const read = new Map([[3, drawnReading(view, body)]]);
  const svg = stripWith({ read, told: { place: 3, expected: expectationOf(view, body, []) } });
  assert.equal(svg.match(/class="comb"/g)?.length, 1);
  assert.equal(svg.match(/class="unknown"/g)?.length, 3);
  assert.match(svg, /visit-s-sealed/);
  assert.ok(!/visit-[wg]-/.test(svg));
  assert.ok(svg.includes('told-today') && !svg.includes('told-last'), 'place 3 was not read last time');
});

test('V16 where a bar was taken nothing is drawn, and the others stay in their places', () => {
  const placesOf = (svg: string): readonly string[] =>
    [...svg.matchAll(/data-place="(\d+)"/g)].flatMap(([, place]) => place ?? []);
  const [all, fewer] = [placesOf(stripWith({})), placesOf(stripWith({ gaps: new Set([3]) }))];
  assert.equal(stripWith({ gaps: new Set([3]) }).match(/class="unknown"/g)?.length, 3);
  assert.ok(all.includes('3'));
  assert.deepEqual(
    fewer,
    all.filter((place) => place !== '3'),
  );
});
