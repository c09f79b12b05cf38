/** The working memory of one yard's model, and the few steps on it that everything else is made of. */
import type { Foreseen } from '../../../apiary/foresee.ts';
import type { Entry, Id } from '../../../journal/entry.ts';
import type { Around, YardState } from './yard-state.ts';
import type { YardStore } from './yard-store.ts';

export interface Work {
  readonly around: Around;
  readonly listeners: Set<() => void>;
  /** Makes a new picture of what the state holds now. */
  readonly picture: (work: Work) => Promise<void>;
  state: YardState;
  store: YardStore | null;
  /** How far the store has been read. */
  cursor: number;
  /** Screens that must not wait for the engine. */
  holds: number;
  /** Pictures asked for; an answer to an older question is dropped. */
  asked: number;
  /** Entries that had come from the server when it last spoke. */
  pulled: number;
  timer: ReturnType<typeof setTimeout> | null;
  /** Colonies whose visit was closed on this device since the last picture. */
  readonly justVisited: Set<Id>;
  /** What the model told of colonies, as far as it still stands. */
  readonly told: Map<Id, Foreseen>;
}

const settleMs = 60;

export function change(work: Work, part: Partial<YardState>): void {
  work.state = { ...work.state, ...part };
  for (const listener of work.listeners) listener();
}

/** A new picture soon, and one for many changes; none while a visit is on the screen. */
export function schedule(work: Work): void {
  if (work.holds > 0) return;
  if (work.timer !== null) clearTimeout(work.timer);
  work.timer = setTimeout(() => {
    work.timer = null;
    void work.picture(work);
  }, settleMs);
}

export function noteVisit(work: Work, entry: Entry): void {
  const { colony } = entry.body as { readonly colony?: unknown };
  if (entry.kind !== 'visit' || entry.by !== work.state.observer || !entry.at.startsWith(work.state.today)) return;
  if (typeof colony === 'string') work.justVisited.add(colony);
}

export function setObserver(work: Work, observer: Id): void {
  if (work.state.book !== null) work.around.keepObserver(work.state.book, observer);
  change(work, { observer });
}
