/** What every move of a row must satisfy: no bar is lost or doubled, and what is done can be undone. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { type Move, moved } from './row.ts';
import type { Hung, Row } from './row-shape.ts';

const bars = 12;
const hung = (what: string, bare = false): Hung<string> => ({ what, bare, turned: false });

const rows: fc.Arbitrary<Row<string>> = fc
  .record({
    from: fc.integer({ min: 1, max: 5 }),
    length: fc.integer({ min: 1, max: 7 }),
    gaps: fc.subarray([1, 2, 3, 4, 5, 6, 7]),
    outward: fc.constantFrom('first' as const, 'last' as const),
  })
  .map(({ from, length, gaps, outward }) => {
    const places = Array.from({ length }, (_, i) => from + i).filter((_, i) => !gaps.includes(i + 1));
    const at = new Map(places.map((place) => [place, hung(`c${place}`, place % 4 === 0)] as const));
    return { bars, from, to: from + length - 1, outward, at, gaps: new Set(gaps.map((i) => from + i - 1)) };
  });

const place = fc.integer({ min: 1, max: bars });
const moves: fc.Arbitrary<Move> = fc.oneof(
  fc.record({ do: fc.constant('take' as const), place, to: fc.constantFrom('hand' as const, 'box' as const) }),
  fc.record({
    do: fc.constant('put' as const),
    place,
    what: fc.constant({ kind: 'bare' as const }),
    room: fc.constantFrom('free' as const, 'make way' as const),
  }),
  fc.record({ do: fc.constant('swap' as const), place, with: place }),
  fc.record({ do: fc.constant('turn' as const), place }),
  fc.record({ do: fc.constant('shift' as const), place, by: fc.integer({ min: -4, max: 4 }) }),
  fc.record({ do: fc.constant('follower' as const), place }),
);

const spare = (place: number): Hung<string> => hung(`spare${place}`);
const doneTo = (row: Row<string>, move: Move, what: Hung<string> | null = null) =>
  moved(row, move, what === null ? [] : [what], spare);
const combsOf = (row: Row<string>): readonly string[] =>
  [...row.at.values()].flatMap(({ what }) => (what.startsWith('spare') ? [] : [what])).sort();

test('H30 no move loses a bar, doubles one, or hangs one outside of the trough; what is refused changes nothing', () => {
  fc.assert(
    fc.property(rows, moves, (row, move) => {
      const before = JSON.stringify([...row.at]);
      const after = doneTo(row, move, move.do === 'put' ? hung('new') : null);
      assert.equal(JSON.stringify([...row.at]), before);
      if (!after.ok) {
        for (const issue of after.issues) assert.ok(issue.path !== '' && issue.found !== '' && issue.expected !== '');
        return;
      }
      const there = combsOf(after.value);
      const taken = move.do === 'take' ? [row.at.get(move.place)!.what] : [];
      const displaced = move.do === 'put' && move.room === 'free' ? [row.at.get(move.place)?.what ?? ''] : [];
      const expected = [...combsOf(row), ...(move.do === 'put' ? ['new'] : [])].filter(
        (what) => !taken.includes(what) && !displaced.includes(what),
      );
      assert.deepEqual(there, expected.sort());
      for (const at of after.value.at.keys()) assert.ok(at >= 1 && at <= bars);
      assert.ok(1 <= after.value.from && after.value.from <= after.value.to && after.value.to <= bars);
    }),
    { seed: 611, numRuns: 600 },
  );
});

test('H31 swapped twice, turned twice, shifted out and in again: the row is as it was', () => {
  fc.assert(
    fc.property(rows, place, place, fc.integer({ min: 1, max: 4 }), (row, one, other, by) => {
      const again = (first: Move, second: Move): void => {
        const once = doneTo(row, first);
        if (!once.ok) return;
        const twice = doneTo(once.value, second);
        assert.ok(twice.ok);
        const sorted = (of: Row<string>) => {
          const inside = [...of.at].filter(([at, { what }]) => of.from <= at && at <= of.to && !what.startsWith('spare'));
          return [of.from, of.to, inside.sort(([a], [b]) => a - b)];
        };
        assert.deepEqual(sorted(twice.value), sorted(row));
      };
      again({ do: 'swap', place: one, with: other }, { do: 'swap', place: one, with: other });
      again({ do: 'turn', place: one }, { do: 'turn', place: one });
      const way = row.outward === 'last' ? 1 : -1;
      again({ do: 'shift', place: one, by }, { do: 'shift', place: one + by * way, by: -by });
    }),
    { seed: 612, numRuns: 400 },
  );
});

test('H32 bars make way outward up to the first gap, and the bay grows only when there is none', () => {
  const at = new Map([1, 2, 3, 5].map((where) => [where, hung(`c${where}`)] as const));
  const row: Row<string> = { bars, from: 1, to: 5, outward: 'last', at, gaps: new Set([4]) };
  const put = (where: number, of = row) =>
    doneTo(of, { do: 'put', place: where, what: { kind: 'bare' }, room: 'make way' }, hung('new', true));
  const names = (of: Row<string>): string => Array.from({ length: of.to }, (_, i) => of.at.get(i + 1)?.what ?? '-').join(' ');
  const second = put(2);
  assert.ok(second.ok);
  assert.equal(names(second.value), 'c1 new c2 c3 c5');
  const third = put(2, second.value);
  assert.ok(third.ok);
  assert.equal(names(third.value), 'c1 new new c2 c3 c5');
  const turned = put(2, { ...row, outward: 'first' });
  assert.equal(turned.ok ? 'made way' : turned.issues[0]?.code, 'no-room');
});
