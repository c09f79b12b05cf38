/** What the worker and the screens say to each other: plain data, safe to store and to send. */
import type { Picture } from '../../../apiary.ts';
import type { Foreseen, ForeseenColony, KeptColony } from '../../../apiary/foresee.ts';
import type { ColonyEffect, OwnFigure } from '../../../apiary/override-effect.ts';
import type { MinutesDay, OpeningHours } from '../../../apiary/round-day.ts';
import type { ForecastRecord } from '../../../colony/record.ts';
import type { ColonyView, FilmFrame } from '../../../colony/view.ts';
import type { ReaderBias } from '../../../colony/reader-pairs.ts';
import type { Contact, Observer } from '../../../colony/state.ts';
import type { Ink } from '../../../hive/contents.ts';
import type { Hive, Measurement } from '../../../hive/state.ts';
import type { Entry, Id } from '../../../journal/entry.ts';
import type { NoFit } from '../../../journal/no-fit.ts';
import type { Day } from '../../../numbers/day.ts';
import type { Range } from '../../../numbers/range.ts';
import type { Issue } from '../../../numbers/result.ts';
import type { Manner } from '../../../words/say.ts';
import type { Trough } from '../../../sheets/taper.ts';

/** What the journal says beside the Picture: people, boxes, own figures. */
export interface Aside {
  readonly observers: readonly Observer[];
  /** How readers differ where they read the same comb on the same day. */
  readonly biases?: readonly ReaderBias[];
  readonly contacts: readonly Contact[];
  readonly hives: readonly Hive[];
  /** Inside measures of each hive in mm, by id: what the drawings need. */
  readonly troughs: Readonly<Record<Id, Trough>>;
  readonly measurements: readonly Measurement[];
  readonly overrides: readonly {
    readonly key: string;
    readonly value: number;
    readonly low: number;
    readonly high: number;
    readonly entry: Id;
  }[];
  /** Names of everything that has one, by id: for the sentences of the journal. */
  readonly names: Readonly<Record<Id, string>>;
  /** The reign in force of each colony. */
  readonly queens: Readonly<Record<Id, { readonly queen: Id; readonly mark: string | null }>>;
  /** Strips of each colony's film in all; the Picture that is sent holds the last few, the rest is asked for. */
  readonly filmLengths: Readonly<Record<Id, number>>;
  /** Entries that are taken back. */
  readonly struck: readonly Id[];
  /** Corrected entries as they now stand, by id. */
  readonly amended: Readonly<Record<Id, Entry>>;
  /** Entries that two people corrected without knowing of each other; the last correction is used until it is settled. */
  readonly conflicts: readonly { readonly target: Id; readonly amendments: readonly Id[] }[];
  readonly notUnderstood: readonly Id[];
}

/** What is done in so many minutes. */
export interface DayPlan extends MinutesDay {
  readonly minutes: number;
}

export interface RoundDay {
  /** Hours that suit opening by the temperatures typed; null when none were. */
  readonly hours: OpeningHours | null;
  readonly plans: readonly DayPlan[];
}

export interface Shown {
  readonly picture: Picture;
  readonly aside: Aside;
  readonly roundDay: RoundDay;
}

/** Strips that are sent with a Picture: ten years of thirty hives would be too heavy to send and to keep. */
export const filmAtOnce = 6;

/** The minutes that the keeper can choose from. */
export const minuteChoices = [15, 30, 60, 90, 120] as const;

/** What was believed of a colony on the day of one of its visits. */
export interface HistoryPoint {
  readonly day: Day;
  readonly adults: Range;
  readonly brood: Range;
  /** Sealed worker brood, about to emerge or not. */
  readonly sealed: Range;
  readonly honeyKg: Range;
  /** The weakest ink in it: seen only when all bars were opened. */
  readonly ink: Ink;
}

export type EngineQuestion =
  /** Entries sent ahead of the question for a picture. */
  | { readonly number: number; readonly ask: 'keep'; readonly afresh: boolean; readonly entries: readonly Entry[] }
  /** `afresh`: forget the entries given before. */
  | {
      readonly number: number;
      readonly ask: 'picture';
      readonly day: Day;
      /** What the model told of colonies on that day, as far as it stands. */
      readonly told: readonly Foreseen[];
      readonly afresh: boolean;
      readonly entries: readonly Entry[];
    }
  | { readonly number: number; readonly ask: 'point'; readonly day: Day; readonly colony: Id }
  /** A colony as it is believed to be on another day than the picture's, without its film. */
  | { readonly number: number; readonly ask: 'view'; readonly day: Day; readonly colony: Id }
  /** Advice and forecast of a colony as bodies of entries, by the last picture. */
  | {
      readonly number: number;
      readonly ask: 'issued';
      readonly day: Day;
      readonly colony: Id;
      readonly manner: Manner;
      readonly foreseen: Foreseen | null;
    }
  /** What the model foresees of a colony, from what was kept of it. */
  | { readonly number: number; readonly ask: 'foresee'; readonly day: Day; readonly colony: Id; readonly kept: KeptColony | null }
  /** The earlier strips of a colony's film, as the last picture had them. */
  | { readonly number: number; readonly ask: 'film'; readonly colony: Id }
  /** How often forecasts were right, by the entries of the last picture; null stands for all colonies, or all years. */
  | { readonly number: number; readonly ask: 'record'; readonly colony: Id | null; readonly year: number | null }
  /** What a figure of the keeper's own would change, by the entries of the last picture; nothing is kept. */
  | { readonly number: number; readonly ask: 'effect'; readonly day: Day; readonly own: OwnFigure }
  /** Entries that do not fit with the rest, and since which correction, by the entries of the last picture. */
  | { readonly number: number; readonly ask: 'no fit' }
  /** Entries that would not fit any more with one more. */
  | { readonly number: number; readonly ask: 'newly unfit'; readonly more: Entry }
  /** Reads a file of entries; nothing is kept. */
  | { readonly number: number; readonly ask: 'read'; readonly text: string };

export interface Issued {
  readonly advice: unknown;
  readonly forecast: unknown;
}

export interface ReadFile {
  readonly entries: readonly Entry[];
  /** What cannot be kept, line by line. */
  readonly faults: readonly Issue[];
  /** What is kept but worth a look. */
  readonly notes: readonly Issue[];
}

export type EngineValue =
  | Shown
  | ColonyView
  | readonly FilmFrame[]
  | readonly ColonyEffect[]
  | HistoryPoint
  | ForecastRecord
  | ReadFile
  | Issued
  | ForeseenColony
  | readonly NoFit[]
  | readonly Id[]
  | null;

export type EngineAnswer =
  | { readonly number: number; readonly ok: true; readonly answer: EngineValue }
  | { readonly number: number; readonly ok: false; readonly fault: string };
