/**
 * Colonies, queens, reigns and visits as the journal says: the colony part of the state. One identity
 * each: a colony is the society on a set of combs, a hive is the box, a reign joins queen and colony.
 */
import { emptyHives, type HiveDraft } from '../hive/state.ts';
import type { At, Entry, Id } from '../journal/entry.ts';
import type { Day } from '../numbers/day.ts';
import type { Typed } from '../numbers/units.ts';
import type { Window } from '../numbers/window.ts';
import { emptyWeather, type WeatherDraft } from '../weather/state.ts';
import type { DoneWithFallen, FallenComb } from './comb-fell.ts';
import type { Reading } from './reading.ts';
import type { VisitBody } from './visit.ts';

export type Origin = 'swarm' | 'split' | 'nucleus' | 'bought' | 'unknown';
export type ColonyEnd = 'died in winter' | 'died' | 'united' | 'sold' | 'absconded' | 'unknown';

/** Where a colony lived from a day on; the last one is where it lives. */
export interface Stay {
  readonly from: Day;
  readonly hive: Id;
  readonly bay: Id | null;
}

export interface Colony {
  readonly id: Id;
  readonly name: string;
  readonly origin: Origin;
  readonly parent: Id | null;
  readonly began: Window;
  readonly stays: Stay[];
  /** `day` is the likely day; `latest` the last on which it may still have lived, so that its combs may still be read then. */
  ended: { readonly day: Day; readonly how: ColonyEnd; readonly into: Id | null; readonly latest?: Day } | null;
}

export interface Queen {
  readonly id: Id;
  readonly name: string | null;
  readonly mark: string | null;
  readonly emerged: Window | null;
  readonly clipped: boolean | null;
  readonly motherColony: Id | null;
}

export type ReignBegin = 'introduced' | 'raised here' | 'came with the swarm' | 'found' | 'unknown';
export type ReignEnd = 'removed' | 'died' | 'left with a swarm' | 'superseded' | 'lost' | 'unknown';

export interface Reign {
  readonly colony: Id;
  readonly queen: Id;
  readonly began: Window | null;
  readonly how: ReignBegin;
  ended: { readonly window: Window; readonly how: ReignEnd } | null;
}

export interface ReadingRow {
  readonly entry: Id;
  readonly by: Id;
  readonly at: At;
  readonly comb: Id;
  readonly body: Reading;
}

export interface Visit {
  readonly id: Id;
  readonly day: Day;
  readonly by: Id;
  readonly hive: Id;
  readonly colony: Id;
  /** Readings by entry, in the order of the fold; the same bar twice is two readings. */
  readonly readings: ReadingRow[];
  /** Null while only readings are here: the visit was not closed, or its closing has not arrived. */
  closed: { readonly entry: Id; readonly body: VisitBody } | null;
}

/** What happened to a colony, in the words of the fold: what the model takes as events. */
export type ColonyEvent =
  | { readonly kind: 'fed'; readonly what: string; readonly amount: Typed | null }
  | { readonly kind: 'swarm left'; readonly window: Window; readonly child: Id | null; readonly hived: boolean }
  | { readonly kind: 'swarm hived'; readonly parent: Id | null }
  | {
      readonly kind: 'split off';
      readonly child: Id;
      readonly queenSide: 'stayed' | 'went' | 'unknown';
      readonly combs: readonly Id[];
    }
  | {
      readonly kind: 'split from';
      readonly parent: Id;
      readonly queenSide: 'stayed' | 'went' | 'unknown';
      readonly combs: readonly Id[];
    }
  | { readonly kind: 'united into'; readonly into: Id }
  | { readonly kind: 'took in'; readonly from: Id }
  | { readonly kind: 'queen began'; readonly queen: Id; readonly how: ReignBegin }
  | { readonly kind: 'queen ended'; readonly queen: Id | null; readonly how: ReignEnd }
  | { readonly kind: 'cells cut' }
  | {
      readonly kind: 'comb fell';
      readonly place: number;
      readonly what: FallenComb;
      readonly done: DoneWithFallen;
    }
  | { readonly kind: 'bee escape'; readonly what: 'set' | 'taken out'; readonly after: number | null }
  | {
      readonly kind: 'look';
      readonly seen: readonly string[];
      readonly flight: 'none' | 'few' | 'many';
      readonly pollenIn: boolean | null;
      readonly minute?: { readonly seconds: number; readonly in: number; readonly withPollen: number | null } | undefined;
      readonly window?: 'full of bees' | 'some bees' | 'no bees' | undefined;
      readonly hum?: 'short and even' | 'long and uneven' | 'nothing heard' | undefined;
      readonly dead?: 'none' | 'a few' | 'many' | undefined;
    }
  | { readonly kind: 'ended'; readonly how: ColonyEnd };

export interface DatedEvent {
  readonly day: Day;
  readonly entry: Id;
  readonly event: ColonyEvent;
}

/** An observer: who reads, in which role. Learners' readings are flagged and never mixed in unless accepted. */
export interface Observer {
  readonly id: Id;
  readonly name: string;
  readonly role: 'keeper' | 'helper' | 'learner';
}

export interface Contact {
  readonly role: 'authority' | 'mentor' | 'vet' | 'emergency' | 'neighbour';
  readonly name: string;
  readonly phone: string;
}

export interface ColonyDraft extends HiveDraft, WeatherDraft {
  readonly colonies: Map<Id, Colony>;
  readonly queens: Map<Id, Queen>;
  /** By colony, oldest first. */
  readonly reigns: Map<Id, Reign[]>;
  readonly visits: Map<Id, Visit>;
  /** Visit ids by colony, oldest first. */
  readonly visitsOf: Map<Id, Id[]>;
  readonly events: Map<Id, DatedEvent[]>;
  readonly observers: Map<Id, Observer>;
  readonly contacts: Map<Contact['role'], Contact>;
  readonly notes: { readonly entry: Entry; readonly text: string; readonly about: Id | null }[];
  /** Figure overrides, newest last. */
  readonly overrides: {
    readonly key: string;
    readonly value: number;
    readonly low: number;
    readonly high: number;
    readonly entry: Id;
  }[];
  readonly issued: {
    readonly entry: Id;
    readonly day: Day;
    readonly colony: Id;
    readonly kind: 'advice' | 'forecast';
    readonly body: unknown;
  }[];
}

export type ColonyState = Readonly<ColonyDraft>;

export function emptyColonies(): ColonyDraft {
  return {
    ...emptyHives(),
    ...emptyWeather(),
    colonies: new Map(),
    queens: new Map(),
    reigns: new Map(),
    visits: new Map(),
    visitsOf: new Map(),
    events: new Map(),
    observers: new Map(),
    contacts: new Map(),
    notes: [],
    overrides: [],
    issued: [],
  };
}
