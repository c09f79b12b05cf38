/**
 * Advice: what to do, where, within which days and why, as facts only; the sentences are made in
 * `words`. Every number in it is cited: it comes from a figure, a reading, a day of the journal, or
 * is worked out from such.
 */
import type { FigureKey } from '../figures/list.ts';
import type { Id } from '../journal/entry.ts';
import type { Day } from '../numbers/day.ts';
import type { Range } from '../numbers/range.ts';
import type { Window } from '../numbers/window.ts';

/** What the keeper does with the hive: the three verbs, and "no visit" for what is done without opening. */
export type Verb = 'open' | 'glance' | 'leave shut' | 'no visit';

/** A thing that can be done to a colony; what an advice asks for, and what another may forbid. */
export const acts = [
  'open',
  'glance',
  'lift brood',
  'give a bare bar',
  'give several bare bars',
  'spread the brood',
  'cut queen cells',
  'split',
  'unite',
  'requeen',
  'feed',
  'take honey',
  'move combs',
  'look from outside',
  'call the authority',
  'ask someone',
  'test with a comb of eggs',
  'bend comb straight',
  'wait',
  'mark the queen',
] as const;
export type Act = (typeof acts)[number];

/** Where a number comes from. */
export type Cite =
  | { readonly kind: 'figure'; readonly key: FigureKey }
  | { readonly kind: 'entry'; readonly id: Id }
  | { readonly kind: 'worked out'; readonly from: readonly Cite[] };

/** A value that stands in a sentence, with its unit and where it comes from. */
export type Slot =
  | { readonly kind: 'number'; readonly value: number; readonly unit: Unit; readonly cite: Cite }
  | { readonly kind: 'range'; readonly range: Range; readonly unit: Unit; readonly cite: Cite }
  | { readonly kind: 'day'; readonly day: Day; readonly cite: Cite }
  | { readonly kind: 'window'; readonly window: Window; readonly cite: Cite }
  | { readonly kind: 'place'; readonly place: number; readonly cite: Cite }
  | { readonly kind: 'places'; readonly places: readonly number[]; readonly cite: Cite }
  /** A name of the keeper's own (a colony, a hive, a contact). */
  | { readonly kind: 'name'; readonly name: string }
  /** A key of the catalogue, put in as its own words. */
  | { readonly kind: 'term'; readonly key: string };

export type Unit = 'cells' | 'bees' | 'per day' | 'days' | 'kg' | 'bars' | 'degC' | 'of eight' | 'percent' | 'count' | 'minutes';

/** A sentence to be: a key of the catalogue and what stands in its slots. */
export interface Saying {
  readonly key: string;
  readonly slots: Readonly<Record<string, Slot>>;
}

export interface Chance {
  /** 0…1; said in words and out of ten. */
  readonly chance: number;
  /** What it is a chance of. */
  readonly of: Saying;
}

export interface Forbid {
  readonly act: Act;
  readonly window: Window;
  readonly why: Saying;
}

export type CautionKey =
  'stings' | 'smoker' | 'lifting' | 'label and law' | 'infants' | 'suspected illness' | 'local code' | 'learners' | 'ladder';

export interface Advice {
  /** The rule's key, and what makes this one distinct within colony and day. */
  readonly rule: string;
  readonly colony: Id;
  readonly day: Day;
  readonly verb: Verb;
  readonly act: Act;
  /** Bars that it concerns, in the order to lift them; empty when the whole hive. */
  readonly places: readonly number[];
  readonly window: Window;
  /** Verb, place, window in one sentence: the slip's first line. */
  readonly say: Saying;
  readonly reasons: readonly Saying[];
  readonly chance: Chance | null;
  readonly wouldChange: readonly Saying[];
  readonly forbids: readonly Forbid[];
  readonly cautions: readonly CautionKey[];
  /** 0…1: how much is lost by leaving it until after the window; orders the round. */
  readonly weight: number;
}
