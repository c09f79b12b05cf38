/**
 * Queens of Ferry Road in 2013: the split of Alder, the swarm of Hazel, Linden's queen replaced for her
 * temper, and Willow's lost with a fallen comb. Each act is done to the world and written down.
 */
import { closeUp, hiveSwarm, introduce, loseQueen, splitOff } from './acts.ts';
import { chanceOf } from './chance.ts';
import { goTo } from './go.ts';
import { broodPlaces, placing } from './keeper.ts';
import { row } from './society.ts';
import { around, at, chargeOf, feed, takeCharge, writeBay, writeNote, writeQueen, writeReign, type Yard } from './yard.ts';

export function splitAlder(yard: Yard): void {
  const day = '2013-05-20';
  const alder = chargeOf(yard, 'Alder');
  const done = goTo(yard, 'Alder', { kind: 'usual', clock: at(day, 11), room: 'none', brushed: true });
  const brood = broodPlaces(alder.society);
  const places = [...brood.slice(-4), Math.max(...brood) + 1];
  const child = splitOff(yard.world, alder.society, 'linden-back', places, { from: 15, to: 20 }, 0.3);
  const clock = { day, minute: done.end.minute + 12 };
  const back = takeCharge(yard, 'Linden back', child, 'Linden', 27);
  back.lastRead = day;
  for (const comb of child.combs) back.known.add(comb.id);
  writeBay(yard, back, clock);
  yard.scribe.write('split', clock, yard.people.keeper.id, {
    from: yard.scribe.id('colony|Alder'),
    child: yard.scribe.id('colony|Linden back'),
    childName: 'Linden back',
    into: { hive: yard.scribe.id('hive|Linden'), bay: yard.scribe.id(back.bay) },
    combs: row(child).map((comb) => ({ comb: yard.scribe.id(`comb|${comb.id}`), place: comb.place })),
    queenSide: 'stayed',
  });
  const after = { day, minute: clock.minute + 4 };
  for (const { comb } of closeUp(alder.society)) placing(yard.scribe, alder, comb, after, yard.people.keeper.id);
  alder.society.to = Math.max(...row(alder.society).map((comb) => comb.place)) + 2;
  writeBay(yard, alder, { day, minute: after.minute + 2 });
  back.due = '2013-06-22';
  child.spared = true;
}

export function hazelPrepares(yard: Yard): void {
  const society = chargeOf(yard, 'Hazel').society;
  society.preparing = 6;
  society.spared = true;
}

export function hazelSwarms(yard: Yard, day: string): void {
  const left = yard.world.happened.find((one) => one.society === 'hazel' && one.what === 'swarm left' && one.day === day);
  if (left === undefined) return;
  const clock = at(day, 15, 20);
  const society = hiveSwarm(yard.world, 'hazel-swarm', 1, 8, left.bees ?? 12000, 380, chanceOf(yard.seed, 'hazel-swarm'));
  society.temper = 0.2;
  const charge = takeCharge(yard, 'Hazel swarm', society, 'Rowan', 18);
  charge.lastRead = day;
  charge.due = '2013-06-12';
  writeBay(yard, charge, clock);
  yard.scribe.write(
    'swarm',
    clock,
    yard.people.keeper.id,
    {
      what: 'hived',
      from: yard.scribe.id('colony|Hazel'),
      window: { earliest: day, latest: day },
      child: yard.scribe.id('colony|Hazel swarm'),
      childName: 'Hazel swarm',
      into: { hive: yard.scribe.id('hive|Rowan'), bay: yard.scribe.id(charge.bay), bars: 8 },
    },
    { noted: at(day, 20) },
  );
  writeReign(
    yard,
    'Hazel',
    'Hazel 2012',
    { day, minute: clock.minute + 1 },
    { kind: 'ended', how: 'left with a swarm', window: around(day, 0) },
  );
  writeReign(
    yard,
    'Hazel swarm',
    'Hazel 2012',
    { day, minute: clock.minute + 2 },
    { kind: 'began', how: 'came with the swarm', window: around(day, 0) },
  );
  feed(yard, 'Hazel swarm', at(day, 19), 'sugar syrup', 2, 'l');
}

export function newQueenFound(
  yard: Yard,
  name: string,
  label: string,
  day: string,
  emerged: readonly [string, string],
  mark: 'red' | 'green' | null,
): void {
  const done = goTo(yard, name, { kind: 'usual', clock: at(day, 12, 30), fine: true });
  if (!done.eggsSeen) throw new Error(`no eggs in ${name} on ${day}: a new queen is written down when she lays`);
  const clock = { day, minute: done.end.minute + 4 };
  const window = { earliest: emerged[0], latest: emerged[1] };
  writeQueen(yard, label, clock, {
    name: null,
    mark: done.queenSeen ? mark : null,
    emerged: window,
    clipped: null,
    motherColony: yard.scribe.id(`colony|${name === 'Linden back' ? 'Alder' : name}`),
  });
  writeReign(yard, name, label, { day, minute: clock.minute + 1 }, { kind: 'began', how: 'raised here', window });
}

export function removeLindensQueen(yard: Yard): void {
  const day = '2013-07-08';
  const done = goTo(yard, 'Linden', {
    kind: 'usual',
    clock: at(day, 9, 30),
    room: 'none',
    notes: ['followed people', 'stung through smoke'],
  });
  loseQueen(yard.world, chargeOf(yard, 'Linden').society);
  writeReign(
    yard,
    'Linden',
    'Linden 2012',
    { day, minute: done.end.minute + 3 },
    { kind: 'ended', how: 'removed', window: around(day, 0) },
  );
  writeNote(
    yard,
    at(day, 20),
    'Linden has followed people to the gate on three good days. The old queen was taken out; a daughter of Alder comes on Wednesday.',
    'Linden',
  );
}

export function introduceLindensQueen(yard: Yard): void {
  const day = '2013-07-10';
  introduce(chargeOf(yard, 'Linden').society, 'linden-2013', 1, chanceOf(yard.seed, 'linden-2013'));
  const clock = at(day, 18, 30);
  writeQueen(yard, 'Linden 2013', clock, {
    name: null,
    mark: 'red',
    emerged: { earliest: '2013-06-01', latest: '2013-06-10' },
    clipped: false,
    motherColony: yard.scribe.id('colony|Alder'),
  });
  writeReign(yard, 'Linden', 'Linden 2013', clock, { kind: 'began', how: 'introduced', window: around(day, 0) });
}

/** The new queen's daughters take over in the weeks after her first have emerged. */
export function calmer(yard: Yard, name: string): void {
  const society = chargeOf(yard, name).society;
  society.temper = Math.max(0.22, society.temper - 0.11);
}

export function willowLosesHerQueen(yard: Yard): void {
  const day = '2013-07-13';
  const { end } = goTo(yard, 'Willow', { kind: 'usual', clock: at(day, 11), room: 'none', notes: ['dropped a comb'] });
  yard.scribe.write('comb-fell', { day, minute: end.minute + 1 }, yard.people.keeper.id, {
    colony: yard.scribe.id('colony|Willow'),
    hive: yard.scribe.id('hive|Willow'),
    visit: null,
    place: 5,
    what: 'brood',
    done: 'hung up again',
  });
  loseQueen(yard.world, chargeOf(yard, 'Willow').society);
  chargeOf(yard, 'Willow').society.spared = true;
}

export function willowHasNoEggs(yard: Yard): void {
  const day = '2013-07-22';
  const done = goTo(yard, 'Willow', { kind: 'usual', clock: at(day, 11), brushed: true, room: 'none' });
  const window = { earliest: '2013-07-13', latest: '2013-07-16' };
  writeReign(yard, 'Willow', 'Willow 2012', { day, minute: done.end.minute + 5 }, { kind: 'ended', how: 'lost', window });
  writeNote(
    yard,
    at(day, 20, 15),
    'The comb that fell on the thirteenth must have had the queen on it. They are raising another.',
    'Willow',
  );
}
