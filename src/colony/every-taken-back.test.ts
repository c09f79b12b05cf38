/**
 * Random yards in which a unite, a split, a swarm or a visit is taken back: everything after it is run again as
 * if it had never been written, what no longer fits is named, and nothing is lost.
 */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import type { Entry, Id } from '../journal/entry.ts';
import { takenBack } from '../journal/no-fit.ts';
import { foldWith, noFitsWith, sampleYard } from './for-tests.ts';

type Do = {
  readonly what: 'unite' | 'split' | 'swarm' | 'visit' | 'look' | 'ended' | 'feeding';
  readonly a: number;
  readonly b: number;
};

const anyDo: fc.Arbitrary<Do> = fc.record({
  what: fc.constantFrom('unite', 'split', 'swarm', 'visit', 'visit', 'look', 'ended', 'feeding'),
  a: fc.nat(),
  b: fc.nat(),
});

const recipe = fc.record({ acts: fc.array(anyDo, { minLength: 6, maxLength: 16 }), which: fc.nat() });

/** What is named need not be there any more: such entries are faults from the start, as in a real journal. */
function written(acts: readonly Do[]): { readonly entries: readonly Entry[]; readonly acted: readonly Entry[] } {
  const yard = sampleYard();
  const hives = [1, 2, 3, 4].map(() => yard.hive('2014-04-01'));
  const colonies: Id[] = hives.slice(0, 3).map((hive) => yard.colony('2014-04-02', hive));
  const combs = hives.slice(0, 3).map((hive) => {
    yard.visit('2014-04-03', colonies[hives.indexOf(hive)]!, hive, { 1: { brood: 4 }, 2: { brood: 2, food: 3 } });
    return [...(yard.fold().draft.placed.get(hive)?.values() ?? [])];
  });
  const acted = acts.flatMap((act, n): Entry[] => {
    const day = `2014-05-${String(n + 1).padStart(2, '0')}`;
    const colony = colonies[act.a % colonies.length]!;
    const other = colonies[act.b % colonies.length]!;
    const hive = hives[act.b % hives.length]!;
    const window = { earliest: day, latest: day };
    switch (act.what) {
      case 'unite':
        return [yard.add('unite', day, { from: colony, into: other })];
      case 'split':
      case 'swarm': {
        const child = yard.id();
        colonies.push(child);
        const comb = combs.flat()[act.a % combs.flat().length]!;
        const into = { hive, bay: null };
        return act.what === 'split'
          ? [
              yard.add('split', day, {
                from: colony,
                child,
                childName: 'Hazel',
                into,
                combs: [{ comb, place: 1 }],
                queenSide: 'unknown',
              }),
            ]
          : [
              yard.add('swarm', day, {
                what: 'hived',
                from: colony,
                window,
                child,
                childName: 'Linden',
                into: { ...into, bars: 3 },
              }),
            ];
      }
      case 'visit': {
        const before = yard.entries.length;
        yard.visit(day, colony, hive, { [1 + (act.a % 6)]: { brood: 3, food: 1 } });
        return yard.entries.slice(before);
      }
      case 'look':
        return [yard.add('look', day, { hive, colony, flight: 'few', pollenIn: null, seen: [] })];
      case 'ended':
        return [yard.add('colony-ended', day, { colony, how: 'died', window })];
      case 'feeding':
        return [yard.add('feeding', day, { colony, what: 'candy', amount: null })];
    }
  });
  const great = acted.filter(({ kind }) => kind === 'unite' || kind === 'split' || kind === 'swarm');
  return { entries: yard.entries, acted: great.length > 0 ? great : acted };
}

test('J80 taken back, an entry is as if never written: all after it runs again, and what no longer fits is named', () => {
  const newlyNamed = { runs: 0 };
  fc.assert(
    fc.property(recipe, ({ acts, which }) => {
      const { entries, acted } = written(acts);
      const chosen = acted[which % acted.length]!;
      const before = foldWith(entries);
      const after = foldWith([...entries, takenBack(chosen, entries)]);
      const never = foldWith(entries.filter((entry) => entry !== chosen));
      assert.deepEqual(after.draft, never.draft);
      assert.deepEqual(after.faults, never.faults);
      assert.deepEqual(after.struck, [chosen.id]);
      const fitted = new Set(before.faults.map(({ entry }) => entry));
      if (after.faults.some(({ entry }) => !fitted.has(entry))) newlyNamed.runs += 1;
      // Every fault names an entry of the journal and the field in it.
      const ids = new Set(entries.map(({ id }) => id));
      for (const { entry, path } of after.faults) assert.ok(entry !== undefined && ids.has(entry) && path !== '');
    }),
    { numRuns: 300, seed: 80 },
  );
  assert.ok(newlyNamed.runs >= 10, `only ${newlyNamed.runs} runs left entries that no longer fit: the yards try too little`);
});

test('J81 the taking back taken back, all is as it was', () =>
  fc.assert(
    fc.property(recipe, ({ acts, which }) => {
      const { entries, acted } = written(acts);
      const back = takenBack(acted[which % acted.length]!, entries);
      const again = foldWith([...entries, back, takenBack(back, [...entries, back])]);
      const before = foldWith(entries);
      assert.deepEqual(again.draft, before.draft);
      assert.deepEqual(again.faults, before.faults);
    }),
    { numRuns: 150 },
  ));

test('J82 of an entry that does not fit since another was taken back, that taking back is named, and no other', () => {
  let named = 0;
  fc.assert(
    fc.property(recipe, ({ acts, which }) => {
      const { entries, acted } = written(acts);
      const back = takenBack(acted[which % acted.length]!, entries);
      const before = new Set(foldWith(entries).faults.map(({ entry }) => entry));
      for (const { entry, faults, since } of noFitsWith([...entries, back])) {
        assert.ok(faults.length > 0);
        assert.deepEqual(since, before.has(entry) ? [] : [back.id], entry);
        named += since.length;
      }
    }),
    { numRuns: 150, seed: 82 },
  );
  assert.ok(named >= 10, String(named));
});

test('C112 two colonies united by mistake and parted again: both live, what was read of the one since is its own again', () => {
  const yard = sampleYard();
  const [alder, birch] = ['2014-04-01', '2014-04-01'].map((day) => yard.hive(day)) as [Id, Id];
  const one = yard.colony('2014-04-02', alder);
  const two = yard.colony('2014-04-02', birch, { name: 'Birch' });
  const unite = yard.add('unite', '2014-05-01', { from: one, into: two });
  yard.visit('2014-05-09', one, alder, { 1: { brood: 3 } });
  const fed = yard.add('feeding', '2014-05-10', { colony: two, what: 'candy', amount: null });
  const wrong = foldWith(yard.entries);
  assert.ok(wrong.draft.colonies.get(one)?.ended !== null && wrong.faults.some(({ code }) => code === 'colony-ended'));
  const right = foldWith([...yard.entries, takenBack(unite, yard.entries)]);
  assert.deepEqual(right.faults, []);
  assert.deepEqual(
    [one, two].map((id) => right.draft.colonies.get(id)?.ended),
    [null, null],
  );
  assert.deepEqual(
    [...right.draft.visits.values()].map(({ colony, readings }) => [colony, readings.length]),
    [[one, 1]],
  );
  assert.equal(right.draft.events.get(two)?.at(-1)?.entry, fed.id);
});

test('J83 an old move corrected late runs the later ones again; what is then impossible names the correction', () => {
  const yard = sampleYard();
  const hive = yard.hive('2014-04-01');
  const colony = yard.colony('2014-04-02', hive);
  yard.visit('2014-04-03', colony, hive, { 1: { brood: 4 }, 2: { brood: 2, food: 3 } });
  const move = (at: string, done: unknown) => yard.add('move', at, { hive, visit: null, outward: 'last', move: done });
  const take = move('2014-05-01', { do: 'take', place: 2, to: 'box' });
  const put = move('2014-05-02', { do: 'put', place: 2, what: { kind: 'taken', entry: take.id }, room: 'free' });
  move('2014-05-03', { do: 'swap', place: 1, with: 2 });
  const combs = [...yard.fold().draft.combs.keys()];
  const places = () => {
    const { draft } = foldWith(yard.entries);
    return [1, 2, 9].map((place) => combs.indexOf(draft.placed.get(hive)?.get(place) ?? ''));
  };
  assert.deepEqual(places(), [1, 0, -1]);
  const correct = (place: number) => {
    const body = { hive, visit: null, outward: 'last', move: { do: 'take', place, to: 'box' } };
    const made = { ...yard.add('correction', '2014-05-20', { body, why: 'misread', knew: [] }), corrects: take.id };
    yard.entries[yard.entries.length - 1] = made;
    return made;
  };
  const wrong = correct(9);
  assert.deepEqual(
    noFitsWith(yard.entries).map(({ entry, faults, since }) => [entry, faults.map(({ code }) => code), since]),
    [[put.id, ['place-occupied'], [wrong.id]]],
  );
  assert.deepEqual(places(), [1, 0, -1], 'the swap after it is done all the same');
  yard.entries.push(takenBack(wrong, yard.entries));
  assert.deepEqual([places(), noFitsWith(yard.entries)], [[1, 0, -1], []]);
});
