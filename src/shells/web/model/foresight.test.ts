/** Promises of how the model comes to the screens: after the picture, all at once, kept with the book, stale where touched. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { Picture } from '../../../apiary.ts';
import type { Foreseen, ForeseenColony, KeptColony } from '../../../apiary/foresee.ts';
import { madeUpForeseen } from '../../../colony/foreseen.contract.ts';
import type { ColonyView } from '../../../colony/view.ts';
import type { Entry } from '../../../journal/entry.ts';
import { memoryYardStore } from './memory-yard-store.ts';
import { newId } from './notes.ts';
import type { Shown } from './shown.ts';
import { createYardModel } from './yard-model.ts';
import { type Around, noAside, noRoundDay } from './yard-state.ts';
import type { YardStore } from './yard-store.ts';

const today = '2026-05-03';
const colonies = ['alder', 'birch'];

function shownOf(entries: readonly Entry[], day: string, told: readonly Foreseen[]): Shown {
  const views = colonies.map((colony) => {
    const foreseen = told.find((one) => one.colony === colony) ?? null;
    return { colony, day, ended: null, foreseen, film: [], bars: [], visits: [], events: [] } as unknown as ColonyView;
  });
  const picture = { day, yard: null, round: [], colonies: views, advice: [], hives: [], away: [], faults: [], conflicts: [] };
  return {
    picture: { ...picture, weather: null, notUnderstood: entries.length } as Picture,
    aside: noAside,
    roundDay: noRoundDay,
  };
}

interface World {
  readonly around: Around;
  readonly store: YardStore;
  /** Of each picture, the colonies of which the model had told. */
  readonly pictures: (readonly string[])[];
  /** Questions to the model: the colony, and the key of what was kept. */
  readonly asked: (readonly [string, string | null])[];
  readonly issued: (readonly [string, string | null])[];
}

function world(store = memoryYardStore(), answer?: Around['foresee']): World {
  const pictures: (readonly string[])[] = [];
  const asked: (readonly [string, string | null])[] = [];
  const issued: (readonly [string, string | null])[] = [];
  const around: Around = {
    openStore: () => Promise.resolve({ store, trouble: [] }),
    painted: () => Promise.resolve(),
    prepare: () => undefined,
    computePicture: (entries, day, told) => {
      pictures.push(told.map((one) => one.colony));
      return Promise.resolve(shownOf(entries, day, told));
    },
    foresee: async (entries, day, colony, kept) => {
      asked.push([colony, kept?.key ?? null]);
      return answer === undefined ? toldBy(entries, day, colony) : answer(entries, day, colony, kept);
    },
    issuedFor: (colony, _, foreseen) => {
      issued.push([colony, foreseen?.digest ?? null]);
      return Promise.resolve({ advice: {}, forecast: {} });
    },
    demoEntries: () => Promise.resolve([]),
    now: () => new Date(`${today}T09:30:00Z`),
    observerOf: () => 'the keeper',
    keepObserver: () => undefined,
    yardOf: () => newId(),
  };
  return { around, store, pictures, asked, issued };
}

function toldBy(entries: readonly Entry[], day: string, colony: string): ForeseenColony {
  const digest = `${colony} by ${entries.length}`;
  const kept = { key: digest, behind: [], surprises: [] } as unknown as KeptColony;
  return { foreseen: madeUpForeseen(colony, { day, digest }), kept, issues: [] };
}

const settled = () => new Promise((done) => setTimeout(done, 150));
const visit = (colony: string) => ({ kind: 'visit', body: { colony } });

test('E123 the picture stands before the model has spoken; when it has spoken of all there is one more, with all of it', async () => {
  const open: (() => void)[] = [];
  const { around, pictures } = world(memoryYardStore(), async (entries, day, colony) => {
    await new Promise<void>((done) => void open.push(done));
    return toldBy(entries, day, colony);
  });
  const model = createYardModel(around);
  await model.openBook('own');
  assert.equal(model.state().computing, false);
  assert.deepEqual(pictures, [[]]);
  await settled();
  open[0]?.();
  await settled();
  assert.equal(open.length, 2, 'one colony at a time');
  assert.deepEqual(pictures, [[]], 'nothing flickers meanwhile');
  open[1]?.();
  await settled();
  assert.deepEqual(pictures, [[], colonies]);
  assert.ok(model.state().picture?.colonies.every((view) => view.foreseen !== null));
});

test('E124 what was told is kept with the book and stands at once at the next opening, unless something was written since', async () => {
  const first = world();
  const model = createYardModel(first.around);
  await model.openBook('own');
  await settled();
  const again = world(first.store);
  await createYardModel(again.around).openBook('own');
  await settled();
  assert.deepEqual(again.pictures, [colonies]);
  assert.deepEqual(again.asked, []);
  const note = { id: newId(), yard: newId(), at: today, noted: `${today}T10:00:00Z`, by: newId(), kind: 'note', version: 1 };
  assert.ok((await first.store.journal.append([{ ...note, body: { about: null, text: 'from another tab' } }])).ok);
  const third = world(first.store);
  await createYardModel(third.around).openBook('own');
  await settled();
  assert.deepEqual(
    third.asked,
    colonies.map((colony) => [colony, `${colony} by 0`]),
  );
  assert.deepEqual(third.pictures, [[], colonies]);
});

test('E125 an entry makes stale what was told of the colony that it touches, and of no other; advice that is issued of none', async () => {
  const { around, pictures, asked, issued } = world();
  const model = createYardModel(around);
  await model.openBook('own');
  await settled();
  pictures.length = 0;
  asked.length = 0;
  await model.append([visit('birch')]);
  await settled();
  await settled();
  await settled();
  assert.deepEqual(pictures[0], ['alder']);
  assert.deepEqual(
    asked.map(([colony]) => colony),
    ['birch'],
  );
  assert.deepEqual([...(pictures.at(-1) ?? [])].sort(), colonies);
  assert.deepEqual(issued, [['birch', 'birch by 1']], 'the forecast is issued by the model');
  assert.deepEqual(
    model.state().entries.map((entry) => entry.kind),
    ['visit', 'advice-issued', 'forecast-issued'],
  );
});

test('E126 a model that stops leaves the picture as it is, and the plain forecast is issued', async () => {
  const { around, pictures, issued } = world(memoryYardStore(), () => Promise.reject(new Error('out of memory')));
  const model = createYardModel(around);
  await model.openBook('own');
  await model.append([visit('birch')]);
  await settled();
  await settled();
  assert.deepEqual(issued, [['birch', null]]);
  assert.ok(pictures.every((told) => told.length === 0));
  assert.notEqual(model.state().picture, null);
  assert.equal(model.state().trouble[0]?.code, 'engine-stopped');
});

test('E127 while a visit is on the screen neither is the model asked nor a picture made; both follow when it is left', async () => {
  const open: (() => void)[] = [];
  const { around, pictures, asked } = world(memoryYardStore(), async (entries, day, colony) => {
    await new Promise<void>((done) => void open.push(done));
    return toldBy(entries, day, colony);
  });
  const model = createYardModel(around);
  await model.openBook('own');
  await settled();
  const release = model.holdPicture();
  open[0]?.();
  await settled();
  assert.equal(asked.length, 1);
  assert.deepEqual(pictures, [[]]);
  release();
  await settled();
  open[1]?.();
  await settled();
  assert.deepEqual(
    asked.map(([colony]) => colony),
    colonies,
  );
  assert.deepEqual(pictures, [[], ['alder'], ['alder', 'birch']]);
});
