/** What holds for every row of taps: nothing is lost when the page is closed after any of them, nothing is written twice. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import type { BarsForetold, FarBar } from '../../../apiary/bar-far.ts';
import { causes } from '../../../colony/foreseen.ts';
import { combClasses, lookedFor, readingSchema, stages } from '../../../colony/reading.ts';
import { signs } from '../../../colony/signs.ts';
import { visitSchema, winterTasks } from '../../../colony/visit.ts';
import type { BarView } from '../../../colony/view.ts';
import { envelopeSchema, type Entry, type Id } from '../../../journal/entry.ts';
import { plainManner } from '../../../words/say.ts';
import { asDraft, beginDraft, type Draft } from './draft.ts';
import { beginningOf, stamp, uuid } from './for-tests.ts';
import type { Expected } from './ports.ts';
import { closingSentence, notOpened } from './sentence.ts';
import { createSession, type SessionPorts } from './session.ts';
import { tap, type Tap } from './tap.ts';

/** As large as what is told of a bar can be. */
const drawn: BarView = {
  place: 13,
  comb: uuid(7),
  mark: 'K5',
  widthMm: 35,
  kind: 'comb',
  built: 1 / 3,
  shares: {
    honey: 1 / 7,
    nectar: 1 / 7,
    bread: 1 / 7,
    empty: 1 / 7,
    drone: 1 / 7,
    emerging: 1 / 7,
    sealed: 1 / 7,
    larva: 0,
    egg: 0,
  },
  ink: 'worked out',
  bees: 1 / 3,
  cells: { open: 1, sealed: 1, torn: 1, emerged: 1 },
  queenSeen: true,
  readOn: '2014-05-08',
  spot: { kind: 'place', hive: uuid(6), place: 13, facing: 'as built' },
};
const eighths = { brood8: 4, food8: 3 };
const expected: Expected = {
  lastTime: { day: '2014-05-08', ...eighths },
  today: eighths,
  surprise: 'no eggs now',
  outlines: { lastTime: drawn, today: drawn },
};

const third = { expected: 1 / 3, sd: 1 / 7 };
const foretold: BarsForetold = {
  days: 9,
  bars: Array.from({ length: 13 }, (_, i) => ({ place: i + 1, brood: { ...third, read: null }, food: { ...third, read: null } })),
};
const far: FarBar = {
  part: 'brood',
  surprise: {
    what: 'bar',
    place: 13,
    expected: { low: 1 / 3, likely: 8 / 3, high: 16 / 3 },
    seen: 1 / 3,
    z: -10 / 3,
    because: causes.map((cause) => ({ cause, chance: 1 / causes.length })),
  },
};

/** A tap as the thumb has it: which button; what the world adds to it comes when it is tapped. */
type Thumb = (draft: Draft, n: number) => Tap;

const plain =
  (by: Tap): Thumb =>
  () =>
    by;
const down: Thumb = (draft, n) => ({
  kind: 'down',
  entry: draft.bar?.entry ?? '',
  next: uuid(n),
  noteId: uuid(n + 1),
  stamp,
  words: { note: 'n', why: 'w' },
  expected,
  far,
});
const thumbs: fc.Arbitrary<Thumb> = fc.oneof(
  { weight: 4, arbitrary: fc.constant(down) },
  { weight: 1, arbitrary: fc.nat(4).map((brood8) => plain({ kind: 'as expected', brood8, food8: 4 })) },
  { weight: 3, arbitrary: fc.constantFrom(...combClasses).map((combClass) => plain({ kind: 'class', combClass })) },
  { weight: 2, arbitrary: fc.nat(8).map((eighths) => plain({ kind: 'brood', eighths })) },
  { weight: 2, arbitrary: fc.nat(8).map((eighths) => plain({ kind: 'food', eighths })) },
  fc.constantFrom(...lookedFor).map((eggs) => plain({ kind: 'eggs', eggs })),
  fc.constantFrom(...stages).map((stage) => plain({ kind: 'youngest', stage })),
  fc
    .tuple(fc.constantFrom('open', 'sealed', 'torn', 'emerged'), fc.constantFrom(1, -1))
    .map(([which, by]) => plain({ kind: 'cells', which, by } as Tap)),
  fc
    .tuple(fc.constantFrom(...winterTasks), fc.constantFrom('done' as const, 'not done' as const))
    .map(([task, answer]) => plain({ kind: 'winter', task, answer })),
  fc.constantFrom(...lookedFor).map((queen) => plain({ kind: 'queen', queen })),
  fc.constantFrom('free' as const, 'attached' as const, 'cut' as const).map((attached) => plain({ kind: 'attached', attached })),
  fc.constantFrom(...signs).map(({ code }) => plain({ kind: 'sign', code })),
  fc.string({ maxLength: 9 }).map((text) => plain({ kind: 'note', text })),
  fc.boolean().map((brushed) => plain({ kind: 'brushed always', brushed })),
  fc
    .constantFrom('given', 'taken', 'follower')
    .chain((what) => fc.constantFrom(1, -1).map((by) => plain({ kind: 'row', what, by } as Tap))),
  fc.constant<Thumb>((draft, n) => ({
    kind: 'not opened',
    entry: draft.bar?.entry ?? '',
    next: uuid(n),
    stamp,
    words: { why: 'w' },
  })),
  fc.nat(7).map((place): Thumb => (_draft, n) => ({ kind: 'go', place, next: uuid(n) })),
  fc.constant<Thumb>((draft, n) => ({
    kind: 'fell',
    place: draft.bar?.place ?? 1,
    id: uuid(n),
    what: 'brood',
    done: 'hung up again',
    stamp,
  })),
  {
    weight: 2,
    arbitrary: fc.constant<Thumb>((_draft, n) => ({ kind: 'undo', next: uuid(n), stamp, words: { why: 'w' } })),
  },
  fc.constantFrom('bars', 'row', 'colony', 'confirm').map(
    (phase): Thumb =>
      (_draft, n) =>
        ({ kind: 'phase', phase, next: uuid(n) }) as Tap,
  ),
);

function begun(): Draft {
  return beginDraft(beginningOf({ brushed: null, foretold }));
}

const run = (row: readonly Thumb[]) =>
  row.reduce<Draft>((draft, thumb, index) => tap(draft, thumb(draft, 100 + index * 2)), begun());
const options = { numRuns: 400, seed: 20140516 };

test('V11 the page closed after any tap and opened again goes on with the same draft', async () => {
  await fc.assert(
    fc.asyncProperty(fc.array(thumbs, { maxLength: 30 }), fc.nat(30), async (row, cut) => {
      const world = memoryWorld();
      let session = await opened(world.ports);
      await session.begin({ ...begun(), entry: uuid(2), combs: [] });
      for (const [index, thumb] of row.entries()) {
        if (index === cut) session = await opened(world.ports);
        const { draft } = open(session);
        await session.tap(thumb(draft, 100 + index * 2));
      }
      const whole = row.reduce<Draft>(
        (draft, thumb, index) => ({ ...tap(draft, thumb(draft, 100 + index * 2)), outbox: [] }),
        begun(),
      );
      const resumed = open(await opened(world.ports)).draft;
      assert.deepEqual({ ...resumed, outbox: [] }, structuredClone(whole));
      assert.deepEqual(new Set(world.journal.keys()), new Set(allWritten(row)));
    }),
    { ...options, numRuns: 120 },
  );
});

test('V3 Down and Not opened twice are the same as once, and every entry is one that the journal understands', () => {
  fc.assert(
    fc.property(fc.array(thumbs, { maxLength: 40 }), (row) => {
      let draft = begun();
      for (const [index, thumb] of row.entries()) {
        const by = thumb(draft, 100 + index * 2);
        const next = tap(draft, by);
        if (by.kind === 'down' || by.kind === 'not opened') assert.deepEqual(tap(next, by), next);
        draft = next;
      }
      const sentence = closingSentence(draft, 'Alder', plainManner).slice(0, 600);
      const closed = tap(draft.bar?.touched === true ? { ...draft, bar: null } : draft, {
        kind: 'close',
        id: uuid(99),
        stamp,
        smokeMinutes: null,
        sentence,
      });
      for (const entry of closed.outbox) {
        envelopeSchema.parse(entry);
        if (entry.kind === 'reading') readingSchema.parse(entry.body);
        if (entry.kind === 'correction') readingSchema.parse((entry.body as { body: unknown }).body);
      }
      visitSchema.parse(closed.outbox.at(-1)?.body);
      assert.equal(new Set(closed.outbox.map((entry) => entry.id)).size, closed.outbox.length);
    }),
    options,
  );
});

test('V4 a bar is read in the draft exactly when the journal, with its corrections and voids, has a reading of it', () => {
  fc.assert(
    fc.property(fc.array(thumbs, { maxLength: 40 }), (row) => {
      const draft = run(row);
      const standing = fold(draft.outbox);
      assert.deepEqual([...standing.keys()].sort(), draft.read.map((each) => each.place).sort());
      for (const each of draft.read) assert.equal(standing.get(each.place), each.seen.brood8);
      for (const place of notOpened(draft)) assert.ok(!standing.has(place));
    }),
    options,
  );
});

test('V12 the draft stays small: under 24 kilobytes whatever is tapped on thirteen bars', () => {
  fc.assert(
    fc.property(fc.array(thumbs, { minLength: 60, maxLength: 120 }), (row) => {
      let draft: Draft = {
        ...begun(),
        bay: { from: 1, to: 13, follower: 'last' },
        places: Array.from({ length: 13 }, (_, i) => 13 - i),
      };
      for (const [index, thumb] of row.entries()) draft = { ...tap(draft, thumb(draft, 100 + index * 2)), outbox: [] };
      assert.ok(JSON.stringify(draft).length < 24_000);
      assert.notEqual(asDraft(JSON.parse(JSON.stringify(draft))), null);
    }),
    { ...options, numRuns: 60 },
  );
});

/** Readings that stand after corrections and voids, by place: what the room `journal` does, in small. */
function fold(entries: readonly Entry[]): ReadonlyMap<number, number | null> {
  const found = new Map<Id, { place: number; brood8: number | null }>();
  for (const entry of entries) {
    const body = (entry.kind === 'correction' ? (entry.body as { body: unknown }).body : entry.body) as {
      place: number;
      faces: { brood8: number | null }[];
    };
    if (entry.kind === 'void') found.delete(entry.corrects ?? '');
    if (entry.kind === 'reading' || entry.kind === 'correction') {
      found.set(entry.corrects ?? entry.id, { place: body.place, brood8: body.faces[0]?.brood8 ?? null });
    }
  }
  return new Map([...found.values()].map((each) => [each.place, each.brood8]));
}

function allWritten(row: readonly Thumb[]): readonly Id[] {
  let draft = begun();
  const ids: Id[] = [];
  for (const [index, thumb] of row.entries()) {
    draft = tap(draft, thumb(draft, 100 + index * 2));
    ids.push(...draft.outbox.map((entry) => entry.id));
    draft = { ...draft, outbox: [] };
  }
  return ids;
}

function memoryWorld(): { readonly ports: SessionPorts; readonly journal: Map<Id, Entry> } {
  const shelf = new Map<string, string>();
  const journal = new Map<Id, Entry>();
  return {
    journal,
    ports: {
      loadDraft: (key) => Promise.resolve(shelf.has(key) ? JSON.parse(shelf.get(key) ?? '') : undefined),
      saveDraft: (key, draft) => Promise.resolve(void shelf.set(key, JSON.stringify(draft))),
      deleteDraft: (key) => Promise.resolve(void shelf.delete(key)),
      painted: () => Promise.resolve(),
      append: (entries) => {
        for (const entry of entries) {
          assert.ok(
            !journal.has(entry.id) || JSON.stringify(journal.get(entry.id)) === JSON.stringify(entry),
            'one id, one content',
          );
          journal.set(entry.id, entry);
        }
        return Promise.resolve(null);
      },
    },
  };
}

async function opened(ports: SessionPorts) {
  const session = createSession(ports, 'visit');
  await session.again();
  return session;
}

function open(session: Awaited<ReturnType<typeof opened>>) {
  const state = session.state();
  assert.ok(state.phase === 'open', `an open visit, not ${state.phase}`);
  return state;
}
