/**
 * The engine beside the screens: entries and a day in, a Picture out, worked out in a worker so that no tap waits
 * for it; and the model of each colony in a second one, so that no picture waits for the model.
 */
import type { Foreseen, ForeseenColony, KeptColony } from '../../../apiary/foresee.ts';
import type { ColonyEffect, OwnFigure } from '../../../apiary/override-effect.ts';
import type { ForecastRecord } from '../../../colony/record.ts';
import type { ColonyView, FilmFrame } from '../../../colony/view.ts';
import type { Entry, Id } from '../../../journal/entry.ts';
import type { NoFit } from '../../../journal/no-fit.ts';
import type { Day } from '../../../numbers/day.ts';
import type { Manner } from '../../../words/say.ts';
import { engineTalk } from './engine-talk.ts';
import type { HistoryPoint, Issued, ReadFile, Shown } from './shown.ts';

const front = engineTalk(start);
const model = engineTalk(start);

/** Loads the engine beside the rest, so that it stands ready when the journal has been read. */
export function warmEngine(): void {
  front.warm();
}

/** What is believed on a day, by these entries. Fails when the engine does; the entries are not harmed by that. */
export function computePicture(entries: readonly Entry[], day: Day, told: readonly Foreseen[]): Promise<Shown> {
  return front.ask<Shown>({ ask: 'picture', day, told, ...front.notYetSent(entries) });
}

/** Sends entries ahead while more are still being read from disk, so that the picture need not wait for all of it at once. */
export function prepare(entries: readonly Entry[]): void {
  const news = front.notYetSent(entries);
  // Should the engine stop, the next picture sends everything again and says so.
  if (news.entries.length > 0) void front.ask<null>({ ask: 'keep', ...news }).catch(() => undefined);
}

/** What the model foresees of a colony by these entries, from what was kept of it; null when it has ended. */
export async function foresee(
  entries: readonly Entry[],
  day: Day,
  colony: Id,
  kept: KeptColony | null,
): Promise<ForeseenColony | null> {
  const news = model.notYetSent(entries);
  if (news.entries.length > 0) await model.ask<null>({ ask: 'keep', ...news });
  return model.ask<ForeseenColony | null>({ ask: 'foresee', colony, day, kept });
}

/** What was believed of a colony at the end of a day, by the entries of the last picture; null before it began. */
export function pointOf(colony: Id, day: Day): Promise<HistoryPoint | null> {
  return front.ask<HistoryPoint | null>({ ask: 'point', colony, day });
}

/** A colony as it is believed to be on any day, by the entries of the last picture; null before it began. */
export function viewOn(colony: Id, day: Day): Promise<ColonyView | null> {
  return front.ask<ColonyView | null>({ ask: 'view', colony, day });
}

/** What a figure of the keeper's own would change, by the entries of the last picture. */
export function effectOf(own: OwnFigure, day: Day): Promise<readonly ColonyEffect[]> {
  return front.ask<readonly ColonyEffect[]>({ ask: 'effect', own, day });
}

/** Advice and forecast of a colony by the entries of the last picture, as bodies of entries. */
export function issuedFor(colony: Id, day: Day, manner: Manner, foreseen: Foreseen | null): Promise<Issued> {
  return front.ask<Issued>({ ask: 'issued', colony, day, manner, foreseen });
}

/** The strips of a colony's film that the last picture left out, oldest first. */
export function earlierFilm(colony: Id): Promise<readonly FilmFrame[]> {
  return front.ask<readonly FilmFrame[]>({ ask: 'film', colony });
}

/** How often forecasts were right, by the entries of the last picture; null stands for all colonies, or all years. */
export function recordFor(colony: Id | null, year: number | null): Promise<ForecastRecord> {
  return front.ask<ForecastRecord>({ ask: 'record', colony, year });
}

/** Entries that do not fit with the rest, with what brought it about, by the entries of the last picture. */
export function noFitting(): Promise<readonly NoFit[]> {
  return front.ask<readonly NoFit[]>({ ask: 'no fit' });
}

/** Entries that fit by the last picture and would not fit any more with one more. */
export function newlyUnfitWith(more: Entry): Promise<readonly Id[]> {
  return front.ask<readonly Id[]>({ ask: 'newly unfit', more });
}

/** The entries of a file of JSON lines, and every line that is none. */
export function readEntries(text: string): Promise<ReadFile> {
  return front.ask<ReadFile>({ ask: 'read', text });
}

function start(): Worker {
  return new Worker(new URL('../worker/engine-worker.ts', import.meta.url), { type: 'module' });
}
