/**
 * What the Visit screen asks of the world: a clock, ids, a shelf for the draft, a journal, and what
 * is believed of the colony. The frame hands these in, so that the visit knows neither the store nor
 * the engine, and can be driven by tests.
 */
import type { BarsForetold, FarBar } from '../../../apiary/bar-far.ts';
import type { AwayComb } from '../../../hive/away-combs.ts';
import type { Widths } from '../../../hive/widths.ts';
import type { Surprise } from '../../../apiary/visit-told.ts';
import type { BarView, ColonyView } from '../../../colony/view.ts';
import type { Reading } from '../../../colony/reading.ts';
import type { At, Entry, Id, Instant } from '../../../journal/entry.ts';
import type { Day } from '../../../numbers/day.ts';
import type { Issue } from '../../../numbers/result.ts';
import type { Trough } from '../../../sheets/taper.ts';
import type { Manner } from '../../../words/say.ts';

/** A moment, three ways: as written into entries, and in milliseconds for the smoke timer. */
export interface Moment {
  readonly noted: Instant;
  readonly at: At;
  readonly ms: number;
}

/** What is told of a bar once the keeper has read it, in eighths; null where nothing is known. */
export interface Expected {
  readonly lastTime: { readonly day: Day; readonly brood8: number; readonly food8: number } | null;
  readonly today: { readonly brood8: number; readonly food8: number } | null;
  /** How what was read lies outside what today's belief allows; null when it does not. */
  readonly surprise: Surprise | null;
  /** The outlines to draw over the reading. */
  readonly outlines: { readonly lastTime: BarView | null; readonly today: BarView | null };
}

/** For a bar of which nothing was ever known. */
export const nothingExpected: Expected = {
  lastTime: null,
  today: null,
  surprise: null,
  outlines: { lastTime: null, today: null },
};

export interface VisitPorts {
  readonly yard: Id;
  readonly by: Id;
  readonly today: Day;
  readonly manner: Manner;
  readonly now: () => Moment;
  readonly newId: () => Id;
  /** The draft of the colony's open visit; the promise is kept when it is on disk. */
  readonly loadDraft: (key: string) => Promise<unknown>;
  readonly saveDraft: (key: string, draft: unknown) => Promise<void>;
  readonly deleteDraft: (key: string) => Promise<void>;
  /** Lets what was just shown be painted before work goes on. */
  readonly painted: () => Promise<void>;
  /** Durable and idempotent by id. Null: stored. */
  readonly append: (entries: readonly Entry[]) => Promise<readonly Issue[] | null>;
  /** Asked only for a bar that was read: nothing of it is known to the screen before. */
  readonly expect: (view: ColonyView, reading: Reading) => Expected;
  /** Asked once, before the first bar is lifted. */
  readonly foretell: (view: ColonyView) => BarsForetold;
  /** By all readings of the visit so far, that bar's own among them. */
  readonly far: (foretold: BarsForetold, place: number, readings: readonly Reading[]) => FarBar | null;
  /** How a reading of today looks as a bar of the strip. */
  readonly drawn: (view: ColonyView, reading: Reading) => BarView;
  /** Combs of the yard that hang nowhere, the latest first. */
  readonly away: readonly AwayComb[];
  /** Bars and strips of wood against the trough, before this visit's moves; null when the hive is not in the picture. */
  readonly widths: Widths | null;
  /** The trough as it is drawn. */
  readonly trough: Trough;
  readonly authority: { readonly name: string; readonly phone: string } | null;
}
