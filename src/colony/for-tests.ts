/**
 * Makes valid entries of an invented yard, for tests: ids and times count up, so that the same calls
 * give the same journal. Pure; nothing of the program uses it.
 */
import type { Entry, Id } from '../journal/entry.ts';
import { foldJournal, type Folded } from '../journal/fold.ts';
import { correctionKind } from '../journal/kind-correction.ts';
import { voidKind } from '../journal/kind-void.ts';
import type { AnyKind } from '../journal/kind.ts';
import { type NoFit, noFits } from '../journal/no-fit.ts';
import { barKind } from '../hive/kind-bar.ts';
import { bayKind } from '../hive/kind-bay.ts';
import { combKind } from '../hive/kind-comb.ts';
import { hiveKind } from '../hive/kind-hive.ts';
import { measurementKind } from '../hive/kind-measurement.ts';
import { combPieceKind } from '../hive/kind-comb-piece.ts';
import { combsJoinedKind } from '../hive/kind-combs-joined.ts';
import { combsPartedKind } from '../hive/kind-combs-parted.ts';
import { moveKind } from '../hive/kind-move.ts';
import { placingKind } from '../hive/kind-placing.ts';
import { yardKind } from '../hive/kind-yard.ts';
import type { Day } from '../numbers/day.ts';
import { dayWeatherKind } from '../weather/kind-day-weather.ts';
import { adviceIssuedKind } from './kind-advice-issued.ts';
import { colonyKind } from './kind-colony.ts';
import { colonyEndedKind } from './kind-colony-ended.ts';
import { beeEscapeKind } from './kind-bee-escape.ts';
import { combFellKind } from './kind-comb-fell.ts';
import { contactKind } from './kind-contact.ts';
import { feedingKind } from './kind-feeding.ts';
import { figureOverrideKind } from './kind-figure-override.ts';
import { forecastIssuedKind } from './kind-forecast-issued.ts';
import { lookKind } from './kind-look.ts';
import { noteKind } from './kind-note.ts';
import { observerKind } from './kind-observer.ts';
import { queenKind } from './kind-queen.ts';
import { readingKind } from './kind-reading.ts';
import { reignKind } from './kind-reign.ts';
import { splitKind } from './kind-split.ts';
import { swarmKind } from './kind-swarm.ts';
import { uniteKind } from './kind-unite.ts';
import { visitKind } from './kind-visit.ts';
import type { FaceReading, Reading } from './reading.ts';
import { type ColonyDraft, emptyColonies } from './state.ts';
import { nothingAnswered, type VisitBody } from './visit.ts';

const kinds: readonly AnyKind<ColonyDraft>[] = [
  correctionKind,
  voidKind,
  dayWeatherKind,
  yardKind,
  hiveKind,
  bayKind,
  barKind,
  combKind,
  placingKind,
  moveKind,
  combsJoinedKind,
  combsPartedKind,
  combPieceKind,
  measurementKind,
  observerKind,
  contactKind,
  figureOverrideKind,
  noteKind,
  colonyKind,
  queenKind,
  reignKind,
  swarmKind,
  splitKind,
  uniteKind,
  colonyEndedKind,
  visitKind,
  readingKind,
  lookKind,
  combFellKind,
  beeEscapeKind,
  feedingKind,
  adviceIssuedKind,
  forecastIssuedKind,
];

/** What a bar shows, short: brood and food in eighths of both faces; the rest as a reading has it. */
export interface BarSeen extends Partial<Omit<Reading, 'visit' | 'hive' | 'place' | 'faces'>> {
  readonly brood?: number | null;
  readonly food?: number | null;
  readonly face?: Partial<FaceReading>;
  readonly by?: Id;
}

export interface SampleYard {
  readonly entries: Entry[];
  readonly id: () => Id;
  readonly add: (kind: string, day: Day, body: unknown, by?: Id) => Entry;
  /** A hive of 12 bars, 440 mm wide at the top and 275 mm deep, walls at 30°. */
  readonly hive: (day: Day, bars?: number) => Id;
  readonly colony: (
    day: Day,
    hive: Id,
    more?: Partial<{ colony: Id; bay: Id | null; origin: string; parent: Id | null; name: string }>,
  ) => Id;
  /** Readings of places, then the closing; answers the visit's id. `closing` null leaves it open. */
  readonly visit: (
    day: Day,
    colony: Id,
    hive: Id,
    bars: Readonly<Record<number, BarSeen>>,
    closing?: Partial<VisitBody> | null,
  ) => Id;
  readonly fold: (until?: Day) => Folded<ColonyDraft>;
}

export function sampleYard(): SampleYard {
  let count = 0;
  const entries: Entry[] = [];
  const id = (): Id => {
    count += 1;
    return `00000000-0000-7000-8000-${count.toString(16).padStart(12, '0')}`;
  };
  const yard = id();
  const keeper = id();
  const add = (kind: string, day: Day, body: unknown, by: Id = keeper): Entry => {
    const made = id();
    const minutes = entries.length % (24 * 60);
    const clock = `${two(Math.floor(minutes / 60))}:${two(minutes % 60)}`;
    const entry: Entry = {
      id: made,
      yard,
      at: day,
      noted: `${day.slice(0, 10)}T${clock}:00Z`,
      by,
      kind,
      version: 1,
      body,
    };
    entries.push(entry);
    return entry;
  };
  const hive: SampleYard['hive'] = (day, bars = 12) => {
    const made = id();
    add('hive', day, { hive: made, bars, ...sampleHive });
    return made;
  };
  const colony: SampleYard['colony'] = (day, hiveId, more = {}) => {
    const made = more.colony ?? id();
    add('colony', day, {
      colony: made,
      name: 'Alder',
      origin: 'bought',
      parent: null,
      began: { earliest: day, latest: day },
      hive: hiveId,
      bay: null,
      ...more,
    });
    return made;
  };
  const visit: SampleYard['visit'] = (day, colonyId, hiveId, bars, closing = {}) => {
    const made = id();
    for (const [place, seen] of Object.entries(bars))
      add('reading', `${day}T14:05`, reading(made, hiveId, Number(place), seen), seen.by);
    if (closing !== null) add('visit', `${day}T14:30`, { ...closed(made, colonyId, hiveId, day), ...closing });
    return made;
  };
  return {
    entries,
    id,
    add,
    hive,
    colony,
    visit,
    fold: (until) => foldJournal(entries, kinds, emptyColonies, until === undefined ? {} : { until }),
  };
}

export function foldWith(entries: readonly Entry[]): Folded<ColonyDraft> {
  return foldJournal(entries, kinds, emptyColonies);
}

export function noFitsWith(entries: readonly Entry[]): readonly NoFit[] {
  return noFits(entries, kinds, emptyColonies);
}

const mm = (value: number): unknown => ({ value, unit: 'mm', how: 'measured' });
const sampleHive = {
  name: 'Alder',
  barWidth: mm(35),
  topWidth: mm(440),
  depth: mm(275),
  wallAngleDeg: 30,
  wallAngleHow: 'measured',
  entrance: 'first',
};

export function reading(visit: Id, hive: Id, place: number, seen: BarSeen): Reading {
  const { brood = 0, food = 0, face = {}, by: _, ...rest } = seen;
  return {
    visit,
    hive,
    place,
    faces: [{ face: 'both', brood8: brood, food8: food, ...face }],
    built8: 8,
    eggs: 'not looked',
    youngest: null,
    cells: null,
    cellsLooked: 'not looked',
    queen: 'not looked',
    brushed: null,
    signs: [],
    method: 'eighths',
    light: null,
    ...rest,
  };
}

function closed(visit: Id, colony: Id, hive: Id, day: Day): VisitBody {
  return {
    visit,
    colony,
    hive,
    visitKind: 'usual',
    began: `${day}T14:00`,
    ended: `${day}T14:30`,
    order: 'from the follower',
    ...nothingAnswered(),
    sentence: 'Done.',
  };
}

function two(n: number): string {
  return String(n).padStart(2, '0');
}
