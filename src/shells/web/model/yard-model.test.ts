/** Promises of the model behind the screens, held with a store in memory and an engine that answers when it is told to. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { Picture } from '../../../apiary.ts';
import type { Entry } from '../../../journal/entry.ts';
import { memoryYardStore } from './memory-yard-store.ts';
import { newId } from './notes.ts';
import type { Shown } from './shown.ts';
import { createYardModel, demoToday } from './yard-model.ts';
import { type Around, noAside, noRoundDay } from './yard-state.ts';
import type { YardStore } from './yard-store.ts';

const now = new Date('2026-05-03T09:30:00Z');

function shownOf(entries: readonly Entry[], day: string): Shown {
  const picture = { day, yard: null, round: [], colonies: [], advice: [], hives: [], away: [], faults: [], conflicts: [] };
  return {
    picture: { ...picture, weather: null, notUnderstood: entries.length } as Picture,
    aside: noAside,
    roundDay: noRoundDay,
  };
}

interface World {
  readonly around: Around;
  readonly store: YardStore;
  /** Pictures asked for, by the number of entries they were made of. */
  readonly asked: { readonly entries: number; readonly day: string }[];
  readonly observers: Map<string, string>;
}

function world(part: Partial<Around> = {}): World {
  const store = memoryYardStore();
  const asked: { entries: number; day: string }[] = [];
  const observers = new Map<string, string>();
  const around: Around = {
    openStore: () => Promise.resolve({ store, trouble: [] }),
    painted: () => Promise.resolve(),
    prepare: () => undefined,
    foresee: () => Promise.resolve(null),
    computePicture: (entries, day) => {
      asked.push({ entries: entries.length, day });
      return Promise.resolve(shownOf(entries, day));
    },
    issuedFor: (colony) => Promise.resolve({ advice: { colony, kind: 'advice' }, forecast: { colony, kind: 'forecast' } }),
    demoEntries: () => Promise.resolve([]),
    now: () => now,
    observerOf: (book) => observers.get(book) ?? null,
    keepObserver: (book, observer) => void observers.set(book, observer),
    yardOf: () => '018f0000-0000-7000-8000-000000000001',
    ...part,
  };
  return { around, store, asked, observers };
}

const settled = () => new Promise((done) => setTimeout(done, 150));
const note = (text: string) => ({ kind: 'note', body: { about: null, text } });

test('R1 the picture of the last time is shown before the journal has been read', async () => {
  let read: () => void = () => undefined;
  const { around, store } = world();
  await store.snapshots.put('shown', shownOf([], '2026-04-30'));
  const slow = {
    ...store,
    journal: {
      ...store.journal,
      read: async (cursor: number, limit: number) => {
        await new Promise<void>((done) => {
          read = done;
        });
        return store.journal.read(cursor, limit);
      },
    },
  };
  const model = createYardModel({ ...around, openStore: () => Promise.resolve({ store: slow, trouble: [] }) });
  const opened = model.openBook('own');
  await settled();
  assert.equal(model.state().picture?.day, '2026-04-30');
  assert.equal(model.state().phase, 'reading');
  read();
  await opened;
  assert.equal(model.state().picture?.day, '2026-05-03');
  assert.equal(model.state().phase, 'ready');
});

test('R2 append answers when the entries are in the store, enveloped by this device, and many make one picture', async () => {
  const { around, store, asked } = world();
  const model = createYardModel(around);
  await model.openBook('own');
  asked.length = 0;
  for (const text of ['one', 'two', 'three']) {
    const kept = await model.append([note(text)]);
    assert.ok(kept.ok);
  }
  assert.equal(await store.journal.count(), 3);
  const [entry] = (await store.journal.read(0, 10)).rows;
  assert.equal(entry?.entry.by, model.state().observer);
  assert.equal(entry?.entry.yard, '018f0000-0000-7000-8000-000000000001');
  assert.equal(entry?.entry.noted, '2026-05-03T09:30:00Z');
  await settled();
  assert.deepEqual(asked, [{ entries: 3, day: '2026-05-03' }]);
});

test('R2 what the store refuses is not shown as kept', async () => {
  const { around } = world();
  const model = createYardModel(around);
  await model.openBook('own');
  const id = newId();
  assert.ok((await model.append([{ ...note('one'), id }])).ok);
  const refused = await model.append([{ ...note('other words'), id }, note('beside it')]);
  assert.ok(!refused.ok && refused.issues[0]?.code === 'duplicate-id');
  assert.equal(model.state().entries.length, 1);
});

test('R3 no picture is made while a screen holds it, and one is made when the last lets go', async () => {
  const { around, asked } = world();
  const model = createYardModel(around);
  await model.openBook('own');
  asked.length = 0;
  const [letGo, letGoToo] = [model.holdPicture(), model.holdPicture()];
  await model.append([note('during a visit')]);
  letGo();
  await settled();
  assert.equal(asked.length, 0);
  letGoToo();
  await settled();
  assert.equal(asked.length, 1);
});

test('R4 the demo has a today of its own, is shown before it is stored, and keeps the day it was turned to', async () => {
  const entries = Array.from({ length: 250 }, (_, n): Entry => ({
    id: newId(),
    yard: newId(),
    at: demoToday,
    noted: '2014-05-16T12:00:00Z',
    by: newId(),
    kind: 'note',
    version: 1,
    body: { about: null, text: String(n) },
  }));
  const { around, store, asked } = world({ demoEntries: () => Promise.resolve(entries) });
  let stored = -1;
  const model = createYardModel({
    ...around,
    computePicture: async (list, day, told) => {
      stored = await store.journal.count();
      return around.computePicture(list, day, told);
    },
  });
  await model.openBook('demo');
  assert.deepEqual(asked[0], { entries: 250, day: '2014-05-16' });
  assert.equal(stored, 0);
  await settled();
  assert.equal(await store.journal.count(), 250);
  model.turnTo('2014-05-20');
  await settled();
  const again = createYardModel(around);
  await again.openBook('demo');
  assert.equal(again.state().today, '2014-05-20');
  assert.equal(again.state().entries.length, 250);
});

test('R5 a visit that is closed here leaves its advice and forecast in the journal, once', async () => {
  const { around } = world();
  const model = createYardModel(around);
  await model.openBook('own');
  await model.append([{ kind: 'visit', body: { colony: 'a-colony' } }]);
  await settled();
  await settled();
  assert.deepEqual(
    model.state().entries.map((entry) => entry.kind),
    ['visit', 'advice-issued', 'forecast-issued'],
  );
});

test('R6 a device that nobody was named for becomes the keeper’s', async () => {
  const keeper = newId();
  const { around, observers } = world();
  const observer = { id: keeper, name: 'The keeper', role: 'keeper' } as const;
  const model = createYardModel({
    ...around,
    computePicture: (entries, day) => {
      const shown = shownOf(entries, day);
      return Promise.resolve({
        ...shown,
        aside: { ...noAside, observers: [{ ...observer, id: newId(), role: 'helper' }, observer] },
      });
    },
  });
  await model.openBook('own');
  assert.equal(model.state().observer, keeper);
  assert.equal(observers.get('own'), keeper);
});

test('R7 an entry that came by another way as well is shown once', async () => {
  const { around, store } = world();
  const model = createYardModel(around);
  await model.openBook('own');
  await model.append([note('here')]);
  const [mine] = model.state().entries;
  assert.ok(mine);
  await store.journal.append([{ ...mine, id: newId() }]);
  await model.refresh();
  await model.refresh();
  assert.equal(model.state().entries.length, 2);
});

test('R8 news of the server is shown: what waits, what it refuses, and that it wants the pairing code', async () => {
  let tell: Parameters<Around['openStore']>[1] = () => undefined;
  const { around, store } = world();
  const model = createYardModel({
    ...around,
    openStore: (_book, onServer) => {
      tell = onServer;
      return Promise.resolve({ store, trouble: [] });
    },
  });
  await model.openBook('own');
  const error = { code: 'not-paired', path: '', found: '', expected: '' };
  tell({ pending: 3, error, refused: [{ ...error, code: 'too-new' }], pulled: 0 });
  assert.deepEqual([model.state().unsent, model.state().pairing, model.state().refused.length], [3, true, 1]);
  await store.journal.append([
    {
      id: newId(),
      yard: newId(),
      at: '2026-05-01',
      noted: '2026-05-01T10:00:00Z',
      by: newId(),
      kind: 'note',
      version: 1,
      body: { about: null, text: 'from another device' },
    },
  ]);
  tell({ pending: 0, error: null, refused: [], pulled: 1 });
  await settled();
  assert.equal(model.state().entries.length, 1);
  assert.equal(model.state().pairing, false);
});
