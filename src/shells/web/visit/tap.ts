/**
 * One tap on the draft. Everything that the world gives (an id, a moment, the words of a note) comes
 * with the tap, so the same tap on the same draft always gives the same draft; a tap that names a bar
 * no longer in the hand does nothing, so that Down twice is Down once.
 */
import type { FarBar } from '../../../apiary/bar-far.ts';
import type { DoneWithFallen, FallenComb, WinterTask } from '../../../apiary/visit-terms.ts';
import type { Entry, Id } from '../../../journal/entry.ts';
import {
  type BarDraft,
  type Closing,
  type Draft,
  freshBar,
  type Panel,
  type Phase,
  reopenedBar,
  type Straight,
  type Temper,
  type TemperNote,
  writtenAt,
  type Step,
  type Written,
} from './draft.ts';
import type { Expected } from './ports.ts';
import { arrangementOf, isReached, placeNamed } from './arrangement.ts';
import { readTogether } from './joined-bars.ts';
import { nextPlace } from './next-place.ts';
import { bodyBack, bodyTap, type BodyTap } from './tap-body.ts';
import { moveBar, movesBack, type MoveTap } from './tap-move.ts';
import { seenAfter, type SeenTap, tooMuch } from './seen.ts';
import { correctionEntry, fellEntry, noteEntry, readingEntry, rowEnd, type Stamp, visitEntry, voidEntry } from './to-entries.ts';

/** Words that go into entries, made beforehand. */
export interface Words {
  readonly note?: string;
  readonly why?: string;
}

export type Tap =
  | SeenTap
  | { readonly kind: 'panel'; readonly panel: Panel | null }
  | { readonly kind: 'note'; readonly text: string }
  | {
      readonly kind: 'down';
      readonly entry: Id;
      readonly next: Id;
      readonly noteId: Id;
      readonly stamp: Stamp;
      readonly words: Words;
      readonly expected: Expected;
      readonly far: FarBar | null;
    }
  | { readonly kind: 'not opened'; readonly entry: Id; readonly next: Id; readonly stamp: Stamp; readonly words: Words }
  | { readonly kind: 'go'; readonly place: number; readonly next: Id }
  | {
      readonly kind: 'fell';
      readonly place: number;
      readonly what: FallenComb;
      readonly done: DoneWithFallen;
      readonly id: Id;
      readonly stamp: Stamp;
    }
  | { readonly kind: 'brushed always'; readonly brushed: boolean }
  | { readonly kind: 'smoke'; readonly ms: number | null }
  | { readonly kind: 'phase'; readonly phase: Exclude<Phase, 'done'>; readonly next: Id }
  | { readonly kind: 'row'; readonly what: 'given' | 'taken' | 'follower'; readonly by: 1 | -1 }
  | { readonly kind: 'count'; readonly what: 'barsCounted' | 'beesBars'; readonly value: number | null }
  | { readonly kind: 'temper'; readonly temper: Temper }
  | { readonly kind: 'temper note'; readonly note: TemperNote }
  | { readonly kind: 'straight'; readonly straight: Straight }
  | { readonly kind: 'winter'; readonly task: WinterTask; readonly answer: 'done' | 'not done' }
  | { readonly kind: 'cells cut'; readonly cut: boolean }
  | {
      readonly kind: 'close';
      readonly id: Id;
      readonly stamp: Stamp;
      readonly smokeMinutes: number | null;
      readonly sentence: string;
    }
  | MoveTap
  | BodyTap
  | { readonly kind: 'body back'; readonly id: Id; readonly stamp: Stamp; readonly why: string; readonly next: Id }
  | { readonly kind: 'undo'; readonly next: Id; readonly stamp: Stamp; readonly words: Words }
  /** Not a tap: the journal says that it has these. */
  | { readonly kind: 'stored'; readonly ids: readonly Id[] };

const mostSteps = 12;

export function tap(draft: Draft, by: Tap): Draft {
  if (by.kind === 'stored') return { ...draft, outbox: draft.outbox.filter((entry) => !by.ids.includes(entry.id)) };
  if (draft.phase === 'done') return draft;
  switch (by.kind) {
    case 'panel':
      return { ...draft, panel: by.panel };
    case 'down':
      return down(draft, by);
    case 'not opened':
      return notOpened(draft, by);
    case 'go':
      return go(draft, by.place, by.next);
    case 'fell':
      return fell(draft, by);
    case 'move':
      return moveBar(draft, by);
    case 'moves back':
      return movesBack(draft, by);
    case 'joined':
    case 'parted':
    case 'piece':
    case 'bee escape':
    case 'board':
      return bodyTap(draft, by);
    case 'body back':
      return bodyBack(draft, by);
    case 'undo':
      return undo(draft, by);
    case 'close':
      return close(draft, by);
    case 'phase':
      return toPhase(draft, by.phase, by.next);
    case 'smoke':
      return remembered(draft, { ...draft, smokeSince: by.ms });
    case 'brushed always':
      return remembered(draft, brushedAlways(draft, by.brushed));
    case 'note':
      return draft.bar === null ? draft : { ...draft, bar: { ...draft.bar, note: by.text, touched: true } };
    case 'row':
      return rowStep(draft, by.what, by.by);
    case 'count':
      return closingChange(draft, { [by.what]: by.value });
    case 'temper':
      return closingChange(draft, { temper: by.temper });
    case 'temper note':
      return closingChange(draft, { temperNotes: toggled(draft.closing.temperNotes, by.note) });
    case 'straight':
      return closingChange(draft, { straight: by.straight });
    case 'winter':
      return winterAnswer(draft, by.task, by.answer);
    case 'cells cut':
      return closingChange(draft, { cellsCut: by.cut });
    default:
      return onBar(draft, by);
  }
}

/** The same answer tapped again is taken off: not asked. */
function winterAnswer(draft: Draft, task: WinterTask, answer: 'done' | 'not done'): Draft {
  const { [task]: before, ...others } = draft.closing.winter ?? {};
  return closingChange(draft, { winter: before === answer ? others : { ...others, [task]: answer } });
}

/** Why Down would do nothing now; null when it may. */
export function downRefused(bar: BarDraft | null): 'nothing read' | 'too much' | null {
  if (bar === null || (!bar.touched && bar.again === null)) return 'nothing read';
  return tooMuch(bar.seen) ? 'too much' : null;
}

function onBar(draft: Draft, by: SeenTap): Draft {
  if (draft.bar === null) return draft;
  const seen = seenAfter(draft.bar.seen, by);
  return remembered(draft, {
    ...draft,
    panel: answered(by) ? null : draft.panel,
    bar: { ...draft.bar, seen, touched: true },
  });
}

/** An answer that leaves nothing more to ask goes back to the rulers by itself: one tap less a bar. */
function answered(by: SeenTap): boolean {
  return (
    by.kind === 'as expected' ||
    by.kind === 'youngest' ||
    by.kind === 'queen' ||
    by.kind === 'cells looked' ||
    (by.kind === 'eggs' && by.eggs !== 'none seen')
  );
}

function down(draft: Draft, by: Extract<Tap, { kind: 'down' }>): Draft {
  const { bar } = draft;
  if (bar?.entry !== by.entry || downRefused(bar) !== null) return draft;
  const { written, entries } = putDown(draft, bar, by);
  const note: readonly Entry[] =
    bar.note.trim() === '' ? [] : [noteEntry(draft, by.noteId, by.words.note ?? bar.note.trim(), by.stamp)];
  const read = [...draft.read.filter((row) => row.place !== bar.place), written];
  const past: readonly Step[] = [{ kind: 'down', place: bar.place }];
  const outbox = [...draft.outbox, ...entries, ...note];
  const skipped = draft.skipped.filter((place) => place !== bar.place);
  const told = { place: bar.place, seen: bar.seen, expected: by.expected, far: by.far };
  return onward({ ...draft, read, outbox, past, skipped, told }, bar.place, by.next);
}

function putDown(
  draft: Draft,
  bar: BarDraft,
  by: { readonly stamp: Stamp; readonly words: Words },
): { readonly written: Written; readonly entries: readonly Entry[] } {
  const { again, seen, place } = bar;
  if (again === null) {
    const hangs = placeNamed(draft, place);
    const movesThen = draft.moves.length;
    const moved = movesThen === 0 ? {} : { readAt: hangs, movesThen };
    const others = seen.of === 'set' ? { with: readTogether(draft, place) } : {};
    const written: Written = { place, reading: bar.entry, seen, ...moved, ...others, corrections: [] };
    return { written, entries: [readingEntry(draft, bar.entry, hangs, seen, by.stamp)] };
  }
  if (JSON.stringify(again.seen) === JSON.stringify(seen)) return { written: again, entries: [] };
  const written = { ...again, seen, corrections: [...again.corrections, bar.entry] };
  return { written, entries: [correctionEntry(draft, bar.entry, again, seen, by.stamp, by.words.why ?? '')] };
}

/** Leaves the bar hanging: no reading. One that was put down before is taken back. */
function notOpened(draft: Draft, by: Extract<Tap, { kind: 'not opened' }>): Draft {
  const { bar } = draft;
  if (bar?.entry !== by.entry) return draft;
  const going = [bar.place, ...readTogether(draft, bar.place)];
  const skipped = [...draft.skipped.filter((place) => !going.includes(place)), ...going];
  const left = { ...draft, skipped, read: draft.read.filter((row) => row.place !== bar.place) };
  if (bar.again === null) return remembered(draft, onward(left, bar.place, by.next));
  const taken = voidEntry(draft, bar.entry, bar.again.reading, bar.again.corrections, by.stamp, by.words.why ?? '');
  const told = draft.told?.place === bar.place ? null : draft.told;
  return onward({ ...left, outbox: [...draft.outbox, taken], past: [], told }, bar.place, by.next);
}

function onward(draft: Draft, after: number, next: Id): Draft {
  const place = nextPlace(draft, after);
  if (place === null) return { ...draft, bar: null, panel: null, phase: draft.visitKind === 'glance' ? 'colony' : 'row' };
  return { ...draft, panel: null, bar: freshBar(draft, place, next) };
}

/** Takes up another bar; never while one is in the hand with something read of it. */
function go(draft: Draft, place: number, next: Id): Draft {
  const { bar } = draft;
  if (bar?.touched === true || bar?.place === place || !isReached(arrangementOf(draft), place)) return draft;
  return { ...draft, phase: 'bars', panel: null, past: [], ...takenUp(draft, place, next) };
}

function takenUp(draft: Draft, place: number, next: Id): Pick<Draft, 'bar' | 'places'> {
  const written = writtenAt(draft, place);
  const places = draft.places.includes(place) ? draft.places : [...draft.places, place];
  return { places, bar: written === null ? freshBar(draft, place, next) : reopenedBar(written, next) };
}

function fell(draft: Draft, by: Extract<Tap, { kind: 'fell' }>): Draft {
  if (draft.outbox.some((entry) => entry.id === by.id) || draft.fell.includes(by.place)) return { ...draft, panel: null };
  const { temperNotes } = draft.closing;
  const closing: Closing = {
    ...draft.closing,
    temperNotes: [...new Set<TemperNote>([...temperNotes, 'dropped a comb'])],
  };
  const entry = fellEntry(draft, by.id, { place: placeNamed(draft, by.place), what: by.what, done: by.done }, by.stamp);
  const past: readonly Step[] = [...draft.past, { kind: 'fell', note: by.id, temperNotes }];
  return {
    ...draft,
    panel: null,
    fell: [...draft.fell, by.place],
    closing,
    outbox: [...draft.outbox, entry],
    past: past.slice(-mostSteps),
  };
}

function undo(draft: Draft, by: Extract<Tap, { kind: 'undo' }>): Draft {
  const step = draft.past.at(-1);
  if (step === undefined) return draft;
  const past = draft.past.slice(0, -1);
  switch (step.kind) {
    case 'values':
      return { ...draft, ...step.values, panel: null, past };
    case 'down':
      return { ...draft, ...takenUp(draft, step.place, by.next), phase: 'bars', panel: null, past };
    case 'fell': {
      const taken = voidEntry(draft, by.next, step.note, [], by.stamp, by.words.why ?? '');
      const closing = { ...draft.closing, temperNotes: step.temperNotes };
      return { ...draft, closing, fell: draft.fell.slice(0, -1), outbox: [...draft.outbox, taken], past, panel: null };
    }
  }
}

/** An untouched bar is still in the box and may be left; a touched one is in the hand and must be put down first. */
function toPhase(draft: Draft, phase: Exclude<Phase, 'done'>, next: Id): Draft {
  if (phase !== 'bars') return draft.bar?.touched === true ? draft : { ...draft, phase, panel: null };
  const bar = draft.bar ?? barAgain(draft, next);
  return bar === null ? draft : { ...draft, phase, panel: null, bar };
}

function barAgain(draft: Draft, next: Id): BarDraft | null {
  const now = arrangementOf(draft);
  const last = draft.places.findLast((place) => isReached(now, place));
  return last === undefined ? null : takenUp(draft, last, next).bar;
}

function close(draft: Draft, by: Extract<Tap, { kind: 'close' }>): Draft {
  if (draft.bar?.touched === true) return draft;
  const visit = visitEntry(draft, by.id, by.stamp, by.smokeMinutes, by.sentence);
  return { ...draft, phase: 'done', bar: null, panel: null, outbox: [...draft.outbox, visit], past: [] };
}

function rowStep(draft: Draft, what: 'given' | 'taken' | 'follower', by: 1 | -1): Draft {
  const value = draft.closing[what] + by;
  const closing: Closing = { ...draft.closing, [what]: value };
  const end = rowEnd({ ...draft, closing });
  const least = draft.bay.follower === 'last' ? draft.bay.from : 1;
  const most = draft.bay.follower === 'last' ? draft.hiveBars : draft.bay.to;
  const counts = what === 'follower' || value >= 0;
  return counts && end >= least && end <= most ? closingChange(draft, closing) : draft;
}

function closingChange(draft: Draft, change: Partial<Closing>): Draft {
  return remembered(draft, { ...draft, closing: { ...draft.closing, ...change } });
}

/** From now on, the bar in the hand included. */
function brushedAlways(draft: Draft, brushed: boolean): Draft {
  const bar = draft.bar === null ? null : { ...draft.bar, seen: { ...draft.bar.seen, brushed } };
  return { ...draft, brushed, bar };
}

function toggled<T>(list: readonly T[], item: T): readonly T[] {
  return list.includes(item) ? list.filter((other) => other !== item) : [...list, item];
}

const kept = ['bar', 'skipped', 'closing', 'brushed', 'smokeSince', 'phase'] as const;

/** Notes what the tap changed, so that one step back restores exactly that. */
function remembered(before: Draft, after: Draft): Draft {
  const changed = kept.filter((name) => before[name] !== after[name]);
  if (changed.length === 0) return after;
  const values = Object.fromEntries(changed.map((name) => [name, before[name]])) as Extract<Step, { kind: 'values' }>['values'];
  return { ...after, past: [...before.past, { kind: 'values', values } satisfies Step].slice(-mostSteps) };
}
