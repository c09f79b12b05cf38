/** Small things that go wrong at Ferry Road in 2013, and are put right: written down by hand, the bees live on as before. */
import type { Fate } from './go.ts';
import { row } from './society.ts';
import { at, chargeOf, lookFromOutside, type Yard } from './yard.ts';

export const mishaps2013: readonly Fate[] = [
  { day: '2013-06-29', does: (yard) => threeBareBars(yard, 'Birch', '2013-06-29') },
  { day: '2013-07-02', does: (yard) => grownTogether(yard, 'Birch', '2013-07-02', '2013-07-06') },
  { day: '2013-09-13', does: (yard) => beeEscape(yard, 'Willow', '2013-09-13', 'set') },
  { day: '2013-09-15', does: (yard) => beeEscape(yard, 'Willow', '2013-09-15', 'taken out') },
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
