/** Small things that go wrong at Ferry Road in 2013, and are put right: written down by hand, the bees live on as before. */
import { nothingAnswered } from '../../src/colony/visit.ts';
import type { Fate } from './go.ts';
import { row } from './society.ts';
import { at, chargeOf, lookFromOutside, writeWeather, type Yard } from './yard.ts';

export const mishaps2013: readonly Fate[] = [
  { day: '2013-06-29', does: (yard) => threeBareBars(yard, 'Birch', '2013-06-29') },
  { day: '2013-07-02', does: (yard) => grownTogether(yard, 'Birch', '2013-07-02', '2013-07-06') },
  { day: '2013-07-16', does: (yard) => nucleusSettled(yard, '2013-07-16') },
  { day: '2013-09-02', does: (yard) => nucleusRead(yard, '2013-09-02', 3) },
  { day: '2013-09-13', does: (yard) => beeEscape(yard, 'Willow', '2013-09-13', 'set') },
  { day: '2013-09-15', does: (yard) => beeEscape(yard, 'Willow', '2013-09-15', 'taken out') },
  { day: '2013-09-22', does: (yard) => nucleusRead(yard, '2013-09-22', 2) },
  { day: '2013-09-28', does: (yard) => nucleusGiven(yard, '2013-09-28') },
  { day: '2013-09-16', does: (yard) => lookFromOutside(yard, 'Willow', at('2013-09-16', 15), 'many', null, ['robbing']) },
];

/** A helper means well. */
function threeBareBars(yard: Yard, name: string, day: string): void {
  const { society } = chargeOf(yard, name);
  for (let i = 1; i <= 3; i += 1) {
    yard.scribe.write('move', { day, minute: 1100 + i }, yard.people.helper.id, {
      hive: yard.scribe.id(`hive|${name}`),
      visit: null,
      outward: 'last',
      move: { do: 'put', place: society.to + i, what: { kind: 'bare' }, room: 'free' },
    });
  }
}

/** Two combs behind the outermost ones, cut apart four days later. */
function grownTogether(yard: Yard, name: string, day: string, parted: string): void {
  const { scribe, people } = yard;
  const hive = scribe.id(`hive|${name}`);
  const places = row(chargeOf(yard, name).society)
    .map(({ place }) => place)
    .sort((a, b) => a - b)
    .slice(-5, -3);
  const bars = places.map((place) => ({ place, comb: scribe.id(`joined|${name}|${place}`) }));
  const body = { hive, visit: null, how: 'wax between', bars } as const;
  const joined = scribe.write('combs-joined', { day, minute: 1110 }, people.keeper.id, body);
  scribe.write('combs-parted', { day: parted, minute: 540 }, people.keeper.id, {
    hive,
    visit: null,
    joined: joined.id,
    places,
    stopped: null,
  });
}

/** Before the honey at the far end is taken. */
function beeEscape(yard: Yard, name: string, day: string, what: 'set' | 'taken out'): void {
  const [colony, hive] = [yard.scribe.id(`colony|${name}`), yard.scribe.id(`hive|${name}`)];
  const after = what === 'set' ? 9 : null;
  yard.scribe.write('bee-escape', { day, minute: 1080 }, yard.people.keeper.id, { colony, hive, visit: null, what, after });
}

/** A nucleus at the far end of Hazel's trough that does not get on: it lives in the journal only. */
const nucleus = { name: 'Hazel back', hive: 'Hazel', from: 22, to: 26 } as const;

function nucleusSettled({ scribe, people }: Yard, day: string): void {
  const [hive, bay] = [scribe.id(`hive|${nucleus.hive}`), scribe.id(`bay|${nucleus.name}`)];
  const clock = { day, minute: 1080 };
  scribe.write('bay', clock, people.keeper.id, { bay, hive, from: nucleus.from, to: nucleus.to });
  scribe.write('colony', { day, minute: 1081 }, people.keeper.id, {
    colony: scribe.id(`colony|${nucleus.name}`),
    name: nucleus.name,
    origin: 'nucleus',
    parent: null,
    began: { earliest: day, latest: day },
    hive,
    bay,
  });
}

/** One comb with brood of the five, and bees on so many bars. */
function nucleusRead(yard: Yard, day: string, beesBars: number): void {
  const { scribe, people } = yard;
  writeWeather(yard, day);
  const [hive, visit] = [scribe.id(`hive|${nucleus.hive}`), scribe.id(`visit|${nucleus.name}|${day}`)];
  const read = [
    { brood8: 0, food8: 5, eggs: 'none seen' },
    { brood8: 3, food8: 3, eggs: 'seen' },
    { brood8: 0, food8: 2, eggs: 'none seen' },
    { brood8: 0, food8: 0, eggs: 'none seen' },
    { brood8: 0, food8: 0, eggs: 'none seen' },
  ] as const;
  for (const [i, { brood8, food8, eggs }] of read.entries())
    scribe.write('reading', { day, minute: 1040 + 2 * i }, people.keeper.id, {
      visit,
      hive,
      place: nucleus.from + i,
      combClass: null,
      faces: [{ face: 'both', brood8, food8 }],
      built8: i < 3 ? 7 : 4,
      eggs,
      youngest: eggs === 'seen' ? 'egg' : null,
      cells: null,
      cellsLooked: 'none seen',
      queen: 'not looked',
      brushed: false,
      signs: [],
      method: 'eighths',
      light: 'sun',
    });
  scribe.write('visit', { day, minute: 1055 }, people.keeper.id, {
    ...nothingAnswered(),
    visit,
    colony: scribe.id(`colony|${nucleus.name}`),
    hive,
    visitKind: 'usual',
    began: `${day}T17:18`,
    ended: `${day}T17:35`,
    order: 'from the follower',
    beesBars,
    temper: 'calm',
    sentence: `${nucleus.name}: one comb with brood, eggs in it. Slow.`,
  });
}

function nucleusGiven({ scribe, people }: Yard, day: string): void {
  scribe.write('colony-ended', { day, minute: 1100 }, people.keeper.id, {
    colony: scribe.id(`colony|${nucleus.name}`),
    how: 'sold',
    window: { earliest: day, latest: day },
  });
}
