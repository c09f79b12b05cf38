/** A rule: one file, one record, one function from what is believed of a colony to advice, or none. */
import type { ColonyView } from '../colony/view.ts';
import type { FigureBook } from '../figures/book.ts';
import type { DayWeather } from '../weather/state.ts';
import type { Advice } from './advice.ts';

export interface Facts {
  readonly view: ColonyView;
  readonly book: FigureBook;
  /** As typed for the view's day; null when nothing was typed. */
  readonly weather: DayWeather | null;
  /** Day length by latitude is the season's; null when the yard has no latitude. */
  readonly latitude: number | null;
  /** The authority's contact as the keeper entered it. */
  readonly authority: { readonly name: string; readonly phone: string } | null;
}

export interface Rule {
  readonly key: string;
  /** What it is for, in a sentence: shown in the handbook. */
  readonly about: string;
  readonly advise: (facts: Facts) => readonly Advice[];
}
