/**
 * What befalls the Ferry Road yard in 2013 beside the usual round: a split, a swarm, a queen replaced
 * for temper, a queen lost, a sign that means stop, a class with a learner, slips of the thumb, autumn.
 */
import type { Reading } from '../../src/colony/reading.ts';
import { type Fate, goTo } from './go.ts';
import { mishaps2013 } from './mishaps-2013.ts';
import {
  calmer,
  hazelPrepares,
  hazelSwarms,
  introduceLindensQueen,
  newQueenFound,
  removeLindensQueen,
  splitAlder,
  willowHasNoEggs,
  willowLosesHerQueen,
} from './queens-2013.ts';
import { at, chargeOf, feed, lookFromOutside, writeNote, type Yard } from './yard.ts';

/** While a virgin or a new queen is about, the keeper leaves the hive shut. */
export const keptShut = [
  { name: 'Linden back', from: '2013-06-01', to: '2013-06-29' },
  { name: 'Hazel', from: '2013-06-05', to: '2013-06-23' },
  { name: 'Hazel swarm', from: '2013-05-31', to: '2013-06-10' },
  { name: 'Linden', from: '2013-07-09', to: '2013-07-19' },
  { name: 'Willow', from: '2013-07-25', to: '2013-08-13' },
  { name: 'Birch', from: '2013-08-29', to: '2013-09-04' },
] as const;

export const fates2013: readonly Fate[] = [
  { day: '2013-05-20', does: splitAlder },
  {
    day: '2013-05-29',
    does: (yard) => void goTo(yard, 'Linden back', { kind: 'usual', clock: at('2013-05-29', 12), room: 'none' }),
  },
  {
    day: '2013-06-30',
    does: (yard) => newQueenFound(yard, 'Linden back', 'Linden back 2013', '2013-06-30', ['2013-06-02', '2013-06-06'], null),
  },
  { day: '2013-05-22', does: hazelPrepares },
  {
    day: '2013-05-29',
    does: (yard) => void goTo(yard, 'Hazel', { kind: 'usual', clock: at('2013-05-29', 13, 10), room: 'none' }),
  },
  { day: '2013-05-31', does: hazelSwarms },
  { day: '2013-06-01', does: hazelSwarms },
  { day: '2013-06-02', does: hazelSwarms },
  {
    day: '2013-06-04',
    does: (yard) => void goTo(yard, 'Hazel', { kind: 'after a swarm', clock: at('2013-06-04', 12), brushed: true, room: 'none' }),
  },
  {
    day: '2013-06-05',
    does: (yard) => void goTo(yard, 'Hazel swarm', { kind: 'glance', clock: at('2013-06-05', 17), straight: 'straight' }),
  },
  {
    day: '2013-06-24',
    does: (yard) => newQueenFound(yard, 'Hazel', 'Hazel 2013', '2013-06-24', ['2013-06-05', '2013-06-09'], 'red'),
  },
  { day: '2013-06-15', does: (yard) => measure(yard, 'cells along 10 cm', 19.2, 'cells', 'Alder') },
  { day: '2013-06-29', does: classAtAlder },
  { day: '2013-07-08', does: removeLindensQueen },
  { day: '2013-07-10', does: introduceLindensQueen },
  {
    day: '2013-07-20',
    does: (yard) => void goTo(yard, 'Linden', { kind: 'usual', clock: at('2013-07-20', 10), fine: true }),
  },
  ...['2013-08-10', '2013-08-17', '2013-08-24', '2013-08-31', '2013-09-07'].map((day): Fate => ({
    day,
    does: (yard) => calmer(yard, 'Linden'),
  })),
  { day: '2013-07-13', does: willowLosesHerQueen },
  { day: '2013-07-22', does: willowHasNoEggs },
  {
    day: '2013-08-14',
    does: (yard) => newQueenFound(yard, 'Willow', 'Willow 2013', '2013-08-14', ['2013-07-24', '2013-07-29'], null),
  },
  { day: '2013-08-28', does: stopAtBirch },
  {
    day: '2013-09-03',
    does: (yard) =>
      writeNote(
        yard,
        at('2013-09-03', 20),
        'The inspector came on 2 September, saw every brood comb and took a sample: nothing to report. It may be opened again.',
        'Birch',
      ),
  },
  {
    day: '2013-09-05',
    does: (yard) => void goTo(yard, 'Birch', { kind: 'usual', clock: at('2013-09-05', 12), fine: true }),
  },
  { day: '2013-09-08', does: (yard) => measure(yard, 'honey comb weight', 2.4, 'kg', null) },
  ...['2013-09-10', '2013-09-17', '2013-09-24', '2013-10-01'].map((day): Fate => ({
    day,
    does: (yard) => feed(yard, 'Linden back', at(day, 18, 30), 'sugar syrup', 4, 'l'),
  })),
  ...mishaps2013,
  {
    day: '2013-09-15',
    does: (yard) =>
      void goTo(yard, 'Willow', {
        kind: 'usual',
        clock: at('2013-09-15', 14),
        harvest: 'much',
        says: 'Willow: honey taken from the far end, all but the last eight bars or so. It was a lot.',
      }),
  },
  { day: '2013-09-19', does: (yard) => feed(yard, 'Hazel swarm', at('2013-09-19', 18), 'sugar syrup', 2.5, 'l') },
  { day: '2013-09-19', does: typedTwice },
  { day: '2013-12-07', does: (yard) => looks(yard, '2013-12-07') },
  {
    day: '2013-12-12',
    does: (yard) => void ((yard.world.societies.get('hazel-swarm') ?? chargeOf(yard, 'Alder').society).ailing = 12),
  },
];

function measure(
  yard: Yard,
  what: 'cells along 10 cm' | 'honey comb weight',
  value: number,
  unit: string,
  hive: string | null,
): void {
  const day = what === 'honey comb weight' ? '2013-09-08' : '2013-06-15';
  yard.scribe.write('measurement', at(day, 18), yard.people.keeper.id, {
    what,
    typed: { value, unit },
    ...(hive === null ? {} : { hive: yard.scribe.id(`hive|${hive}`) }),
  });
}

/** A learner reads two bars beside the keeper; and the keeper's thumb swaps brood and food on one of them. */
function classAtAlder(yard: Yard): void {
  const day = '2013-06-29';
  const { scribe, people } = yard;
  scribe.write(
    'observer',
    at(day, 8, 30),
    people.keeper.id,
    { observer: people.learner.id, name: 'Tomas', role: 'learner' },
    { label: 'learner' },
  );
  const done = goTo(yard, 'Alder', {
    kind: 'usual',
    clock: at(day, 10),
    fine: true,
    second: { by: people.learner, places: [4, 6] },
    harvest: 'ripe',
  });
  const target = done.readings.get(5);
  const index = scribe.entries.findIndex((entry) => entry.id === target);
  const entry = scribe.entries[index];
  if (entry === undefined) throw new Error('place 5 of Alder was read');
  const right = entry.body as Reading;
  const face = right.faces[0];
  if (face === undefined) throw new Error('both faces were read');
  const wrong: Reading = { ...right, faces: [{ face: 'both', brood8: face.food8, food8: face.brood8 }] };
  scribe.entries[index] = { ...entry, body: wrong };
  scribe.write(
    'correction',
    at(day, 20, 45),
    people.keeper.id,
    { body: right, why: 'Brood and food were swapped when typed.', knew: [] },
    { corrects: entry.id },
  );
}

function stopAtBirch(yard: Yard): void {
  const day = '2013-08-28';
  const society = chargeOf(yard, 'Birch').society;
  const shut = [];
  for (let place = society.from; place < 4; place += 1) shut.push(place);
  goTo(yard, 'Birch', {
    kind: 'usual',
    clock: at(day, 11),
    by: yard.people.helper,
    shut,
    room: 'none',
    signs: [{ place: 4, code: 'ropy brown thread' }],
    says: 'Birch: stopped at place 4, closed at once, nothing moved. Tools of this hive washed and kept here.',
  });
  writeNote(
    yard,
    at(day, 13, 30),
    'Rang the county apiary inspector about Birch. Comes on Monday. No combs, no bees and no tools leave the yard until then.',
    'Birch',
  );
}

function typedTwice(yard: Yard): void {
  const day = '2013-09-19';
  const entry = yard.scribe.write('feeding', at(day, 18, 5), yard.people.helper.id, {
    colony: yard.scribe.id('colony|Hazel swarm'),
    what: 'sugar syrup',
    amount: { value: 2.5, unit: 'l' },
  });
  yard.scribe.write(
    'void',
    at(day, 20, 10),
    yard.people.keeper.id,
    { why: 'The same feeding, typed on both phones.', knew: [] },
    { corrects: entry.id },
  );
}

function looks(yard: Yard, day: string): void {
  for (const [i, name] of [...yard.charges.keys()].entries()) {
    if (chargeOf(yard, name).society.alive) lookFromOutside(yard, name, at(day, 13, 3 * i), 'few', false);
  }
}
