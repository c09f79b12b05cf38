/**
 * What every screen takes the yard from: one hook, one model. `append` answers only when the entries
 * are on disk; the picture follows a little later, and what was last believed stays on the screen
 * until then.
 */
import { createContext, type ReactNode, useContext, useEffect, useMemo, useSyncExternalStore } from 'react';
import type { Picture } from '../../../apiary.ts';
import type { ColonyView } from '../../../colony/view.ts';
import type { At, Entry, Id } from '../../../journal/entry.ts';
import { assert } from '../../../numbers/assert.ts';
import type { Day } from '../../../numbers/day.ts';
import type { Result } from '../../../numbers/result.ts';
import { nowAt, type Note } from './notes.ts';
import type { Book } from './preferences.ts';
import type { YardModel } from './yard-model.ts';
import type { YardState } from './yard-state.ts';
import type { Shelf } from './yard-store.ts';

export interface UsedYard extends YardState {
  /** Entries durable, or the reasons why none of them was stored. */
  readonly append: (notes: readonly Note[]) => Promise<Result<readonly Entry[]>>;
  /** Entries that are whole already, durable in the same way. */
  readonly take: YardModel['take'];
  readonly pair: YardModel['pair'];
  readonly setObserver: (observer: Id) => void;
  readonly drafts: Shelf;
  /** Now as an entry's `at`, in the yard's time; in the demo, the demo's day with the hour of the clock. */
  readonly now: () => At;
  readonly turnTo: (day: Day) => void;
  readonly openBook: (book: Book) => Promise<void>;
}

const YardContext = createContext<YardModel | null>(null);

export function YardProvider({ model, children }: { readonly model: YardModel; readonly children: ReactNode }) {
  return <YardContext value={model}>{children}</YardContext>;
}

export function useYard(): UsedYard {
  const model = useYardModel();
  const state = useSyncExternalStore(model.subscribe, model.state);
  return useMemo(
    () => ({
      ...state,
      append: model.append,
      take: model.take,
      pair: model.pair,
      setObserver: model.setObserver,
      drafts: model.drafts,
      now: () => nowAt({ today: state.today, timeZone: state.picture?.yard?.timeZone ?? null }),
      turnTo: model.turnTo,
      openBook: model.openBook,
    }),
    [state, model],
  );
}

export function useYardModel(): YardModel {
  const model = useContext(YardContext);
  assert(model, 'a screen stands inside the YardProvider');
  return model;
}

/** The colony as it is believed today; null while the picture is not there yet, or there is none of that id. */
export function useColony(id: Id): ColonyView | null {
  return useYard().picture?.colonies.find((colony) => colony.colony === id) ?? null;
}

/** No new picture is worked out while this is on screen: a tap must not wait for the engine. It is made on leaving. */
export function useQuiet(): void {
  const model = useYardModel();
  useEffect(() => model.holdPicture(), [model]);
}

export type { Picture };
