/** What the session does when disk or journal do not do what they should. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { Entry } from '../../../journal/entry.ts';
import type { Issue } from '../../../numbers/result.ts';
import { asDraft } from './draft.ts';
import { beginningOf, stamp, uuid } from './for-tests.ts';
import { nothingExpected } from './ports.ts';
import { createSession, type Session, type SessionPorts } from './session.ts';
import type { Tap } from './tap.ts';

const beginning = beginningOf({ bay: { from: 1, to: 3, follower: 'last' } });
const brood: Tap = { kind: 'class', combClass: 'brood' };
const down: Tap = {
  kind: 'down',
  entry: uuid(2),
  next: uuid(10),
  noteId: uuid(11),
  stamp,
  words: {},
  expected: nothingExpected,
  far: null,
};

interface World {
  kept: string | null;
  readonly journal: Entry[];
  diskFull: boolean;
  /** Issues to answer with, or a page that dies before or after the journal had the entries. */
  append: readonly Issue[] | 'die before' | 'die after' | null;
}

function portsOf(world: World): SessionPorts {
  return {
    loadDraft: () => Promise.resolve(world.kept === null ? undefined : JSON.parse(world.kept)),
    saveDraft: (_key, draft) => {
      if (world.diskFull) return Promise.reject(new Error('full'));
      world.kept = JSON.stringify(draft);
      return Promise.resolve();
    },
    deleteDraft: () => Promise.resolve(void (world.kept = null)),
    painted: () => Promise.resolve(),
    append: (entries) => {
      if (world.append === 'die before') return new Promise(() => undefined);
      if (world.append !== null && world.append !== 'die after') return Promise.resolve(world.append);
      for (const entry of entries) {
        const known = world.journal.find((each) => each.id === entry.id);
        if (known === undefined) world.journal.push(entry);
        else assert.deepEqual(entry, known);
      }
      return world.append === 'die after' ? new Promise(() => undefined) : Promise.resolve(null);
    },
  };
}

function newWorld(): World {
  return { kept: null, journal: [], diskFull: false, append: null };
}

async function opened(world: World): Promise<Session> {
  const session = createSession(portsOf(world), 'visit');
  await session.again();
  return session;
}

function open(session: Session) {
  const state = session.state();
  assert.ok(state.phase === 'open', state.phase);
  return state;
}

for (const append of ['die before', 'die after'] as const) {
  test(`V11 a page closed in the middle of Down (${append} the journal has it) leaves one reading`, async () => {
    const world = { ...newWorld(), append } as World;
    const session = await opened(world);
    await session.begin(beginning);
    await session.tap(brood);
    void session.tap(down);
    await new Promise((resolve) => setTimeout(resolve, 5));
    world.append = null;
    const again = open(await opened(world));
    assert.deepEqual(
      world.journal.map((entry) => entry.kind),
      ['reading'],
    );
    assert.deepEqual([again.draft.outbox, again.draft.bar?.place], [[], 2]);
  });
}

test('V11 the screen hears of a tap only when it is on disk', async () => {
  const world = newWorld();
  const session = await opened(world);
  await session.begin(beginning);
  session.subscribe(() => assert.deepEqual(open(session).draft, asDraft(JSON.parse(world.kept ?? ''))));
  await session.tap(brood);
  assert.equal(open(session).draft.bar?.seen.brood8, 6);
});

test('V13 a tap that the device would not keep is not taken, and is said; the next one that is kept clears it', async () => {
  const world = newWorld();
  const session = await opened(world);
  await session.begin(beginning);
  world.diskFull = true;
  await session.tap(brood);
  assert.deepEqual([open(session).trouble?.kind, open(session).draft.bar?.touched], ['draft not kept', false]);
  world.diskFull = false;
  await session.tap(brood);
  assert.deepEqual([open(session).trouble, open(session).draft.bar?.touched], [null, true]);
});

test('V13 entries that the journal would not take wait in the draft and go in when it takes them', async () => {
  const world = newWorld();
  const session = await opened(world);
  await session.begin(beginning);
  await session.tap(brood);
  world.append = [{ code: 'store-full', path: 'journal', found: 'no room', expected: 'room' }];
  await session.tap(down);
  assert.deepEqual([open(session).trouble?.kind, open(session).draft.outbox.length, world.journal.length], ['not stored', 1, 0]);
  world.append = null;
  await session.again();
  assert.deepEqual([open(session).trouble, open(session).draft.outbox.length, world.journal.length], [null, 0, 1]);
});

test('V11 closing empties the shelf only when the journal has the visit', async () => {
  const world = newWorld();
  const session = await opened(world);
  await session.begin(beginning);
  const close: Tap = { kind: 'close', id: uuid(20), stamp, smokeMinutes: null, sentence: 's' };
  world.append = [{ code: 'store-full', path: 'journal', found: 'no room', expected: 'room' }];
  await session.tap(close);
  assert.notEqual(world.kept, null);
  assert.equal(open(session).draft.phase, 'done');
  world.append = null;
  await opened(world);
  assert.deepEqual([world.kept, world.journal.map((entry) => entry.kind)], [null, ['visit']]);
});

test('V14 what is tapped on a later day belongs to the day on which the hive was opened', async () => {
  const world = newWorld();
  const session = await opened(world);
  await session.begin(beginning);
  await session.tap(brood);
  const late = { noted: '2014-05-17T09:00:00Z', at: '2014-05-17T05:00' };
  await session.tap({ ...down, stamp: late });
  await session.tap({ kind: 'close', id: uuid(20), stamp: late, smokeMinutes: null, sentence: 's' });
  assert.deepEqual(
    world.journal.map((entry) => [entry.kind, entry.at]),
    [
      ['reading', stamp.at],
      ['visit', stamp.at],
    ],
  );
  assert.equal((world.journal[1]?.body as { ended: unknown }).ended, null);
});
