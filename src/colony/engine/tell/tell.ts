/**
 * All that the model tells of a colony on a day, from where its particles were left: put together from the parts
 * beside this file. What was foreseen of the last visit comes in with it, taken before the visit was seen.
 */
import type { DayBelief, Foreseen, Look, MovedComb, Surprise } from '../../foreseen.ts';
import { type FigureBook, value } from '../../../figures/book.ts';
import type { Id } from '../../../journal/entry.ts';
import { goOn } from '../../../numbers/particle-filter.ts';
import type { EngineSetup, Left, Visited } from '../run.ts';
import { agesOf, turning, turnoverOf } from './ages.ts';
import { type Ahead, comingOf, fewer, furtherOn, liveOn } from './ahead.ts';
import { beliefOn } from './belief.ts';
import { broughtTo } from './brought.ts';
import { forecastsOf } from './forecasts.ts';
import { queenTold } from './queen.ts';

/** Names the model behind a forecast; another gets another name, so that their scores are kept apart. */
export const engineName = 'cohorts 1';

export interface Lived {
  readonly colony: Id;
  readonly digest: string;
  /** After the last visit, or as it began. */
  readonly left: Left;
  readonly visits: readonly Visited[];
  /** Rows of the line up to the last visit. */
  readonly behind: readonly DayBelief[];
  readonly surprises: readonly Surprise[];
  readonly moved: readonly MovedComb[];
}

/** `lookOf` weighs whether opening is worth it, by the days ahead. */
export function tell(
  setup: EngineSetup,
  lived: Lived,
  day: number,
  daysIssued: readonly number[],
  lookOf: (ahead: Ahead) => Look,
  book: FigureBook,
  seed: number,
): Foreseen {
  const c = setup.constants;
  const { left } = lived;
  const today = goOn(setup, left.cloud, Math.max(day, left.cloud.day), seed);
  const horizon = value(book, 'engine-horizon-days');
  const follow = value(book, 'engine-turnover-days');
  const every = value(book, 'engine-line-days');
  const ahead = liveOn(setup, today, horizon, value(book, 'engine-ahead-particles'), every, seed);
  const further = (): Ahead => furtherOn(setup, fewer(ahead, value(book, 'engine-line-particles')), follow, seed);
  const now = beliefOn(c, today, 'between');
  const brought = broughtTo(c, lived.behind);
  return {
    engine: engineName,
    colony: lived.colony,
    day: now.day,
    digest: lived.digest,
    line: [...lived.behind, now, ...ahead.line],
    queen: queenTold(c, ahead, horizon, book),
    ages: agesOf(c, today, brought),
    turnover: turning(ahead, follow) === null ? null : turnoverOf(c, further(), follow, brought),
    coming: comingOf(c, ahead, horizon, value(book, 'engine-least-chance')),
    surprises: lived.surprises,
    moved: lived.moved,
    look: lookOf(ahead),
    forecasts: forecastsOf(setup, ahead, lived.visits, daysIssued, book, seed),
    cloud: {
      particles: today.count,
      effective: left.info?.effective ?? today.count,
      ancestors: left.info?.ancestors ?? today.count,
      visits: left.visits,
    },
  };
}
