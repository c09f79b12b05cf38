/**
 * The engine beside the screens: entries and a day in, a Picture out, worked out in a worker so that
 * no tap waits for it. The worker keeps the entries that it has been given; only new ones are sent.
 */
import type { Entry, Id } from '../../../journal/entry.ts';
import type { ForecastRecord } from '../../../colony/record.ts';
import type { ColonyView, FilmFrame } from '../../../colony/view.ts';
import type { Day } from '../../../numbers/day.ts';
import type { Manner } from '../../../words/say.ts';
import type { EngineAnswer, EngineQuestion, HistoryPoint, Issued, ReadFile, Shown } from './shown.ts';

interface Asker {
  readonly done: (answer: unknown) => void;
  readonly failed: (error: Error) => void;
}

interface Sent {
  readonly count: number;
  readonly first: Id | undefined;
  readonly last: Id | undefined;
}

const nothingSent: Sent = { count: 0, first: undefined, last: undefined };
let worker: Worker | null = null;
let sent = nothingSent;
let asked = 0;
const askers = new Map<number, Asker>();

/** Loads the engine beside the rest, so that it stands ready when the journal has been read. */
export function warmEngine(): void {
  worker ??= start();
}

/** What is believed on a day, by these entries. Fails when the engine does; the entries are not harmed by that. */
export function computePicture(entries: readonly Entry[], day: Day): Promise<Shown> {
  return ask<Shown>({ number: ++asked, ask: 'picture', day, ...notYetSent(entries) });
}

/** Sends entries ahead while more are still being read from disk, so that the picture need not wait for all of it at once. */
export function prepare(entries: readonly Entry[]): void {
  const news = notYetSent(entries);
  // Should the engine stop, the next picture sends everything again and says so.
  if (news.entries.length > 0) void ask<null>({ number: ++asked, ask: 'keep', ...news }).catch(() => undefined);
}

function notYetSent(entries: readonly Entry[]): { readonly afresh: boolean; readonly entries: readonly Entry[] } {
  const goesOn =
    worker !== null &&
    sent.count > 0 &&
    entries.length >= sent.count &&
    entries[0]?.id === sent.first &&
    entries[sent.count - 1]?.id === sent.last;
  const fresh = goesOn ? entries.slice(sent.count) : entries;
  sent = { count: entries.length, first: entries[0]?.id, last: entries.at(-1)?.id };
  return { afresh: !goesOn, entries: fresh };
}

/** What was believed of a colony at the end of a day, by the entries of the last picture; null before it began. */
export function pointOf(colony: Id, day: Day): Promise<HistoryPoint | null> {
  return ask<HistoryPoint | null>({ number: ++asked, ask: 'point', colony, day });
}

/** A colony as it is believed to be on any day, by the entries of the last picture; null before it began. */
export function viewOn(colony: Id, day: Day): Promise<ColonyView | null> {
  return ask<ColonyView | null>({ number: ++asked, ask: 'view', colony, day });
}

/** Advice and forecast of a colony by the entries of the last picture, as bodies of entries. */
export function issuedFor(colony: Id, day: Day, manner: Manner): Promise<Issued> {
  return ask<Issued>({ number: ++asked, ask: 'issued', colony, day, manner });
}

/** The strips of a colony's film that the last picture left out, oldest first. */
export function earlierFilm(colony: Id): Promise<readonly FilmFrame[]> {
  return ask<readonly FilmFrame[]>({ number: ++asked, ask: 'film', colony });
}

/** How often forecasts were right, by the entries of the last picture; null stands for all colonies, or all years. */
export function recordFor(colony: Id | null, year: number | null): Promise<ForecastRecord> {
  return ask<ForecastRecord>({ number: ++asked, ask: 'record', colony, year });
}

/** The entries of a file of JSON lines, and every line that is none. */
export function readEntries(text: string): Promise<ReadFile> {
  return ask<ReadFile>({ number: ++asked, ask: 'read', text });
}

function ask<T>(question: EngineQuestion): Promise<T> {
  const engine = worker ?? start();
  return new Promise<T>((done, failed) => {
    askers.set(question.number, { done: done as (answer: unknown) => void, failed });
    engine.postMessage(question);
  });
}

function start(): Worker {
  const made = new Worker(new URL('../worker/engine-worker.ts', import.meta.url), { type: 'module' });
  made.onmessage = ({ data }: MessageEvent<EngineAnswer>) => {
    const asker = askers.get(data.number);
    askers.delete(data.number);
    if (data.ok) asker?.done(data.answer);
    else asker?.failed(new Error(data.fault));
  };
  made.onerror = (event) => {
    for (const asker of askers.values()) asker.failed(new Error(event.message));
    askers.clear();
    sent = nothingSent;
    worker = null;
    made.terminate();
  };
  worker = made;
  return made;
}
