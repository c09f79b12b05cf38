/** The session as React sees it, and the taps with what the world adds to them: ids, moments, words. */
import { createContext, useContext, useMemo, useState, useSyncExternalStore } from 'react';
import type { ColonyView } from '../../../colony/view.ts';
import { assert } from '../../../numbers/assert.ts';
import { text } from '../../../words/text.ts';
import type { BarDraft, Draft, Phase } from './draft.ts';
import type { VisitPorts } from './ports.ts';
import { closingSentence } from './sentence.ts';
import { createSession, type Session, type SessionState } from './session.ts';
import { downRefused, type Tap } from './tap.ts';
import { readingOf } from './to-entries.ts';

export interface Hand {
  readonly ports: VisitPorts;
  readonly view: ColonyView;
  readonly session: Session;
  readonly tap: (by: Tap) => void;
  /** Of the bar that is in the hand when it is tapped. */
  readonly down: () => void;
  readonly notOpened: () => void;
  readonly undo: () => void;
  readonly go: (place: number) => void;
  readonly fell: (place: number) => void;
  readonly toPhase: (phase: Exclude<Phase, 'done'>) => void;
  readonly close: (draft: Draft) => void;
}

const HandContext = createContext<Hand | null>(null);
export const HandProvider = HandContext.Provider;

export function useHand(): Hand {
  const hand = useContext(HandContext);
  assert(hand, 'a part of the visit stands inside the HandProvider');
  return hand;
}

export function useSession(ports: VisitPorts, key: string): { readonly session: Session; readonly state: SessionState } {
  const [session] = useState(() => createSession(ports, key));
  const state = useSyncExternalStore(session.subscribe, session.state);
  return { session, state };
}

export function useNewHand(ports: VisitPorts, view: ColonyView, session: Session): Hand {
  return useMemo(() => handOf(ports, view, session), [ports, view, session]);
}

function handOf(ports: VisitPorts, view: ColonyView, session: Session): Hand {
  const tap = (by: Tap) => void session.tap(by);
  const { newId, manner } = ports;
  const draftNow = () => {
    const state = session.state();
    return state.phase === 'open' ? state.draft : null;
  };
  const stamp = () => {
    const { noted, at } = ports.now();
    return { noted, at };
  };
  const noteOf = (bar: BarDraft) => text('visiting.note-text', { place: String(bar.place), text: bar.note.trim() }, manner);
  return {
    ports,
    view,
    session,
    tap,
    down: () => {
      const draft = draftNow();
      const bar = draft?.bar ?? null;
      if (draft === null || bar === null || downRefused(bar) !== null) return;
      const { place, seen } = bar;
      const reading = readingOf(draft, place, seen);
      const expected = ports.expect(view, reading);
      const before = draft.read.filter((row) => row.place !== place).map((row) => readingOf(draft, row.place, row.seen));
      const far = draft.foretold === null ? null : ports.far(draft.foretold, place, [...before, reading]);
      const words = { note: noteOf(bar), why: text('visiting.correct-why', {}, manner) };
      tap({ kind: 'down', entry: bar.entry, next: newId(), noteId: newId(), stamp: stamp(), words, expected, far });
    },
    notOpened: () => {
      const bar = draftNow()?.bar ?? null;
      if (bar === null) return;
      tap({
        kind: 'not opened',
        entry: bar.entry,
        next: newId(),
        stamp: stamp(),
        words: { why: text('visiting.void-why', {}, manner) },
      });
    },
    undo: () => tap({ kind: 'undo', next: newId(), stamp: stamp(), words: { why: text('visiting.fell-why', {}, manner) } }),
    go: (place) => tap({ kind: 'go', place, next: newId() }),
    fell: (place) =>
      tap({
        kind: 'fell',
        place,
        id: newId(),
        stamp: stamp(),
        words: { note: text('visiting.fell-note', { place: String(place) }, manner) },
      }),
    toPhase: (phase) => tap({ kind: 'phase', phase, next: newId() }),
    close: (draft) =>
      tap({
        kind: 'close',
        id: newId(),
        stamp: stamp(),
        smokeMinutes: smokeMinutes(draft, ports.now().ms),
        sentence: closingSentence(draft, view.name, manner),
      }),
  };
}

const minuteMs = 60_000;
const longestSmoke = 600;

/** Minutes since the smoker was lit; null when it was not, or so long ago that it was forgotten. */
export function smokeMinutes(draft: Pick<Draft, 'smokeSince'>, nowMs: number): number | null {
  if (draft.smokeSince === null) return null;
  const minutes = Math.max(0, Math.floor((nowMs - draft.smokeSince) / minuteMs));
  return minutes > longestSmoke ? null : minutes;
}
