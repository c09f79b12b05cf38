/**
 * Holds the visit while the screen is open: each tap is worked into the draft, the draft is put on
 * disk, and only then do the listeners hear of it. Entries that Down and closing made wait in the
 * draft until the journal has them, so that a page closed at any moment loses nothing and doubles nothing.
 */
import type { Issue } from '../../../numbers/result.ts';
import { asDraft, type Beginning, beginDraft, type Draft } from './draft.ts';
import type { VisitPorts } from './ports.ts';
import { tap, type Tap } from './tap.ts';

export type SessionState =
  | { readonly phase: 'loading' }
  /** No visit is open. */
  | { readonly phase: 'none' }
  | { readonly phase: 'open'; readonly draft: Draft; readonly trouble: Trouble | null }
  | { readonly phase: 'closed' };

export type Trouble =
  /** The last tap could not be put on disk and was not taken. */
  | { readonly kind: 'draft not kept' }
  /** The journal did not take the entries; they wait in the draft. */
  | { readonly kind: 'not stored'; readonly issues: readonly Issue[] };

export interface Session {
  readonly state: () => SessionState;
  readonly subscribe: (listener: () => void) => () => void;
  readonly begin: (beginning: Beginning) => Promise<void>;
  /** A tap that reads the draft is asked in its turn, when every tap before it is in; null is no tap. */
  readonly tap: (by: Tap | ((draft: Draft) => Tap | null)) => Promise<void>;
  /** Tries again to bring waiting entries into the journal. */
  readonly again: () => Promise<void>;
  readonly discard: () => Promise<void>;
}

export type SessionPorts = Pick<VisitPorts, 'loadDraft' | 'saveDraft' | 'deleteDraft' | 'append' | 'painted'>;

export function createSession(ports: SessionPorts, key: string): Session {
  const listeners = new Set<() => void>();
  let state: SessionState = { phase: 'loading' };
  const inTurn = oneByOne();

  function show(next: SessionState): void {
    state = next;
    for (const listener of listeners) listener();
  }

  async function keep(draft: Draft): Promise<boolean> {
    try {
      await ports.saveDraft(key, draft);
      return true;
    } catch {
      if (state.phase === 'open') show({ ...state, trouble: { kind: 'draft not kept' } });
      return false;
    }
  }

  async function flush(): Promise<void> {
    if (state.phase !== 'open' || state.draft.outbox.length === 0) return finish();
    // The next bar is shown first: its entry is safe in the draft already.
    await ports.painted();
    const sent = state.draft.outbox;
    const issues = await appended(ports, sent);
    if (state.phase !== 'open') return;
    if (issues !== null) return show({ ...state, trouble: { kind: 'not stored', issues } });
    const draft = tap(state.draft, { kind: 'stored', ids: sent.map((entry) => entry.id) });
    if (draft.phase === 'done') return finish(draft);
    show({ phase: 'open', draft, trouble: null });
    // Should this put be lost, the entries are sent once more, and the journal knows them by id.
    await ports.saveDraft(key, draft).catch(() => undefined);
  }

  async function finish(given?: Draft): Promise<void> {
    const draft = given ?? (state.phase === 'open' ? state.draft : null);
    if (draft?.phase !== 'done' || draft.outbox.length > 0) return;
    await ports.deleteDraft(key).catch(() => undefined);
    show({ phase: 'closed' });
  }

  async function open(): Promise<void> {
    const draft = asDraft(await ports.loadDraft(key).catch(() => null));
    if (draft === null) return show({ phase: 'none' });
    show({ phase: 'open', draft, trouble: null });
    await flush();
  }

  void inTurn(open);
  return {
    state: () => state,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    begin: (beginning) =>
      inTurn(async () => {
        if (state.phase === 'open' || state.phase === 'loading') return;
        const draft = beginDraft(beginning);
        if (await keep(draft)) show({ phase: 'open', draft, trouble: null });
      }),
    tap: (by) =>
      inTurn(async () => {
        if (state.phase !== 'open') return;
        const draft = tapped(state.draft, by);
        if (draft === state.draft || !(await keep(draft))) return;
        show({ ...state, draft, trouble: state.trouble?.kind === 'draft not kept' ? null : state.trouble });
        if (draft.outbox.length > 0) await flush();
      }),
    again: () => inTurn(flush),
    discard: () =>
      inTurn(async () => {
        await ports.deleteDraft(key);
        show({ phase: 'none' });
      }),
  };
}

function tapped(draft: Draft, by: Parameters<Session['tap']>[0]): Draft {
  const meant = typeof by === 'function' ? by(draft) : by;
  return meant === null ? draft : tap(draft, meant);
}

/** One thing after the other: a tap never overtakes the one before it. */
function oneByOne(): (work: () => Promise<void>) => Promise<void> {
  let tail: Promise<void> = Promise.resolve();
  return (work) => {
    tail = tail.then(work, work);
    return tail;
  };
}

async function appended(ports: SessionPorts, entries: Draft['outbox']): Promise<readonly Issue[] | null> {
  try {
    return await ports.append(entries);
  } catch (error) {
    return [{ code: 'store-closed', path: 'journal', found: String(error), expected: 'a journal that takes entries' }];
  }
}
