/**
 * What the model of a colony tells of it on one day: the days behind and ahead with their ranges, the queen as
 * chances, ages, what is coming, what surprised, and whether a look is worth it. Plain data, safe to store and
 * send. Ranges hold eight of ten; chances are 0 … 1. Made by the engine, kept beside the view of the colony.
 */
import type { Id } from '../journal/entry.ts';
import type { Day } from '../numbers/day.ts';
import type { Range } from '../numbers/range.ts';
import type { Window } from '../numbers/window.ts';
import type { QueenState } from './queen-state.ts';
import type { RecordQuantity } from './record.ts';

export interface Foreseen {
  /** Names the model and its version, as forecasts that were issued carry it. */
  readonly engine: string;
  readonly colony: Id;
  /** The day it stands for; `line` reaches past it. */
  readonly day: Day;
  /** Of the entries it was made from. */
  readonly digest: string;
  /** Ascending. Days behind as believed on that day, by what had been seen until then; days ahead as foreseen. */
  readonly line: readonly DayBelief[];
  readonly queen: QueenChances;
  readonly ages: Ages;
  /** Null when no change of queens is in sight behind or ahead. */
  readonly turnover: TurnoverDays | null;
  readonly coming: Coming;
  /** Of the last visit, the most surprising first; at most three. */
  readonly surprises: readonly Surprise[];
  /** Where combs hang, by what was read, if they were moved; empty where no surprise is laid to that. */
  readonly moved: readonly MovedComb[];
  readonly look: Look;
  /** What would be counted on days ahead, errors of counting included: what is issued, and scored when it has come. */
  readonly forecasts: readonly CountForecast[];
  readonly cloud: CloudHealth;
}

export const forecastMethods = ['engine', 'challenger', 'blend', 'last time'] as const;
export type ForecastMethod = (typeof forecastMethods)[number];

export interface CountForecast {
  readonly what: RecordQuantity;
  readonly day: Day;
  /** Null where a way has nothing to go by: the challenger knows bees and sealed brood, "last time" needs a last time. */
  readonly ranges: Readonly<Record<ForecastMethod, Range | null>>;
}

export const quantities = ['bees', 'drones', 'eggs', 'larvae', 'sealed', 'laidPerDay', 'honeyKg', 'breadKg'] as const;
export type Quantity = (typeof quantities)[number];

export interface DayBelief {
  readonly day: Day;
  /** On a visit's day there are two rows: before what was seen, and after. */
  readonly when: 'before the visit' | 'after the visit' | 'between' | 'ahead';
  readonly values: Readonly<Record<Quantity, Range>>;
  /** The range that holds half; for the inner band of a chart. */
  readonly half: Readonly<Record<Quantity, Range>>;
  /** In the order of `queenStates`; sums to 1. */
  readonly queen: readonly number[];
}

export interface QueenChances {
  /** The most likely first; sums to 1. */
  readonly states: readonly { readonly state: QueenState; readonly chance: number }[];
  /** The next day on which a look would tell; null when it is told already. */
  readonly nextTelling: Day | null;
  /** Days on which a look does harm. */
  readonly harmful: readonly { readonly window: Window; readonly why: 'virgin' | 'new queen laying' | 'introduced' }[];
}

export interface Ages {
  /**
   * Classes of a few days, youngest first, adults and brood. `ofNew`: daughters of the queen who reigns; `ofOld`: of
   * all others, of those before her and of other colonies.
   */
  readonly adults: readonly AgeClass[];
  readonly brood: readonly AgeClass[];
}

export interface AgeClass {
  /** Whole days, both included; the last class of the bees holds all that are older as well. */
  readonly fromAge: number;
  readonly toAge: number;
  /** Means over what is believed. */
  readonly ofOld: number;
  readonly ofNew: number;
}

export interface TurnoverDays {
  /** First eggs of the new queen. */
  readonly laysSince: Window;
  /** Days on which her first daughters emerge, and on which they are half and nine tenths of the bees. */
  readonly firstDaughters: Window;
  readonly half: Window;
  readonly nineTenths: Window;
  /** The same of bees old enough to guard and forage: temper follows these. */
  readonly oldHalf: Window;
  readonly oldNineTenths: Window;
  /** Fewest bees on the way, as a share of those before, and when; null when they do not dip. */
  readonly dip: { readonly share: Range; readonly window: Window } | null;
}

export interface Coming {
  /** Days ahead that the chances are for. */
  readonly horizonDays: number;
  readonly hemmedIn: Chance;
  readonly troughFull: Chance;
  readonly starving: Chance;
  readonly swarm: Chance;
}

export interface Chance {
  /** Within the horizon. */
  readonly chance: number;
  /** When, if it happens: eight of ten. Null when the chance is next to nothing. */
  readonly window: Window | null;
  /** What would settle it, the most telling first. */
  readonly settledBy: readonly Sign[];
}

/** What a look can tell. */
export const lookSigns = [
  'eggs',
  'queen cells',
  'queen',
  'empty cells in the brood',
  'honey',
  'bare bars being built',
  'bees covering the last comb',
] as const;
export type Sign = (typeof lookSigns)[number];

export interface Surprise {
  /** What was seen otherwise than expected. */
  readonly what: 'bees' | 'sealed' | 'open brood' | 'honey' | 'comb' | 'eggs' | 'youngest' | 'cells' | 'bar';
  /** For a single bar. */
  readonly place: number | null;
  /** As foreseen before the visit, and as seen; counts and kilograms; for signs the chance of what was seen. */
  readonly expected: Range | null;
  readonly seen: number | null;
  /** Standard deviations; above 0 is more than expected. For signs: as unlikely as so many. */
  readonly z: number;
  /** Rival explanations, the most likely first; chances of those named, and of "just chance", sum to 1. */
  readonly because: readonly { readonly cause: Cause; readonly chance: number }[];
}

export const causes = [
  'just chance',
  'swarmed',
  'queen lost',
  'superseded',
  'robbed',
  'flow started',
  'flow ended',
  'counted by another hand',
  'combs moved',
  'brood dying',
] as const;
export type Cause = (typeof causes)[number];

export interface MovedComb {
  /** Its place at the visit. */
  readonly today: number;
  /** The place at which it hung before. */
  readonly last: number;
  /** That it is this one, if combs were moved. */
  readonly chance: number;
}

/** Whether opening is worth it, and which bars would answer. */
export interface Look {
  /** Chance that a look on this day changes what is done. */
  readonly changesAct: number;
  /** What is asked, the strongest first. */
  readonly questions: readonly { readonly ask: Question; readonly chance: number; readonly places: readonly number[] }[];
  /** The first day from this one on which opening is worth it; null when none within the horizon. */
  readonly openOn: Day | null;
  /** What it is opened for then; null with `openOn`. */
  readonly openFor: OpenFor | null;
  /** A look on this day would do harm. */
  readonly harms: boolean;
}

export type Question = 'cells' | 'eggs' | 'stores' | 'room';
/** Long: nothing is likely, but nobody has looked for long. */
export type OpenFor = 'cells' | 'eggs' | 'stores' | 'long';

export interface CloudHealth {
  readonly particles: number;
  /** Effective number at the last visit, before drawing anew. */
  readonly effective: number;
  /** Distinct ancestors left of those that began, or that were last spread anew. */
  readonly ancestors: number;
  readonly visits: number;
}
