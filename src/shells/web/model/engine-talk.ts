/** The talk with one worker: questions by number, answers in any order, and only those entries sent that it has not yet. */
import type { Entry, Id } from '../../../journal/entry.ts';
import type { EngineAnswer, EngineQuestion } from './shown.ts';

/** A question without its number. */
export type Asked = EngineQuestion extends infer Q ? (Q extends EngineQuestion ? Omit<Q, 'number'> : never) : never;

export interface EngineTalk {
  readonly warm: () => void;
  /** Rejects when the worker stops; the next question starts a new one. */
  readonly ask: <T>(question: Asked) => Promise<T>;
  /** What is to go with the next question that takes entries; it counts as sent. */
  readonly notYetSent: (entries: readonly Entry[]) => { readonly afresh: boolean; readonly entries: readonly Entry[] };
}

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

export function engineTalk(start: () => Worker): EngineTalk {
  let worker: Worker | null = null;
  let sent = nothingSent;
  let asked = 0;
  const askers = new Map<number, Asker>();
  const awake = (): Worker => {
    if (worker !== null) return worker;
    const made = start();
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
  };
  return {
    warm: () => void awake(),
    ask: <T>(question: Asked) => {
      const engine = awake();
      const number = ++asked;
      return new Promise<T>((done, failed) => {
        askers.set(number, { done: done as (answer: unknown) => void, failed });
        engine.postMessage({ ...question, number });
      });
    },
    notYetSent: (entries) => {
      const goesOn =
        worker !== null &&
        sent.count > 0 &&
        entries.length >= sent.count &&
        entries[0]?.id === sent.first &&
        entries[sent.count - 1]?.id === sent.last;
      const fresh = goesOn ? entries.slice(sent.count) : entries;
      sent = { count: entries.length, first: entries[0]?.id, last: entries.at(-1)?.id };
      return { afresh: !goesOn, entries: fresh };
    },
  };
}
