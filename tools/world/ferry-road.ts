/**
 * The story of the Ferry Road allotments, January 2013 to 16 May 2014: how the six troughs were set up,
 * the keeper's usual round, and the day-by-day telling of it. What befalls whom is in `fate.ts`.
 */
import { addDays, type Day } from '../../src/numbers/day.ts';
import type { Entry } from '../../src/journal/entry.ts';
import { wintering } from './acts.ts';
import { chanceOf } from './chance.ts';
import { fates2013, keptShut } from './fates-2013.ts';
import { fates2014 } from './fates-2014.ts';
import { goTo } from './go.ts';
import type { Charge } from './keeper.ts';
import { linesOf } from './scribe.ts';
import { readSky, suitsOpening } from './sky.ts';
import { step } from './step.ts';
import { at, newYard, skyOf, takeCharge, writeBay, writeQueen, writeReign, writeWeather, type Yard } from './yard.ts';

export const demoSeed = 29;
export const demoToday: Day = '2014-05-16';

/** The journal as text. `weatherCsv` is the file of real days in `examples`. */
export function ferryRoad(weatherCsv: string, seed: number = demoSeed): string {
  return linesOf(tellFerryRoad(weatherCsv, seed).scribe.entries);
}

export function ferryRoadEntries(weatherCsv: string, seed: number = demoSeed): readonly Entry[] {
  return tellFerryRoad(weatherCsv, seed).scribe.entries;
}

/** The whole yard after its telling, with what truly happened: for tests only. `watch` sees the world at each day's end. */
export function tellFerryRoad(
  weatherCsv: string,
  seed: number = demoSeed,
  watch: (yard: Yard, day: Day) => void = () => undefined,
): Yard {
  const yard = newYard(seed, readSky(weatherCsv), '2012-12-31');
  people(yard);
  colonies(yard);
  for (let day: Day = '2013-01-01'; day <= demoToday; day = addDays(day, 1)) {
    const sky = skyOf(yard, day);
    step(yard.world, sky, seed);
    watch(yard, day);
    if (day < '2013-04-08') continue;
    for (const fate of [...fates2013, ...fates2014]) if (fate.day === day) fate.does(yard, day);
    if (day < '2014-01-01') usualRound(yard, day);
  }
  writeWeather(yard, demoToday);
  return yard;
}

function people(yard: Yard): void {
  const { scribe, people: who } = yard;
  const clock = at('2013-04-07', 19);
  const by = who.keeper.id;
  scribe.write('yard', clock, by, { name: 'Ferry Road', latitude: 40.7, longitude: -74, timeZone: 'America/New_York' });
  scribe.write('observer', clock, by, { observer: who.keeper.id, name: 'The keeper', role: 'keeper' }, { label: 'keeper' });
  scribe.write('observer', clock, by, { observer: who.helper.id, name: 'Ines', role: 'helper' }, { label: 'helper' });
  scribe.write(
    'contact',
    clock,
    by,
    { role: 'authority', name: 'County apiary inspector', phone: '555-0100' },
    { label: 'authority' },
  );
  scribe.write('contact', clock, by, { role: 'mentor', name: 'Mara, plot nine', phone: '555-0143' }, { label: 'mentor' });
  for (const [i, name] of ['Alder', 'Birch', 'Hazel', 'Linden', 'Rowan', 'Willow'].entries()) {
    scribe.write(
      'hive',
      at('2013-04-07', 19, 5 + i),
      by,
      {
        hive: scribe.id(`hive|${name}`),
        name,
        bars: 28,
        barWidth: { value: 35, unit: 'mm', how: 'measured' },
        topWidth: { value: 46, unit: 'cm', how: 'measured' },
        depth: { value: 27, unit: 'cm', how: 'measured' },
        wallAngleDeg: 25,
        wallAngleHow: name === 'Alder' ? 'measured' : 'typical',
        entrance: 'first',
      },
      { label: name },
    );
  }
}

/** [own] Colonies as they stand on New Year's Day 2013. Willow's keeper takes too much, and will have to feed. */
const starts = [
  {
    name: 'Alder',
    leave: 28000,
    combs: 11,
    bees: 15500,
    honeyKg: 19,
    vigour: 1.2,
    temper: 0.18,
    queenDays: 210,
    origin: 'bought',
    began: ['2012-05-12', '2012-05-12'],
    mark: 'yellow',
    year: 2012,
  },
  {
    name: 'Birch',
    leave: 24000,
    combs: 10,
    bees: 12000,
    honeyKg: 16,
    vigour: 0.86,
    temper: 0.24,
    queenDays: 560,
    origin: 'swarm',
    began: ['2011-06-01', '2011-06-10'],
    mark: 'white',
    year: 2011,
  },
  {
    name: 'Hazel',
    leave: 25000,
    combs: 11,
    bees: 14500,
    honeyKg: 18,
    vigour: 1,
    temper: 0.22,
    queenDays: 205,
    origin: 'nucleus',
    began: ['2012-05-20', '2012-05-20'],
    mark: 'none',
    year: 2012,
  },
  {
    name: 'Linden',
    leave: 26000,
    combs: 11,
    bees: 13500,
    honeyKg: 17,
    vigour: 0.95,
    temper: 0.72,
    queenDays: 230,
    origin: 'swarm',
    began: ['2012-05-25', '2012-06-05'],
    mark: 'none',
    year: 2012,
  },
  {
    name: 'Willow',
    leave: 10800,
    combs: 10,
    bees: 12500,
    honeyKg: 16,
    vigour: 0.95,
    temper: 0.2,
    queenDays: 190,
    origin: 'swarm',
    began: ['2012-06-15', '2012-06-15'],
    mark: 'yellow',
    year: 2012,
  },
] as const;

function colonies(yard: Yard): void {
  for (const [i, start] of starts.entries()) {
    const id = start.name.toLowerCase();
    const { combs, bees, honeyKg, vigour, temper, queenDays } = start;
    const society = wintering(
      yard.world,
      { id, from: 1, to: combs + 1, combs, bees, honeyKg, queenDays, vigour, temper },
      chanceOf(yard.seed, id),
    );
    const charge = takeCharge(yard, start.name, society, start.name, start.name === 'Linden' ? 13 : 22, start.leave);
    charge.due = '2013-04-08';
    const clock = at('2013-04-07', 19, 20 + 2 * i);
    writeBay(yard, charge, clock);
    yard.scribe.write(
      'colony',
      clock,
      yard.people.keeper.id,
      {
        colony: yard.scribe.id(`colony|${start.name}`),
        name: start.name,
        origin: start.origin,
        parent: null,
        began: { earliest: start.began[0], latest: start.began[1] },
        hive: yard.scribe.id(`hive|${start.name}`),
        bay: yard.scribe.id(charge.bay),
      },
      { label: start.name },
    );
    const queen = `${start.name} ${start.year}`;
    writeQueen(yard, queen, clock, {
      name: null,
      mark: start.mark,
      emerged: { earliest: `${start.year}-04-15`, latest: `${start.year}-07-31` },
      clipped: false,
      motherColony: null,
    });
    writeReign(yard, start.name, queen, clock, { kind: 'began', how: 'found', window: null });
  }
}

/** The keeper's usual round: the hives that are due, on days that suit, at most four, none that is kept shut. */
function usualRound(yard: Yard, day: Day): void {
  const sky = skyOf(yard, day);
  if (day > '2013-10-18' || !suitsOpening(sky, day < '2013-04-25' ? 14 : 16)) return;
  const due = [...yard.charges.values()].filter(
    (charge) => charge.due !== null && charge.due <= day && charge.society.alive && !isShut(charge, day),
  );
  due.slice(0, 4).forEach((charge, i) => {
    const luck = chanceOf(yard.seed, `round|${charge.name}|${day}`);
    const first = charge.lastRead === null && day < '2013-04-25';
    const helper = !first && luck.happens(0.14);
    const clear = day < '2013-05-01' || (day > '2013-07-05' && luck.happens(0.45));
    goTo(yard, charge.name, {
      kind: first ? 'first of the year' : 'usual',
      clock: at(day, 11 + i, luck.whole(0, 12)),
      by: helper ? yard.people.helper : yard.people.keeper,
      shut: clear && !first ? quietBars(charge) : [],
      fromEntrance: luck.happens(0.2),
      fine: first || luck.happens(0.25),
      brushed: luck.happens(0.2),
      ...((day > '2013-06-28' && day < '2013-08-15') || day > '2013-09-22' ? { harvest: 'ripe' as const } : {}),
    });
  });
}

/** Bars left alone on a quiet visit: the two at the entrance, and the honey at the far end. */
function quietBars(charge: Charge): number[] {
  const { from, to } = charge.society;
  const far = [];
  for (let place = from + 9; place <= to - 1; place += 1) far.push(place);
  return [from, ...far];
}

function isShut(charge: Charge, day: Day): boolean {
  return keptShut.some((row) => row.name === charge.name && row.from <= day && day <= row.to);
}
