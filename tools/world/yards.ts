/**
 * Many yards in little time: journals of random but lawful shape, for tests that hold over all yards and
 * for benchmarks. It is no simulation: eighths follow the season with chance, queens come and go by a
 * few rules, so that every state a rule speaks of turns up. Nothing here may be read as biology.
 */
import type { Reading } from '../../src/colony/reading.ts';
import type { SignCode } from '../../src/colony/signs.ts';
import type { VisitBody } from '../../src/colony/visit.ts';
import type { Entry } from '../../src/journal/entry.ts';
import { addDays, type Day } from '../../src/numbers/day.ts';
import { type Chance, chanceOf } from './chance.ts';
import { atOf, type Clock, newScribe, type Scribe } from './scribe.ts';

export interface YardSize {
  readonly hives: number;
  readonly years: number;
  /** Visits of each colony in a year, between March and October. */
  readonly visitsPerYear: number;
  /** First day of the first year's visits; the year is counted from it. */
  readonly from?: Day;
  /** False: bodies are not held against their schemas, which takes half of the time. */
  readonly checked?: boolean;
}

type State = 'laying' | 'cells open' | 'cells sealed' | 'virgin' | 'none' | 'laying workers' | 'drone layer';

type Mood = NonNullable<VisitBody['temper']>;

interface Hive {
  readonly name: string;
  colony: string;
  combs: number;
  bars: number;
  state: State;
  since: Day;
  temper: number;
  alive: boolean;
  escape: 'set' | 'taken out';
}

const years = 365;
const seasonDays = 220;

/** The journal of a random yard: same seed and size, same entries, in order. */
export function randomYard(seed: number, size: YardSize): readonly Entry[] {
  const scribe = newScribe(`yard|${seed}`, size.checked ?? true);
  const luck = chanceOf(seed, 'yard');
  const from = size.from ?? '2013-03-20';
  const keeper = scribe.id('observer|keeper');
  const evening: Clock = { day: addDays(from, -1), minute: 19 * 60 };
  scribe.write('yard', evening, keeper, {
    name: `Yard ${seed}`,
    latitude: luck.happens(0.9) ? Math.round(luck.between(30, 58)) : null,
    longitude: 0,
    timeZone: 'America/New_York',
  });
  scribe.write('observer', evening, keeper, { observer: keeper, name: 'The keeper', role: 'keeper' });
  if (luck.happens(0.5)) scribe.write('contact', evening, keeper, { role: 'authority', name: 'Inspector', phone: '555-0100' });
  const hives = Array.from({ length: size.hives }, (_, i) =>
    beginHive(scribe, keeper, luck, i, { day: evening.day, minute: 19 * 60 + 5 + (i % 200) }),
  );
  const gap = Math.max(1, Math.floor(seasonDays / size.visitsPerYear));
  for (let year = 0; year < size.years; year += 1) {
    for (let n = 0; n < size.visitsPerYear; n += 1) {
      for (const [i, hive] of hives.entries()) {
        const day = addDays(from, year * years + n * gap + (i % 3));
        visitHive(scribe, keeper, luck, hive, { day, minute: 10 * 60 + (i % 40) * 12 });
      }
    }
  }
  return scribe.entries;
}

function beginHive(scribe: Scribe, keeper: string, luck: Chance, i: number, clock: Clock): Hive {
  const name = `Hive ${i + 1}`;
  const combs = luck.whole(3, 12);
  const hive: Hive = {
    name,
    colony: scribe.id(`colony|${name}|0`),
    combs,
    bars: combs + luck.whole(0, 2),
    state: 'laying',
    since: clock.day,
    temper: luck.unit(),
    alive: true,
    escape: 'taken out',
  };
  scribe.write('hive', clock, keeper, {
    hive: scribe.id(`hive|${name}`),
    name,
    bars: 28,
    barWidth: { value: 35, unit: 'mm', how: 'measured' },
    topWidth: { value: luck.whole(40, 52), unit: 'cm', how: 'measured' },
    depth: { value: luck.whole(24, 32), unit: 'cm', how: 'measured' },
    wallAngleDeg: luck.whole(10, 30),
    wallAngleHow: 'typical',
    entrance: luck.pick(['first', 'first', 'last']),
  });
  beginColony(scribe, keeper, luck, hive, clock);
  return hive;
}

function beginColony(scribe: Scribe, keeper: string, luck: Chance, hive: Hive, clock: Clock): void {
  const bay = scribe.id(`bay|${hive.colony}`);
  scribe.write('bay', clock, keeper, { bay, hive: scribe.id(`hive|${hive.name}`), from: 1, to: hive.bars });
  const window = { earliest: addDays(clock.day, -luck.whole(0, 20)), latest: clock.day };
  if (luck.happens(0.3)) {
    hive.combs = 0;
    scribe.write('swarm', clock, keeper, {
      what: 'hived',
      from: null,
      window,
      child: hive.colony,
      childName: `${hive.name} swarm`,
      into: { hive: scribe.id(`hive|${hive.name}`), bay, bars: hive.bars },
    });
    return;
  }
  scribe.write('colony', clock, keeper, {
    colony: hive.colony,
    name: hive.name,
    origin: luck.pick(['bought', 'nucleus', 'unknown']),
    parent: null,
    began: window,
    hive: scribe.id(`hive|${hive.name}`),
    bay,
  });
}

function visitHive(scribe: Scribe, keeper: string, luck: Chance, hive: Hive, clock: Clock): void {
  if (!hive.alive) restart(scribe, keeper, luck, hive, clock);
  live(luck, hive, clock.day);
  const summer = Math.sin((Math.PI * (Number(clock.day.slice(5, 7)) - 2)) / 9);
  const kind: VisitBody['visitKind'] = luck.happens(0.12) ? 'glance' : luck.happens(0.1) ? 'after a swarm' : 'usual';
  const visit = scribe.id(`visit|${hive.colony}|${clock.day}`);
  const first = kind === 'glance' ? Math.max(1, hive.bars - 1) : luck.happens(0.2) ? luck.whole(1, hive.bars) : 1;
  for (let place = hive.bars; place >= first; place -= 1) {
    const minute = clock.minute + Math.floor((hive.bars - place) / 3);
    scribe.write('reading', { day: clock.day, minute }, keeper, readingOf(scribe, luck, hive, place, visit, Math.max(0, summer)));
  }
  const given = hive.bars < 26 && luck.happens(0.25) ? [hive.bars + 1] : [];
  hive.combs = Math.min(hive.bars, hive.combs + (luck.happens(0.4) ? 1 : 0));
  hive.bars += given.length;
  const end = { day: clock.day, minute: clock.minute + 11 };
  if (luck.happens(0.5)) typeWeather(scribe, keeper, luck, clock.day, hive.name);
  scribe.write('visit', end, keeper, closing(scribe, luck, hive, kind, visit, clock, end, given));
  afterwards(scribe, keeper, luck, hive, { day: clock.day, minute: end.minute + 1 });
}

/** The queen's affairs, by a few rules and chance. */
function live(luck: Chance, hive: Hive, day: Day): void {
  const next: Readonly<Record<State, readonly [State, ...State[]]>> = {
    laying: ['laying', 'laying', 'laying', 'laying', 'laying', 'laying', 'laying', 'laying', 'cells open', 'none', 'drone layer'],
    'cells open': ['cells sealed', 'cells sealed', 'laying'],
    'cells sealed': ['virgin', 'virgin', 'none'],
    virgin: ['laying', 'laying', 'virgin', 'none'],
    none: ['cells open', 'none', 'laying workers', 'laying'],
    'laying workers': ['laying workers', 'laying'],
    'drone layer': ['drone layer', 'laying', 'none'],
  };
  const was = hive.state;
  hive.state = luck.pick(next[was]);
  if (hive.state !== was) hive.since = day;
}

function readingOf(scribe: Scribe, luck: Chance, hive: Hive, place: number, visit: string, summer: number): Reading {
  const hiveId = scribe.id(`hive|${hive.name}`);
  if (place > hive.combs) {
    return {
      visit,
      hive: hiveId,
      place,
      combClass: 'bare',
      faces: [{ face: 'both', brood8: 0, food8: 0 }],
      built8: 0,
      eggs: 'none seen',
      youngest: 'none',
      cells: null,
      cellsLooked: 'not looked',
      queen: 'not looked',
      brushed: null,
      signs: [],
      method: 'eighths',
      light: null,
    };
  }
  const inNest = place <= 2 + hive.combs * 0.6;
  const brood8 = inNest && hive.state !== 'none' && luck.happens(0.85) ? half(luck, 6.5 * summer) : 0;
  const food8 = luck.happens(0.05) ? null : half(luck, 8 - brood8);
  const laying = hive.state === 'laying' || hive.state === 'laying workers' || hive.state === 'drone layer';
  const youngest: Reading['youngest'] =
    brood8 === 0 ? 'none' : laying ? 'egg' : luck.pick<Reading['youngest']>(['young larva', 'larva', 'sealed', 'sealed']);
  const cells = hive.state.startsWith('cells') && luck.happens(0.4);
  const drone8 =
    hive.state === 'drone layer' || hive.state === 'laying workers' ? brood8 : Math.min(brood8, luck.happens(0.2) ? 0.5 : 0);
  return {
    visit,
    hive: hiveId,
    place,
    combClass: luck.happens(0.5) ? (brood8 > 0 ? 'food and brood' : 'food') : null,
    faces: [{ face: 'both', brood8, food8, ...(drone8 > 0 ? { drone8 } : {}) }],
    ...(luck.happens(0.2) ? { built8: luck.whole(4, 16) / 2 } : {}),
    eggs: luck.happens(0.1) ? 'not looked' : youngest === 'egg' ? 'seen' : 'none seen',
    youngest: luck.happens(0.1) ? null : youngest,
    cells: cells ? countCells(luck, hive) : luck.happens(0.5) ? { open: 0, sealed: 0, torn: 0, emerged: 0 } : null,
    cellsLooked: cells ? 'seen' : luck.pick(['none seen', 'not looked']),
    queen: luck.happens(0.05) ? 'seen' : luck.pick(['none seen', 'not looked']),
    brushed: luck.pick([null, true, false]),
    signs: signsOf(luck, hive),
    method: 'eighths',
    light: luck.pick([null, 'sun', 'shade', 'dull']),
    ...(brood8 > 3 && luck.happens(0.1) ? { patch: { occupied: luck.whole(50, 98), cells: 100 } } : {}),
  };
}

function countCells(luck: Chance, hive: Hive): Reading['cells'] {
  const open = hive.state === 'cells open' ? luck.whole(1, 6) : luck.whole(0, 2);
  return { open, sealed: hive.state === 'cells sealed' ? luck.whole(1, 5) : 0, torn: luck.whole(0, 1), emerged: 0 };
}

function signsOf(luck: Chance, hive: Hive): string[] {
  if (hive.state === 'laying workers' && luck.happens(0.5))
    return ['several eggs in a cell', 'domed caps on worker cells'] satisfies SignCode[];
  const rare: readonly [SignCode, ...SignCode[]] = [
    'mites on bees',
    'sunken or pierced caps',
    'crumpled wings',
    'ropy brown thread',
    'wax moth webbing',
    'uncapped pupae',
  ];
  return luck.happens(0.004) ? [luck.pick(rare)] : [];
}

function closing(
  scribe: Scribe,
  luck: Chance,
  hive: Hive,
  kind: VisitBody['visitKind'],
  visit: string,
  clock: Clock,
  end: Clock,
  given: number[],
): VisitBody {
  const moods: readonly [Mood, ...Mood[]] =
    hive.temper > 0.8 ? ['edgy', 'stinging', 'lively'] : ['calm', 'calm', 'lively', 'edgy'];
  const temper = luck.happens(0.2) ? null : luck.pick(moods);
  return {
    visit,
    colony: hive.colony,
    hive: scribe.id(`hive|${hive.name}`),
    visitKind: kind,
    began: atOf(clock),
    ended: atOf(end),
    order: 'from the follower',
    barsCounted: hive.bars,
    followerAfter: hive.bars,
    given,
    taken: [],
    beesBars: luck.happens(0.7) ? luck.whole(2, 2 * hive.bars) / 2 : null,
    straight: kind === 'glance' ? luck.pick(['straight', 'straight', 'bent']) : null,
    temper,
    temperNotes: luck.happens(0.1) ? ['after rain'] : [],
    smokeMinutes: null,
    cellsCut: hive.state === 'cells open' ? luck.happens(0.4) : null,
    signs: [],
    sentence: `${hive.name} on ${clock.day}.`,
  };
}

function afterwards(scribe: Scribe, keeper: string, luck: Chance, hive: Hive, clock: Clock): void {
  const today = { earliest: clock.day, latest: clock.day };
  if (luck.happens(0.06))
    scribe.write('feeding', clock, keeper, {
      colony: hive.colony,
      what: 'sugar syrup',
      amount: { value: luck.whole(1, 5), unit: 'l' },
    });
  if (hive.state === 'virgin' && luck.happens(0.5)) {
    scribe.write('swarm', clock, keeper, {
      what: 'left',
      from: hive.colony,
      window: today,
      child: null,
      childName: null,
      into: null,
    });
  }
  if (luck.happens(0.03)) {
    const queen = scribe.id(`queen|${hive.colony}|${clock.day}`);
    scribe.write('queen', clock, keeper, {
      queen,
      name: null,
      mark: null,
      emerged: null,
      clipped: null,
      motherColony: null,
    });
    scribe.write('reign', { ...clock, minute: clock.minute + 1 }, keeper, {
      colony: hive.colony,
      queen,
      change: { kind: 'began', how: 'introduced', window: today },
    });
    hive.state = 'laying';
  }
  handled(scribe, keeper, luck, hive, clock);
  if (luck.happens(0.006)) {
    scribe.write('colony-ended', { ...clock, minute: clock.minute + 2 }, keeper, {
      colony: hive.colony,
      how: 'died',
      window: today,
    });
    hive.alive = false;
  }
}

/** A comb that fell, or two that changed places. */
function handled(scribe: Scribe, keeper: string, luck: Chance, hive: Hive, clock: Clock): void {
  const at = { ...clock, minute: clock.minute + 1 };
  const place = luck.whole(1, hive.combs);
  const here = { hive: scribe.id(`hive|${hive.name}`), visit: null };
  if (luck.happens(0.04)) {
    const what = luck.pick(['honey', 'brood', 'empty comb'] as const);
    const done = luck.pick(['hung up again', 'taken out'] as const);
    scribe.write('comb-fell', at, keeper, { colony: hive.colony, ...here, place, what, done });
  } else if (luck.happens(0.03)) {
    hive.escape = hive.escape === 'set' ? 'taken out' : 'set';
    scribe.write('bee-escape', at, keeper, { colony: hive.colony, ...here, what: hive.escape, after: place });
  } else if (luck.happens(0.04)) {
    const move = { do: 'swap', place, with: place + 1 } as const;
    scribe.write('move', at, keeper, { ...here, outward: 'last', move });
  }
}

function restart(scribe: Scribe, keeper: string, luck: Chance, hive: Hive, clock: Clock): void {
  hive.colony = scribe.id(`colony|${hive.name}|${clock.day}`);
  hive.combs = luck.whole(2, 5);
  hive.bars = hive.combs + 3;
  hive.state = 'laying';
  hive.alive = true;
  hive.escape = 'taken out';
  beginColony(scribe, keeper, luck, hive, { day: clock.day, minute: clock.minute - 5 });
}

function typeWeather(scribe: Scribe, keeper: string, luck: Chance, day: Day, name: string): void {
  const low = luck.whole(4, 20);
  scribe.write(
    'day-weather',
    { day, minute: 480 },
    keeper,
    { low: { value: low, unit: 'degC' }, high: { value: low + luck.whole(4, 12), unit: 'degC' } },
    { wholeDay: true, label: `${day}|${name}` },
  );
}

function half(luck: Chance, most: number): number {
  return Math.max(0, Math.min(8, Math.floor(luck.unit() * most * 2) / 2));
}
