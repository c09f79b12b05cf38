/** What a thumb gets that is quicker than the disk. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { Reading } from '../../../colony/reading.ts';
import type { ColonyView } from '../../../colony/view.ts';
import type { Entry } from '../../../journal/entry.ts';
import { beginningOf, stamp, uuid } from './for-tests.ts';
import { type Hand, handOf } from './hand.ts';
import { nothingExpected, type VisitPorts } from './ports.ts';
import { createSession } from './session.ts';

const beginning = beginningOf({ bay: { from: 1, to: 3, follower: 'last' }, foretold: { places: [] } as never });

interface Slow {
  readonly hand: Hand;
  /** Ends when every tap so far is on the slow disk. */
  readonly settled: () => Promise<void>;
  /** What the far bar was asked with, one for each bar put down. */
  readonly asked: (readonly Reading[])[];
  readonly journal: Entry[];
}

async function slowVisit(): Promise<Slow> {
  const asked: (readonly Reading[])[] = [];
  const journal: Entry[] = [];
  let ids = 100;
  const ports = {
    manner: { language: 'en', units: 'metric', hours: 24, today: '2014-05-16' },
    now: () => ({ ...stamp, ms: 0 }),
    newId: () => uuid((ids += 1)),
    loadDraft: () => Promise.resolve(undefined),
    saveDraft: () => new Promise<void>((resolve) => setTimeout(resolve, 5)),
    deleteDraft: () => Promise.resolve(),
    painted: () => Promise.resolve(),
    append: (entries) => {
      journal.push(...entries);
      return Promise.resolve(null);
    },
    expect: () => nothingExpected,
    far: (_foretold, _place, readings) => {
      asked.push(readings);
      return null;
    },
  } satisfies Partial<VisitPorts> as Partial<VisitPorts> as VisitPorts;
  const session = createSession(ports, 'visit');
  await session.begin(beginning);
  return { hand: handOf(ports, { name: 'Alder' } as ColonyView, session), settled: () => session.again(), asked, journal };
}

test('V11 Down tapped before the disk has the reading puts down that reading, and asks of that reading whether it is far', async () => {
  const { hand, settled, asked, journal } = await slowVisit();
  hand.tap({ kind: 'brood', eighths: 3 });
  hand.tap({ kind: 'food', eighths: 4 });
  hand.down();
  await settled();
  const said = asked.map((readings) => readings.map(({ place, faces }) => [place, faces[0]?.brood8, faces[0]?.food8]));
  assert.deepEqual(said, [[[3, 3, 4]]]);
  assert.deepEqual(
    journal.map(({ kind }) => kind),
    ['reading'],
  );
});

test('V11 Down tapped twice puts down one bar', async () => {
  const { hand, settled, journal } = await slowVisit();
  hand.tap({ kind: 'class', combClass: 'brood' });
  await settled();
  hand.down();
  hand.tap({ kind: 'class', combClass: 'brood' });
  hand.down();
  await settled();
  assert.equal(journal.filter(({ kind }) => kind === 'reading').length, 1);
});
