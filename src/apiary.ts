/**
 * The front door: the journal and a day in; a Picture out. All screens and commands show Pictures and
 * nothing else, so that phone, laptop, paper and terminal can never disagree.
 */
import { advise } from './advice/advise.ts';
import type { Advice } from './advice/advice.ts';
import { planRound, type Stop } from './advice/plan.ts';
import { allKinds } from './apiary/kinds.ts';
import { bookOf } from './colony/book-of.ts';
import { modelOutlook } from './colony/engine/outlook-of.ts';
import type { Foreseen } from './colony/foreseen.ts';
import { type ColonyState, emptyColonies } from './colony/state.ts';
import type { ColonyView } from './colony/view.ts';
import { viewOf } from './colony/view-of.ts';
import type { FigureBook } from './figures/book.ts';
import type { Conflict } from './journal/correct.ts';
import type { Entry, Id } from './journal/entry.ts';
import { type AwayComb, awayCombs } from './hive/away-combs.ts';
import { type Widths, widthsOf } from './hive/widths.ts';
import { foldJournal } from './journal/fold.ts';
import type { Day } from './numbers/day.ts';
import type { Issue } from './numbers/result.ts';
import type { DayWeather } from './weather/state.ts';

export type { Stop } from './advice/plan.ts';
export { allKinds } from './apiary/kinds.ts';

/** The demo yard carries its own today. */
export const demoDay: Day = '2014-05-16';

/** The folded journal: everything that is derived from it starts here. */
export interface Apiary {
  readonly state: ColonyState;
  readonly book: FigureBook;
  readonly entries: number;
  readonly timeZone: string | null;
  /** Entries of kinds or versions that this program does not understand; kept and passed on whole. */
  readonly notUnderstood: readonly Entry[];
  /** Entries that were taken back. */
  readonly struck: readonly Id[];
  /** Corrections of one entry whose writers did not know of each other. */
  readonly conflicts: readonly Conflict[];
  readonly faults: readonly Issue[];
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
  /** Every colony that had begun by the day, ended ones last. */
  readonly colonies: readonly ColonyView[];
  readonly advice: readonly Advice[];
  readonly hives: readonly {
    readonly id: Id;
    readonly name: string;
    readonly bars: number;
    readonly colonies: readonly Id[];
    readonly widths: Widths;
  }[];
  /** Combs that hang nowhere. */
  readonly away: readonly AwayComb[];
  readonly faults: readonly Issue[];
  readonly conflicts: readonly Conflict[];
  readonly notUnderstood: number;
}

/** Folds the journal, to the end of the day `until` when one is given. */
export function readJournal(entries: readonly Entry[], until?: Day): Apiary {
  const folded = foldJournal(entries, allKinds, emptyColonies, until === undefined ? {} : { until });
  const [yard] = folded.draft.yards.values();
  return {
    state: folded.draft,
    book: bookOf(folded.draft),
    entries: entries.length,
    timeZone: yard?.timeZone ?? null,
    notUnderstood: folded.notUnderstood,
    struck: folded.struck,
    conflicts: folded.conflicts,
    faults: folded.faults,
  };
}

/**
 * What is believed of the whole yard on a day, and what is advised. The journal must be folded to that day.
 * `frames`: strips of each colony's film, the last ones; all when absent. `told`: what the model tells of
 * colonies on that day, where it has been worked out; of the others plain rules speak.
 */
export function pictureOf(apiary: Apiary, day: Day, frames = Infinity, told: ReadonlyMap<Id, Foreseen> = new Map()): Picture {
  const { state, book } = apiary;
  const outlook = modelOutlook(told);
  const views = [...state.colonies.keys()]
    .map((colony) => viewOf(state, colony, day, book, outlook, frames))
    .sort((a, b) => Number(a.ended !== null) - Number(b.ended !== null) || (a.name < b.name ? -1 : 1));
  const living = views.filter((view) => view.ended === null);
  const [yard = null] = state.yards.values();
  const weather = state.weather.get(day) ?? null;
  const authority = state.contacts.get('authority') ?? null;
  const facts = { book, weather, latitude: yard?.latitude ?? null, authority };
  const advice = living.flatMap((view) => advise({ ...facts, view }).kept);
  return {
    day,
    yard,
    weather,
    round: planRound(living, advice, day, book),
    colonies: views,
    advice,
    hives: [...state.hives.values()].map((hive) => ({
      id: hive.id,
      name: hive.name,
      bars: hive.bars,
      widths: widthsOf(state, hive),
      colonies: living.filter((view) => view.hive === hive.id).map((view) => view.colony),
    })),
    away: awayCombs(state),
    faults: apiary.faults,
    conflicts: apiary.conflicts,
    notUnderstood: apiary.notUnderstood.length,
  };
}
