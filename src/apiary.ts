/**
 * The front door: the journal, a day and a seed in; a Picture out. All screens and commands show
 * Pictures and nothing else, so that phone, laptop, paper and terminal can never disagree.
 */
import type { Advice } from './advice/advice.ts';
import type { ColonyState } from './colony/state.ts';
import type { ColonyView } from './colony/view.ts';
import type { FigureBook } from './figures/book.ts';
import type { Id } from './journal/entry.ts';
import type { Day } from './numbers/day.ts';
import type { Issue } from './numbers/result.ts';
import type { DayWeather } from './weather/state.ts';

/** One stop of the round: a colony, its first advice and the rest. */
export interface Stop {
  readonly colony: Id;
  readonly verb: Advice['verb'];
  /** The advice that decides the verb; null when nothing is due. */
  readonly first: Advice | null;
  readonly more: readonly Advice[];
  /** For "leave shut": the day on which the slip turns up again. */
  readonly turnsUp: Day | null;
}

export interface Picture {
  readonly day: Day;
  readonly yard: {
    readonly id: Id;
    readonly name: string;
    readonly latitude: number | null;
    readonly longitude: number | null;
    readonly timeZone: string;
  } | null;
  readonly weather: DayWeather | null;
  /** The longest need first; ended colonies are not in it. */
  readonly round: readonly Stop[];
  readonly colonies: readonly ColonyView[];
  readonly advice: readonly Advice[];
  readonly hives: readonly {
    readonly id: Id;
    readonly name: string;
    readonly bars: number;
    readonly colonies: readonly Id[];
  }[];
  readonly faults: readonly Issue[];
  /** Entries of kinds or versions that this program does not understand; kept and passed on whole. */
  readonly notUnderstood: number;
}

/** The folded journal: everything that is derived from it starts here. */
export interface Apiary {
  readonly state: ColonyState;
  readonly book: FigureBook;
  readonly entries: number;
  readonly notUnderstood: number;
}
