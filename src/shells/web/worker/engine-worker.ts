/** The engine's side of the talk: keeps the entries, folds them, makes the Picture of the day that is asked for. */
import * as z from 'zod/mini';
import { type Apiary, pictureOf, readJournal } from '../../../apiary.ts';
import type { Foreseen, ForeseenColony, KeptColony } from '../../../apiary/foresee.ts';
import { allKinds } from '../../../apiary/kinds.ts';
import type { ColonyEffect, OwnFigure } from '../../../apiary/override-effect.ts';
import { viewOf } from '../../../apiary/views.ts';
import { dayOf, type Entry, type Id } from '../../../journal/entry.ts';
import type { Day } from '../../../numbers/day.ts';
import { addTogether } from '../../../numbers/range.ts';
import type { Manner } from '../../../words/say.ts';
import type { ForecastRecord } from '../../../colony/record.ts';
import type { ColonyView, FilmFrame } from '../../../colony/view.ts';
import type { EngineAnswer, EngineQuestion, EngineValue, HistoryPoint, Issued } from '../model/shown.ts';
import { filmAtOnce } from '../model/shown.ts';
import { asideOf } from './aside-of.ts';
import { roundDayOf } from './round-day-of.ts';

z.config({ jitless: true });

interface Self {
  onmessage: ((message: MessageEvent<EngineQuestion>) => void) | null;
  postMessage(answer: EngineAnswer): void;
}

const own = self as unknown as Self;
const ever = '9999-12-31';
let entries: Entry[] = [];
/** The day of the last picture. */
let shown: Day | null = null;
let folded: { readonly until: string; readonly count: number; readonly apiary: Apiary } | null = null;

own.onmessage = ({ data }) => {
  const { number } = data;
  // Nothing is awaited before a picture, so that questions are answered in the order in which they were asked.
  void answerTo(data).then(
    (answer) => own.postMessage({ number, ok: true, answer }),
    (error: unknown) => own.postMessage({ number, ok: false, fault: error instanceof Error ? error.message : String(error) }),
  );
};

async function answerTo(question: EngineQuestion): Promise<EngineValue> {
  if (question.ask === 'read') {
    const { readJournal: readFile } = await import('../../../journal/check-journal.ts');
    const { entries: found, faults, notes } = readFile(question.text, allKinds);
    return { entries: found, faults, notes };
  }
  if (question.ask === 'no fit') return (await import('../../../apiary/not-fitting.ts')).notFitting(entries);
  if (question.ask === 'newly unfit') return (await import('../../../apiary/not-fitting.ts')).newlyUnfit(entries, question.more);
  if (question.ask === 'film') return earlierFilm(question.colony);
  if (question.ask === 'issued') return issued(question.colony, question.day, question.manner, question.foreseen);
  if (question.ask === 'foresee') return foresee(question.colony, question.day, question.kept);
  if (question.ask === 'point') return point(question.colony, question.day);
  if (question.ask === 'view') return viewOn(question.colony, question.day);
  if (question.ask === 'effect') return effect(question.own, question.day);
  if (question.ask === 'record') return record(question.colony, question.year);
  if (question.afresh) {
    entries = [];
    folded = null;
  }
  for (const entry of question.entries) entries.push(entry);
  if (question.ask === 'keep') return null;
  const apiary = apiaryOn(question.day);
  const told = new Map(question.told.map((one) => [one.colony, one]));
  const picture = pictureOf(apiary, question.day, filmAtOnce, told);
  shown = question.day;
  return { picture, aside: asideOf(apiary, entries, picture), roundDay: roundDayOf(apiary, picture) };
}

/** The strips that the last picture left out. */
function earlierFilm(colony: Id): readonly FilmFrame[] {
  if (shown === null) return [];
  const { state, book } = apiaryOn(shown);
  return viewOf(state, colony, shown, book).film.slice(0, -filmAtOnce);
}

/** The journal folded to the end of a day; the last one is kept, because it is asked for again at once. */
function apiaryOn(day: Day): Apiary {
  const until = entries.some((entry) => dayOf(entry.at) > day) ? day : ever;
  if (folded?.count !== entries.length || folded.until !== until) {
    folded = {
      until,
      count: entries.length,
      apiary: until === ever ? readJournal(entries) : readJournal(entries, day),
    };
  }
  return folded.apiary;
}

/** The catalogue comes with this, which no picture needs. */
async function issued(colony: Id, day: Day, manner: Manner, foreseen: Foreseen | null): Promise<Issued> {
  const { adviceIssued, digestOf, forecastIssued } = await import('../../../apiary/issued.ts');
  const apiary = apiaryOn(day);
  const digest = digestOf(entries);
  return {
    advice: adviceIssued(
      pictureOf(apiary, day, 0, foreseen === null ? new Map() : new Map([[colony, foreseen]])),
      colony,
      digest,
      manner,
    ),
    forecast: forecastIssued(apiary, colony, day, digest, foreseen),
  };
}

/** The model comes with this, which the picture needs not. */
async function foresee(colony: Id, day: Day, kept: KeptColony | null): Promise<ForeseenColony | null> {
  const { foreseeColony } = await import('../../../apiary/foresee.ts');
  return foreseeColony(apiaryOn(day), colony, day, kept);
}

/** Past days by what is known now; days ahead by all that was read so far. */
function viewOn(colony: Id, day: Day): ColonyView | null {
  const then = readJournal(entries, day);
  return then.state.colonies.has(colony) ? { ...viewOf(then.state, colony, day, then.book), film: [] } : null;
}

/** No picture needs what comes with it. */
async function effect(own: OwnFigure, day: Day): Promise<readonly ColonyEffect[]> {
  const { overrideEffect } = await import('../../../apiary/override-effect.ts');
  return overrideEffect(apiaryOn(day), day, own);
}

/** What was believed of a colony at the end of one of its days, by all that is known now. */
function point(colony: Id, day: Day): HistoryPoint | null {
  const then = readJournal(entries, day);
  if (!then.state.colonies.has(colony)) return null;
  const { adults, honeyKg, egg, larva, sealed, emerging, drone } = viewOf(then.state, colony, day, then.book).totals;
  const brood = addTogether([egg, larva, sealed, emerging, drone].map((total) => total.total));
  const capped = addTogether([sealed.total, emerging.total]);
  return { day, adults: adults.total, brood, sealed: capped, honeyKg: honeyKg.total, ink: adults.ink };
}

/** By the last picture's day; before there is one, by all that was noted. No picture needs what comes with it. */
async function record(colony: Id | null, year: number | null): Promise<ForecastRecord> {
  const { recordOf } = await import('../../../apiary/record.ts');
  return recordOf(apiaryOn(shown ?? ever), colony, year);
}
