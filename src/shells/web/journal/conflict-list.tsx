/**
 * Entries that two people corrected without knowing of each other. What each would leave stands side by side, only
 * where they differ; one tap keeps one, and the choice can be undone.
 */
import { useEffect, useRef, useState } from 'react';
import type { Entry, Id } from '../../../journal/entry.ts';
import { keepOne } from '../../../journal/keep-one.ts';
import { issueText } from '../../../words/issue-text.ts';
import { useText } from '../frame/manner.tsx';
import { useYard } from '../model/use-yard.tsx';
import { notedText } from './entry-row.tsx';
import { RivalCards } from './rival-cards.tsx';
import { isSettled } from './rivals.ts';

interface Choice {
  /** What was written to keep it. */
  readonly entry: Entry;
  readonly head: Entry;
}

/** The cards move up under the finger: a second tap in so short a time is none. Our choice. */
const pauseMs = 600;

export function ConflictList() {
  const { t, manner } = useText();
  const { aside, entries, append } = useYard();
  const [faults, setFaults] = useState<readonly string[]>([]);
  const [choices, setChoices] = useState<readonly Choice[]>([]);
  const [pause, setPause] = useState(false);
  const byId = new Map(entries.map((entry) => [entry.id, entry]));
  const open = aside.conflicts.filter((conflict) => !isSettled(entries, conflict));

  async function write(note: Parameters<typeof append>[0][number], then: (entry: Entry) => readonly Choice[]): Promise<void> {
    setPause(true);
    try {
      const stored = await append([note]);
      setFaults(stored.ok ? [] : stored.issues.map((issue) => issueText(issue, manner)));
      if (stored.ok) setChoices(stored.value.flatMap(then));
    } finally {
      setTimeout(() => setPause(false), pauseMs);
    }
  }

  const keep = (target: Entry, head: Entry): Promise<void> =>
    write(keepOne(entries, target, head, t('journal.settled')), (entry) => [...choices, { entry, head }]);
  const undo = ({ entry }: Choice): Promise<void> =>
    write({ kind: 'void', corrects: entry.id, body: { why: t('journal.unkept'), knew: knewOf(entries, entry.id) } }, () =>
      choices.filter((one) => one.entry !== entry),
    );

  const last = choices.at(-1);
  if (open.length === 0 && last === undefined && faults.length === 0) return null;
  return (
    <section className="slip rivals">
      {last === undefined ? null : <KeptLine key={last.entry.id} choice={last} pause={pause} onUndo={() => void undo(last)} />}
      {open.length === 0 ? null : <h2>{t('journal.conflicts', { count: open.length })}</h2>}
      {open.map(({ target, amendments }) => {
        const entry = byId.get(target);
        if (entry === undefined) return null;
        const heads = amendments.flatMap((one) => byId.get(one) ?? []);
        return <RivalCards key={target} target={entry} heads={heads} pause={pause} onKeep={(head) => void keep(entry, head)} />;
      })}
      {faults.map((fault) => (
        <p key={fault} className="fault" role="alert">
          {fault}
        </p>
      ))}
    </section>
  );
}

/** Above what is left to decide. It takes the focus, since the button that was tapped is gone. */
function KeptLine({ choice, pause, onUndo }: { readonly choice: Choice; readonly pause: boolean; readonly onUndo: () => void }) {
  const { t, manner } = useText();
  const { aside } = useYard();
  const line = useRef<HTMLParagraphElement>(null);
  useEffect(() => line.current?.focus(), []);
  const name = aside.names[choice.head.by] ?? t('entry.unnamed');
  return (
    <>
      <p ref={line} tabIndex={-1} role="status">
        {t('journal.kept', { name, noted: notedText(choice.head, manner) })}
      </p>
      <div className="acts">
        <button type="button" onClick={onUndo} disabled={pause}>
          {t('journal.unkeep')}
        </button>
      </div>
    </>
  );
}

function knewOf(entries: readonly Entry[], target: Id): readonly Id[] {
  return entries.filter(({ corrects }) => corrects === target).map(({ id }) => id);
}
