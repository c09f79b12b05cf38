/** Films of invented frames: threads, order, branches, speed. The strips inside have tests of their own. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { ColonyEvent } from '../colony/state.ts';
import type { BarView, FilmFrame } from '../colony/view.ts';
import { bareShares } from '../hive/contents.ts';
import { addDays } from '../numbers/day.ts';
import { drawnFaults, faultOf, idFaults } from './drawn.contract.ts';
import { film, type FilmOptions, type FilmStrip } from './film.ts';
import { placeEdges, middleOf } from './places.ts';

const trough = { topWidthMm: 420, depthMm: 300, wallAngleDeg: 22, sideGapMm: 8, floorGapMm: 20 };

function options(width: number, more: Partial<FilmOptions> = {}): FilmOptions {
  return {
    ...trough,
    width,
    frameHeight: 64,
    hiveBars: 24,
    entrance: 'first',
    label: 'A colony',
    barWidthMm: 35,
    ...more,
  };
}

function bar(place: number, comb: string): BarView {
  const shares = { ...bareShares, empty: 0.2, honey: 0.3, sealed: 0.3, larva: 0.1, egg: 0.1 };
  return {
    place,
    comb,
    mark: null,
    widthMm: 35,
    kind: 'comb',
    built: 1,
    shares,
    ink: 'seen',
    bees: 0.8,
    cells: null,
    queenSeen: false,
    readOn: null,
    spot: null,
  };
}

function frame(day: string, bars: readonly BarView[], event: ColonyEvent | null = null): FilmStrip {
  return {
    frame: { visit: day, day, kind: 'usual', by: 'o', bars, follower: bars.length + 1, event },
    date: day,
    note: event?.kind ?? null,
  };
}

const four = ['a', 'b', 'c', 'd'].map((comb, i) => bar(i + 1, comb));

/** Ends of the threads of a kind, left to right: where they start and where they arrive. */
function ends(svg: string, kind: 'still' | 'moving' | 'ended'): readonly (readonly [number, number])[] {
  const d = new RegExp(`<path class="${kind}" d="([^"]*)"`).exec(svg)?.[1] ?? '';
  return d
    .split('M')
    .slice(1)
    .map((line) => {
      const n = (line.match(/-?\d*\.?\d+/g) ?? []).map(Number);
      return [n[0] ?? Number.NaN, n.at(-2) ?? Number.NaN] as const;
    });
}

test('D6 a comb is one thread from its place in a strip to its place in the next, and a comb that is gone ends in a knot', () => {
  const moved = [bar(1, 'b'), bar(2, 'a'), bar(3, 'c')];
  const svg = film([frame('2014-05-01', four), frame('2014-05-09', moved)], options(360));
  const edges = placeEdges({ hiveBars: 24, width: 360, margin: 7, widthsMm: new Map(), usualMm: 35, lens: null });
  const at = (place: number) => middleOf(edges, place);
  const near = (found: readonly (readonly [number, number])[], wanted: readonly (readonly [number, number])[]) => {
    assert.equal(found.length, wanted.length);
    found.forEach(([x, y], i) => assert.ok(Math.hypot(x - (wanted[i]?.[0] ?? 0), y - (wanted[i]?.[1] ?? 0)) < 0.05, `${x} ${y}`));
  };
  near(ends(svg, 'still'), [[at(3), at(3)]]);
  near(ends(svg, 'moving'), [
    [at(1), at(2)],
    [at(2), at(1)],
  ]);
  assert.match(svg, /class="ended"/);
});

test('D6 time runs down: strips stand in the order given, each under the last, with every date printed', () => {
  for (const spacing of ['even', 'date'] as const) {
    const days = ['2014-04-01', '2014-04-05', '2014-06-20'];
    const svg = film(
      days.map((day) => frame(day, four)),
      options(828, { spacing }),
    );
    const tops = [...svg.matchAll(/class="frame" transform="translate\(\S+ (\S+)\)"/g)].map((found) => Number(found[1]));
    assert.equal(tops.length, 3);
    const [first = 0, second = 0, third = 0] = tops;
    assert.ok(second >= first + 64 && third >= second + 64, tops.join());
    if (spacing === 'date') assert.ok(third - second > second - first);
    else assert.equal(third - second, second - first);
    for (const day of days) assert.ok(svg.includes(`>${day}</text>`));
  }
});

test('D6 a swarm, a split, a union and an end each draw a branch of their own; other events are a note only', () => {
  const events: readonly ColonyEvent[] = [
    { kind: 'swarm left', window: { earliest: '2014-05-02', latest: '2014-05-04' }, child: null, hived: false },
    { kind: 'swarm hived', parent: null },
    { kind: 'split off', child: 'x', queenSide: 'went', combs: ['a', 'b'] },
    { kind: 'took in', from: 'y' },
    { kind: 'ended', how: 'united' },
  ];
  const drawn = events.map((event) => film([frame('2014-05-01', four), frame('2014-05-09', four, event)], options(360)));
  for (const svg of drawn) assert.match(svg, /class="branch"/);
  assert.equal(
    new Set(drawn.map((svg) => /<(?:g|path) class="branch".*?(?=<g class="frame")/.exec(svg)?.[0])).size,
    events.length,
  );
  const cut = film([frame('2014-05-01', four), frame('2014-05-09', four, { kind: 'cells cut' })], options(360));
  assert.doesNotMatch(cut, /class="branch"/);
  assert.match(cut, />cells cut<\/text>/);
});

test('D6 sixty visits to twenty bars are drawn well-formed, at phone and table width', () => {
  const bars = Array.from({ length: 20 }, (_, i) => bar(i + 1, `c${i}`));
  const long = Array.from({ length: 60 }, (_, i) => frame(addDays('2013-04-01', i * 7), bars));
  for (const width of [360, 860]) {
    const svg = film(long, options(width, { prefix: 'own' }));
    assert.equal(faultOf(svg), null);
    assert.deepEqual(drawnFaults(svg), []);
    assert.deepEqual(idFaults(svg), []);
  }
});

test('D6 a colony with a single visit and one without any still make a picture', () => {
  for (const strips of [[], [frame('2014-05-01', [])]]) assert.equal(faultOf(film(strips, options(360))), null);
});

test('D5 words of the caller cannot break the drawing', () => {
  const evil = '<b>&"</b>';
  const frameWith: FilmFrame = { ...frame('2014-05-01', four).frame };
  const svg = film([{ frame: frameWith, date: evil, note: evil }], options(360, { label: evil }));
  assert.equal(faultOf(svg), null);
  assert.ok(svg.includes('&lt;b&gt;&amp;'));
});
