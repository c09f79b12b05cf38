/**
 * The Ferry Road yard from January to 16 May 2014: a winter loss, a queen who fails and is lost, feeding,
 * the first visits, a swarm hived on bare bars, a swarm that leaves, and where each colony stands today.
 */
import { closeUp, hiveSwarm, loseQueen } from './acts.ts';
import { chanceOf } from './chance.ts';
import { combBrood, combFood } from './comb.ts';
import { type Fate, goTo, type Plan } from './go.ts';
import { placing } from './keeper.ts';
import { row } from './society.ts';
import { at, around, chargeOf, feed, lookFromOutside, takeCharge, writeBay, writeNote, writeReign, type Yard } from './yard.ts';

const usual = (name: string, day: string, hour: number, minute: number, more: Partial<Plan> = {}): Fate => ({
  day,
  does: (yard) => void goTo(yard, name, { kind: 'usual', clock: at(day, hour, minute), ...more }),
});
const first = (name: string, day: string, hour: number, minute: number, more: Partial<Plan> = {}): Fate =>
  usual(name, day, hour, minute, { kind: 'first of the year', fine: true, ...more });

export const fates2014: readonly Fate[] = [
  { day: '2014-01-11', does: (yard) => winterLooks(yard, '2014-01-11') },
  { day: '2014-01-11', does: (yard) => feed(yard, 'Willow', at('2014-01-11', 14), 'candy', 1, 'kg') },
  { day: '2014-02-22', does: (yard) => winterLooks(yard, '2014-02-22') },
  { day: '2014-03-06', does: birchFails },
  { day: '2014-03-15', does: foundDead },
  { day: '2014-03-15', does: (yard) => feed(yard, 'Willow', at('2014-03-15', 15), 'candy', 0.8, 'kg') },
  { day: '2014-03-15', does: (yard) => feed(yard, 'Linden back', at('2014-03-15', 15, 10), 'candy', 2, 'kg') },
  ...['2014-04-13', '2014-04-20', '2014-04-29'].map((day): Fate => ({
    day,
    does: (yard) => feed(yard, 'Linden back', at(day, 18, 10), 'sugar syrup', 3, 'l'),
  })),
  { day: '2014-03-30', does: (yard) => loseQueen(yard.world, chargeOf(yard, 'Birch').society) },
  { day: '2014-04-05', does: (yard) => winterLooks(yard, '2014-04-05') },
  { day: '2014-04-09', does: aldersOldCombs },
  first('Birch', '2014-04-11', 12, 30, { hiveSigns: ['droppings inside'] }),
  first('Hazel', '2014-04-11', 13, 40),
  first('Linden', '2014-04-12', 12, 0),
  { day: '2014-03-01', does: (yard) => patchyBrood(yard, 'Linden back') },
  first('Linden back', '2014-04-12', 13, 10),
  first('Willow', '2014-04-12', 14, 0),
  ...['2014-04-13', '2014-04-23', '2014-04-30'].map((day): Fate => ({
    day,
    does: (yard) => feed(yard, 'Alder', at(day, 18, 20), 'sugar syrup', 4, 'l'),
  })),
  { day: '2014-05-11', does: (yard) => feed(yard, 'Linden back', at('2014-05-11', 18), 'sugar syrup', 3, 'l') },
  {
    day: '2014-04-16',
    does: (yard) => lookFromOutside(yard, 'Birch', at('2014-04-16', 17), 'none', false, [], yard.people.helper),
  },
  { day: '2014-04-18', does: loseVirgin },
  ...['2014-04-16', '2014-04-21', '2014-04-26'].map((day): Fate => ({
    day,
    does: (yard) => feed(yard, 'Willow', at(day, 18), 'sugar syrup', 2, 'l'),
  })),
  usual('Alder', '2014-04-22', 12, 0, { room: 'none' }),
  usual('Linden', '2014-04-22', 13, 5, { shut: [1, 2] }),
  usual('Hazel', '2014-04-22', 14, 0),
  usual('Linden back', '2014-04-28', 12, 0, { count: true }),
  usual('Willow', '2014-04-28', 13, 0, { room: 'none' }),
  { day: '2014-04-29', does: (yard) => void (chargeOf(yard, 'Hazel').society.preparing = 6) },
  { day: '2014-05-03', does: birchIsQueenless },
  { day: '2014-05-03', does: aldersTwoReaders },
  usual('Hazel', '2014-05-05', 12, 0, { brushed: true, room: 'none' }),
  usual('Linden', '2014-05-05', 13, 15, {}),
  { day: '2014-05-07', does: rowanHived },
  ...['2014-05-09', '2014-05-10', '2014-05-11', '2014-05-12'].map((day): Fate => ({ day, does: hazelSwarmsAgain })),
  usual('Birch', '2014-05-11', 11, 0, { room: 'none' }),
  usual('Linden back', '2014-05-11', 12, 30, { count: true, signs: [{ place: 17, code: 'crumpled wings' }] }),
  {
    day: '2014-05-12',
    does: (yard) => void goTo(yard, 'Rowan', { kind: 'glance', clock: at('2014-05-12', 17, 30), straight: 'straight' }),
  },
  usual('Hazel', '2014-05-13', 12, 0, { kind: 'after a swarm', brushed: true, room: 'none' }),
  usual('Alder', '2014-05-15', 10, 30, { room: 'none', fine: true, count: true }),
  usual('Linden', '2014-05-14', 13, 40, { room: 'none' }),
  {
    day: '2014-05-15',
    does: (yard) => lookFromOutside(yard, 'Willow', at('2014-05-15', 18), 'few', true, [], yard.people.helper),
  },
];

function winterLooks(yard: Yard, day: string): void {
  for (const [i, name] of [...yard.charges.keys()].entries()) {
    if (chargeOf(yard, name).society.alive)
      lookFromOutside(
        yard,
        name,
        at(day, 13, 3 * i),
        day > '2014-02-01' && day !== '2014-02-22' ? 'few' : 'none',
        day > '2014-04-01',
      );
  }
}

/** The queen of 2011 is spent: fewer eggs, and many of them drones. */
function birchFails(yard: Yard): void {
  const queen = chargeOf(yard, 'Birch').society.queen;
  if (queen === null) return;
  queen.vigour = 0.35;
  queen.drones = 0.35;
}

/** Many of her eggs cannot live: her mates were too much her kin. */
function patchyBrood(yard: Yard, name: string): void {
  const queen = chargeOf(yard, name).society.queen;
  if (queen !== null) queen.sound = 0.66;
}

function loseVirgin(yard: Yard): void {
  const society = chargeOf(yard, 'Birch').society;
  if (society.queen?.mated === null) society.queen = null;
  for (const cell of society.cells) if (cell.fate === 'growing') cell.fate = 'torn';
  society.orphaned = 9;
}

function foundDead(yard: Yard): void {
  const day = '2014-03-15';
  const charge = chargeOf(yard, 'Hazel swarm');
  if (charge.society.alive) throw new Error('the swarm of Hazel was to die in winter');
  const clock = at(day, 14);
  lookFromOutside(yard, 'Hazel swarm', at(day, 13, 40), 'none', false, ['many dead bees']);
  yard.scribe.write('colony-ended', clock, yard.people.keeper.id, {
    colony: yard.scribe.id('colony|Hazel swarm'),
    how: 'died in winter',
    window: { earliest: '2014-01-12', latest: day },
  });
  let minute = clock.minute + 5;
  for (const comb of charge.society.combs) {
    if (charge.known.has(comb.id)) {
      yard.scribe.write('placing', { day, minute }, yard.people.keeper.id, {
        comb: yard.scribe.id(`comb|${comb.id}`),
        to: { kind: 'away', where: 'freezer' },
      });
    }
    minute += 1;
  }
  writeNote(
    yard,
    at(day, 20),
    'Rowan is empty: a fist of bees, dead between bare combs, a little honey two bars away. The combs are in the freezer.',
    'Hazel swarm',
  );
}

/** The first visit of the year; old combs that stand empty behind the brood go to the melter, and the rest moves up. */
function aldersOldCombs(yard: Yard): void {
  const day = '2014-04-09';
  const charge = chargeOf(yard, 'Alder');
  const done = goTo(yard, 'Alder', { kind: 'first of the year', clock: at(day, 13), fine: true, room: 'none' });
  const society = charge.society;
  const behind = row(society)
    .slice(6)
    .sort((a, b) => combBrood(a) * 9 + combFood(a) - combBrood(b) * 9 - combFood(b));
  const old = behind
    .slice(0, 6)
    .filter((comb) => combBrood(comb) === 0)
    .sort((a, b) => a.place - b.place);
  society.combs = society.combs.filter((comb) => !old.includes(comb));
  let minute = done.end.minute + 2;
  for (const comb of old) {
    yard.scribe.write('placing', { day, minute }, yard.people.keeper.id, {
      comb: yard.scribe.id(`comb|${comb.id}`),
      to: { kind: 'away', where: 'melted' },
    });
  }
  minute += 1;
  for (const { comb } of closeUp(society)) placing(yard.scribe, charge, comb, { day, minute }, yard.people.keeper.id);
  society.to = society.from + society.combs.length - 1;
  writeBay(yard, charge, { day, minute: minute + 1 });
  writeNote(
    yard,
    at(day, 20),
    `${old.length} old black combs of Alder, empty since winter, are for the melter. The rest was pushed together.`,
    'Alder',
  );
}

function birchIsQueenless(yard: Yard): void {
  const day = '2014-05-03';
  const done = goTo(yard, 'Birch', { kind: 'usual', clock: at(day, 11, 30), room: 'none', brushed: true });
  const window = { earliest: '2014-03-25', latest: '2014-04-05' };
  writeReign(yard, 'Birch', 'Birch 2011', { day, minute: done.end.minute + 4 }, { kind: 'ended', how: 'lost', window });
}

function aldersTwoReaders(yard: Yard): void {
  goTo(yard, 'Alder', {
    kind: 'usual',
    clock: at('2014-05-03', 12, 40),
    room: 'none',
    second: { by: yard.people.helper, places: [3, 5, 7] },
  });
}

function rowanHived(yard: Yard): void {
  const day = '2014-05-07';
  const { scribe, people } = yard;
  scribe.write('swarm', at(day, 12, 50), people.helper.id, {
    what: 'seen',
    from: null,
    window: around(day, 0),
    child: null,
    childName: null,
    into: null,
  });
  const society = hiveSwarm(yard.world, 'rowan', 1, 7, 13000, 330, chanceOf(yard.seed, 'rowan'));
  society.temper = 0.18;
  const charge = takeCharge(yard, 'Rowan', society, 'Rowan', 22);
  charge.lastRead = day;
  const clock = at(day, 17, 30);
  writeBay(yard, charge, clock);
  scribe.write('swarm', clock, people.keeper.id, {
    what: 'hived',
    from: null,
    window: around(day, 0),
    child: scribe.id('colony|Rowan'),
    childName: 'Rowan',
    into: { hive: scribe.id('hive|Rowan'), bay: scribe.id(charge.bay), bars: 7 },
  });
  feed(yard, 'Rowan', at(day, 19), 'sugar syrup', 2, 'l');
}

function hazelSwarmsAgain(yard: Yard, day: string): void {
  if (!yard.world.happened.some((one) => one.society === 'hazel' && one.what === 'swarm left' && one.day === day)) return;
  const clock = at(day, 12, 40);
  yard.scribe.write('swarm', clock, yard.people.helper.id, {
    what: 'left',
    from: yard.scribe.id('colony|Hazel'),
    window: around(day, 0),
    child: null,
    childName: null,
    into: null,
  });
  writeReign(
    yard,
    'Hazel',
    'Hazel 2013',
    { day, minute: clock.minute + 5 },
    { kind: 'ended', how: 'left with a swarm', window: around(day, 0) },
  );
  writeNote(
    yard,
    at(day, 20, 30),
    'Ines saw Hazel go up into the plane tree at a quarter to one and over the railway an hour later. Not caught.',
    'Hazel',
  );
}
