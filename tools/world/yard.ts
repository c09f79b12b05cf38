/**
 * The made-up yard while its two years are told: the world, the weather, the scribe and the charges, and
 * the small acts of a keeper that are written down: setting up, feeding, looking, queens, notes.
 */
import type { QueenBody } from '../../src/colony/kind-queen.ts';
import type { ReignBody } from '../../src/colony/kind-reign.ts';
import { addDays, type Day } from '../../src/numbers/day.ts';
import type { Charge, Person } from './keeper.ts';
import { type Clock, newScribe, type Scribe } from './scribe.ts';
import type { SkyDay } from './sky.ts';
import type { Society, World } from './society.ts';

export interface Yard {
  readonly seed: number;
  readonly world: World;
  readonly sky: ReadonlyMap<Day, SkyDay>;
  readonly scribe: Scribe;
  readonly charges: Map<string, Charge>;
  readonly people: { readonly keeper: Person; readonly helper: Person; readonly learner: Person };
  /** Days whose temperature has been written down. */
  readonly noted: Set<Day>;
}

export function newYard(seed: number, sky: ReadonlyMap<Day, SkyDay>, before: Day): Yard {
  const scribe = newScribe(`ferry-road|${seed}`);
  const eye = (
    name: string,
    broodLean: number,
    foodLean: number,
    scatter: number,
    seesCell: number,
    seesEggs: number,
  ): Person => ({
    id: scribe.id(`observer|${name}`),
    eye: { name, broodLean, foodLean, scatter, seesCell, seesEggs },
  });
  return {
    seed,
    sky,
    scribe,
    charges: new Map(),
    noted: new Set(),
    world: { day: before, societies: new Map(), happened: [], natural: false },
    people: {
      keeper: eye('keeper', 0.03, 0.03, 0.08, 0.78, 0.97),
      helper: eye('helper', -0.1, 0.08, 0.11, 0.68, 0.93),
      learner: eye('learner', -0.25, 0.15, 0.22, 0.4, 0.6),
    },
  };
}

export function skyOf(yard: Yard, day: Day): SkyDay {
  const found = yard.sky.get(day);
  if (found === undefined) throw new Error(`no weather for ${day}`);
  return found;
}

export function chargeOf(yard: Yard, name: string): Charge {
  const found = yard.charges.get(name);
  if (found === undefined) throw new Error(`no colony ${name}`);
  return found;
}

export function takeCharge(yard: Yard, name: string, society: Society, hive: string, limit: number, leave = 24000): Charge {
  const charge: Charge = {
    name,
    society,
    hive,
    bay: `bay|${name}`,
    limit,
    leave,
    lastRead: null,
    due: null,
    known: new Set(),
  };
  yard.charges.set(name, charge);
  return charge;
}

export function writeBay(yard: Yard, charge: Charge, clock: Clock): void {
  yard.scribe.write(
    'bay',
    clock,
    yard.people.keeper.id,
    {
      bay: yard.scribe.id(charge.bay),
      hive: yard.scribe.id(`hive|${charge.hive}`),
      from: charge.society.from,
      to: charge.society.to,
    },
    { label: `${charge.name}|${clock.day}` },
  );
}

export function writeQueen(yard: Yard, label: string, clock: Clock, queen: Omit<QueenBody, 'queen'>): void {
  yard.scribe.write(
    'queen',
    clock,
    yard.people.keeper.id,
    { queen: yard.scribe.id(`queen|${label}`), ...queen },
    { label: `${label}|${clock.day}` },
  );
}

export function writeReign(yard: Yard, name: string, label: string, clock: Clock, change: ReignBody['change']): void {
  yard.scribe.write(
    'reign',
    clock,
    yard.people.keeper.id,
    {
      colony: yard.scribe.id(`colony|${name}`),
      queen: yard.scribe.id(`queen|${label}`),
      change,
    },
    { label: `${label}|${change.kind}|${clock.day}` },
  );
}

export function writeNote(yard: Yard, clock: Clock, text: string, about: string | null = null): void {
  yard.scribe.write('note', clock, yard.people.keeper.id, {
    about: about === null ? null : yard.scribe.id(`colony|${about}`),
    text,
  });
}

/** Litres of syrup or kilograms of the rest; the bees take it as stores in the days that follow. */
export function feed(
  yard: Yard,
  name: string,
  clock: Clock,
  what: 'sugar syrup' | 'candy' | 'dry sugar',
  value: number,
  unit: 'l' | 'kg',
): void {
  const charge = chargeOf(yard, name);
  charge.society.fedGrams += value * (unit === 'l' ? 900 : 800);
  yard.scribe.write('feeding', clock, yard.people.keeper.id, {
    colony: yard.scribe.id(`colony|${name}`),
    what,
    amount: { value, unit },
  });
}

export function lookFromOutside(
  yard: Yard,
  name: string,
  clock: Clock,
  flight: 'none' | 'few' | 'many',
  pollenIn: boolean | null,
  seen: readonly string[] = [],
  by = yard.people.keeper,
): void {
  const charge = chargeOf(yard, name);
  yard.scribe.write('look', clock, by.id, {
    hive: yard.scribe.id(`hive|${charge.hive}`),
    colony: yard.scribe.id(`colony|${name}`),
    flight,
    pollenIn,
    seen: [...seen],
  });
  writeWeather(yard, clock.day);
}

/** The temperature of the day as the keeper types it, in whole degrees Fahrenheit. */
export function writeWeather(yard: Yard, day: Day): void {
  if (yard.noted.has(day)) return;
  yard.noted.add(day);
  const sky = skyOf(yard, day);
  const typed = (c: number): { value: number; unit: string } => ({ value: Math.round((c * 9) / 5 + 32), unit: 'degF' });
  yard.scribe.write(
    'day-weather',
    { day, minute: 8 * 60 },
    yard.people.keeper.id,
    { low: typed(sky.lowC), high: typed(sky.highC) },
    { wholeDay: true, label: day },
  );
}

export function at(day: Day, hour: number, minute = 0): Clock {
  return { day, minute: hour * 60 + minute };
}

export function around(day: Day, before: number, after = 0): { earliest: Day; latest: Day } {
  return { earliest: addDays(day, -before), latest: addDays(day, after) };
}
