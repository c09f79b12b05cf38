/** The taps of the visit with what the world adds to them: ids, moments, words. */
import type { ColonyView } from '../../../colony/view.ts';
import type { DoneWithFallen, FallenComb, Move } from '../../../apiary/visit-terms.ts';
import { text } from '../../../words/text.ts';
import { placeNamed } from './arrangement.ts';
import type { BarDraft, Draft, Phase } from './draft.ts';
import { nothingExpected, type VisitPorts } from './ports.ts';
import { closingSentence } from './sentence.ts';
import type { Session } from './session.ts';
import type { BodyMade } from './tap-body.ts';
import { downRefused, type Tap } from './tap.ts';
import { readingOf, type Stamp } from './to-entries.ts';

export interface Hand {
  readonly ports: VisitPorts;
  readonly view: ColonyView;
  readonly session: Session;
  readonly tap: (by: Tap) => void;
  /** Of the bar that is in the hand when it is tapped, with all that was tapped of it before. */
  readonly down: () => void;
  readonly notOpened: () => void;
  readonly undo: () => void;
  readonly go: (place: number) => void;
  readonly fell: (place: number, what: FallenComb, done: DoneWithFallen) => void;
  readonly move: (move: Move) => void;
  readonly movesBack: (which: 'last' | 'all') => void;
  readonly body: (made: BodyMade) => void;
  readonly bodyBack: () => void;
  readonly toPhase: (phase: Exclude<Phase, 'done'>) => void;
  readonly close: () => void;
}

export function handOf(ports: VisitPorts, view: ColonyView, session: Session): Hand {
  const tap = (by: Parameters<Session['tap']>[0]) => void session.tap(by);
  const { newId, manner } = ports;
  const stamp = () => {
    const { noted, at } = ports.now();
    return { noted, at };
  };
  const ofThisBar = (make: (bar: BarDraft, draft: Draft) => Tap | null) => {
    const state = session.state();
    const entry = state.phase === 'open' ? state.draft.bar?.entry : undefined;
    tap((draft) => (draft.bar === null || draft.bar.entry !== entry ? null : make(draft.bar, draft)));
  };
  return {
    ports,
    view,
    session,
    tap,
    down: () => ofThisBar((bar, draft) => downOf(ports, view, draft, bar, stamp())),
    notOpened: () =>
      ofThisBar(({ entry }) => ({
        kind: 'not opened',
        entry,
        next: newId(),
        stamp: stamp(),
        words: { why: text('visiting.void-why', {}, manner) },
      })),
    undo: () => tap({ kind: 'undo', next: newId(), stamp: stamp(), words: { why: text('visiting.fell-why', {}, manner) } }),
    go: (place) => tap({ kind: 'go', place, next: newId() }),
    fell: (place, what, done) => tap({ kind: 'fell', place, what, done, id: newId(), stamp: stamp() }),
    move: (move) => tap({ kind: 'move', entry: newId(), move, stamp: stamp(), next: newId() }),
    movesBack: (which) =>
      tap(({ moves }) => ({
        kind: 'moves back',
        which,
        ids: moves.map(() => newId()),
        stamp: stamp(),
        words: { why: text('visiting.moves-back-why', {}, manner) },
      })),
    body: (made) => tap({ ...made, entry: newId(), stamp: stamp(), next: newId() }),
    bodyBack: () =>
      tap({ kind: 'body back', id: newId(), stamp: stamp(), why: text('visiting.body-back-why', {}, manner), next: newId() }),
    toPhase: (phase) => tap({ kind: 'phase', phase, next: newId() }),
    close: () =>
      tap((draft) => ({
        kind: 'close',
        id: newId(),
        stamp: stamp(),
        smokeMinutes: smokeMinutes(draft, ports.now().ms),
        sentence: closingSentence(draft, view.name, manner),
      })),
  };
}

/** The bar in the hand put down, with what was expected of it; null while it cannot be. */
function downOf(ports: VisitPorts, view: ColonyView, draft: Draft, bar: BarDraft, stamp: Stamp): Tap | null {
  if (downRefused(bar) !== null) return null;
  const { newId, manner } = ports;
  const { place, seen } = bar;
  const reading = readingOf(draft, place, seen);
  const hangs = placeNamed(draft, place);
  // Of a bar that was moved today nothing is told: the picture may know of the move already.
  const expected = hangs === place ? ports.expect(view, reading) : nothingExpected;
  const before = draft.read.filter((row) => row.place !== place).map((row) => readingOf(draft, row.place, row.seen));
  const far = draft.foretold === null ? null : ports.far(draft.foretold, place, [...before, reading]);
  const note = text('visiting.note-text', { place: String(hangs), text: bar.note.trim() }, manner);
  const words = { note, why: text('visiting.correct-why', {}, manner) };
  return { kind: 'down', entry: bar.entry, next: newId(), noteId: newId(), stamp, words, expected, far };
}

const minuteMs = 60_000;
const longestSmoke = 600;

/** Minutes since the smoker was lit; null when it was not, or so long ago that it was forgotten. */
export function smokeMinutes(draft: Pick<Draft, 'smokeSince'>, nowMs: number): number | null {
  if (draft.smokeSince === null) return null;
  const minutes = Math.max(0, Math.floor((nowMs - draft.smokeSince) / minuteMs));
  return minutes > longestSmoke ? null : minutes;
}
