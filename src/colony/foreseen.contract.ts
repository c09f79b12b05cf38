/**
 * What a model might tell of a requeened colony, made up from closed forms, for tests of words, drawings and
 * screens: its numbers are plausible and mean nothing. The queen of the year before was replaced in mid-April;
 * one visit surprised. Nothing of the program uses it.
 */
import { addDays, type Day, daysBetween } from '../numbers/day.ts';
import type { Range } from '../numbers/range.ts';
import { windowOf } from '../numbers/window.ts';
import type { AgeClass, CountForecast, DayBelief, Foreseen, Quantity } from './foreseen.ts';
import { queenStates } from './queen-state.ts';

export const madeUpDay: Day = '2014-05-16';
export const madeUpVisits: readonly Day[] = ['2014-03-29', '2014-04-12', '2014-04-28', '2014-05-13'];
const behindDays = 60;
const aheadDays = 42;

export function madeUpForeseen(colony = 'colony-1', change: Partial<Foreseen> = {}): Foreseen {
  const day = madeUpDay;
  return {
    engine: 'made up 1',
    colony,
    day,
    digest: 'none',
    line: madeUpLine(),
    queen: {
      states: chancesOn(day)
        .map((chance, i) => ({ state: queenStates[i] ?? 'none', chance }))
        .sort((a, b) => b.chance - a.chance),
      nextTelling: addDays(day, 8),
      harmful: [
        { window: windowOf(addDays(day, -4), addDays(day, 2)), why: 'virgin' },
        { window: windowOf(addDays(day, 1), addDays(day, 6)), why: 'new queen laying' },
      ],
    },
    ages: madeUpAges(),
    turnover: {
      laysSince: windowOf('2014-05-04', '2014-05-09'),
      firstDaughters: windowOf('2014-05-25', '2014-05-30'),
      half: windowOf('2014-06-11', '2014-06-18'),
      nineTenths: windowOf('2014-06-29', '2014-07-08'),
      oldHalf: windowOf('2014-06-24', '2014-07-02'),
      oldNineTenths: windowOf('2014-07-10', '2014-07-21'),
      dip: { share: { low: 0.55, likely: 0.66, high: 0.78 }, window: windowOf('2014-05-28', '2014-06-06') },
    },
    coming: {
      horizonDays: 21,
      hemmedIn: { chance: 0.34, window: windowOf(addDays(day, 6), addDays(day, 15)), settledBy: ['empty cells in the brood'] },
      troughFull: { chance: 0.08, window: windowOf(addDays(day, 15), addDays(day, 21)), settledBy: ['bare bars being built'] },
      starving: { chance: 0.01, window: null, settledBy: [] },
      swarm: {
        chance: 0.27,
        window: windowOf(addDays(day, 4), addDays(day, 17)),
        settledBy: ['queen cells', 'eggs', 'bees covering the last comb'],
      },
    },
    surprises: [
      {
        what: 'bees',
        place: null,
        expected: { low: 12_400, likely: 15_200, high: 18_900 },
        seen: 9_800,
        z: -2.6,
        because: [
          { cause: 'swarmed', chance: 0.58 },
          { cause: 'counted by another hand', chance: 0.21 },
          { cause: 'just chance', chance: 0.17 },
          { cause: 'robbed', chance: 0.04 },
        ],
      },
      {
        what: 'eggs',
        place: null,
        expected: null,
        seen: 0.12,
        z: -1.5,
        because: [
          { cause: 'queen lost', chance: 0.44 },
          { cause: 'superseded', chance: 0.32 },
          { cause: 'just chance', chance: 0.24 },
        ],
      },
    ],
    moved: [],
    look: {
      changesAct: 0.22,
      questions: [
        { ask: 'eggs', chance: 0.31, places: [4, 5, 6] },
        { ask: 'cells', chance: 0.18, places: [3, 4, 5, 6, 7] },
      ],
      openOn: addDays(day, 8),
      openFor: 'eggs',
      harms: true,
    },
    forecasts: [7, 21].flatMap((ahead) => [
      forecastOf('bees', addDays(day, ahead), 9900),
      forecastOf('sealed', addDays(day, ahead), 5200),
      forecastOf('honeyKg', addDays(day, ahead), 7.4),
    ]),
    cloud: { particles: 2000, effective: 640, ancestors: 180, visits: 4 },
    ...change,
  };
}

function forecastOf(what: CountForecast['what'], day: Day, likely: number): CountForecast {
  const known = what !== 'honeyKg';
  return {
    what,
    day,
    ranges: {
      engine: around(likely * 1.05, 1.25),
      challenger: known ? around(likely * 0.98, 1.3) : null,
      blend: known ? around(likely * 1.01, 1.26) : null,
      'last time': around(likely, 1.35),
    },
  };
}

/** A row a day, and two on days of visits: a wide one before, a narrow one after. */
function madeUpLine(): readonly DayBelief[] {
  const rows: DayBelief[] = [];
  for (let d = -behindDays; d <= aheadDays; d += 1) {
    const day = addDays(madeUpDay, d);
    const visit = madeUpVisits.filter((one) => one < day).at(-1);
    const since = visit === undefined ? 20 : daysBetween(visit, day);
    if (madeUpVisits.includes(day)) {
      rows.push(rowOf(day, since, 'before the visit'), rowOf(day, 0, 'after the visit'));
    } else rows.push(rowOf(day, since, d > 0 ? 'ahead' : 'between'));
  }
  return rows;
}

function rowOf(day: Day, since: number, when: DayBelief['when']): DayBelief {
  const d = daysBetween(madeUpVisits[0] ?? day, day);
  // Bees fall after the swarm of late April and come back with the new queen's daughters.
  const bees =
    9000 + 9000 / (1 + Math.exp(-(d - 12) / 5)) - 8500 / (1 + Math.exp(-(d - 36) / 3)) + 16_000 / (1 + Math.exp(-(d - 78) / 8));
  const brood = Math.max(300, 9000 * Math.exp(-(((d - 12) / 22) ** 2)) + 14_000 / (1 + Math.exp(-(d - 60) / 6)));
  const likely: Readonly<Record<Quantity, number>> = {
    bees,
    drones: bees / 20,
    eggs: brood * 0.15,
    larvae: brood * 0.25,
    sealed: brood * 0.6,
    laidPerDay: brood / 20,
    honeyKg: 6 + 5 * Math.sin(d / 30) ** 2,
    breadKg: 0.8,
  };
  const spread = (factor: number) =>
    Object.fromEntries(Object.entries(likely).map(([what, value]) => [what, around(value, factor)])) as Record<Quantity, Range>;
  const wide = 1.14 + 0.012 * since;
  return { day, when, values: spread(wide), half: spread(1 + (wide - 1) / 2), queen: chancesOn(day) };
}

function around(likely: number, factor: number): Range {
  return { low: likely / factor, likely, high: likely * factor };
}

/** From a laying queen over cells and a virgin to a new queen who lays; some doubt that she came home. */
function chancesOn(day: Day): readonly number[] {
  const d = daysBetween(madeUpVisits[0] ?? day, day);
  const rise = (at: number, width: number) => 1 / (1 + Math.exp(-(d - at) / width));
  const laying = Math.max(0, 1 - rise(22, 2)) * 0.96;
  const open = rise(22, 2) * (1 - rise(28, 1.5));
  const sealed = rise(28, 1.5) * (1 - rise(35, 1.5));
  const virgin = rise(35, 1.5) * (1 - rise(47, 2.5));
  const fresh = rise(47, 2.5) * 0.8;
  const none = rise(44, 3) * 0.2;
  const workers = none * rise(66, 4) * 0.5;
  const row = [laying, open, sealed, virgin, fresh, 0.04 * (1 - rise(22, 2)), 0.02 * rise(60, 4), none - workers, workers];
  const sum = row.reduce((all, part) => all + part, 0);
  return row.map((part) => part / sum);
}

function madeUpAges(): Foreseen['ages'] {
  const classes = (until: number, of: (age: number) => readonly [number, number]): readonly AgeClass[] =>
    Array.from({ length: until / 3 }, (_, i) => {
      const [ofOld, ofNew] = of(i * 3 + 1.5);
      return { fromAge: i * 3, toAge: i * 3 + 2, ofOld: Math.round(ofOld * 3), ofNew: Math.round(ofNew * 3) };
    });
  return {
    brood: classes(21, (age) => (age < 11 ? [0, 900 - age * 30] : [0, 0])),
    adults: classes(60, (age) => (age < 6 ? [0, 0] : [620 * Math.exp(-(((age - 6) / 26) ** 2)), 0])),
  };
}

/** Ages of the same colony three weeks on, when both queens have daughters. */
export const madeUpMixedAges: Foreseen['ages'] = {
  brood: Array.from({ length: 7 }, (_, i) => ({ fromAge: i * 3, toAge: i * 3 + 2, ofOld: 0, ofNew: 3900 - i * 60 })),
  adults: [
    ...Array.from({ length: 4 }, (_, i) => ({ fromAge: i * 3, toAge: i * 3 + 2, ofOld: 0, ofNew: 2600 - i * 180 })),
    ...Array.from({ length: 14 }, (_, i) => ({
      fromAge: 12 + i * 3,
      toAge: 14 + i * 3,
      ofOld: Math.max(0, 1500 - i * 110),
      ofNew: 0,
    })),
  ],
};
