/** Entries that two people corrected without knowing of each other: both are shown, and the keeper says which holds. */
import { useState } from 'react';
import type { Entry } from '../../../journal/entry.ts';
import { keepOne } from '../../../journal/keep-one.ts';
import { issueText } from '../../../words/issue-text.ts';
import { useText } from '../frame/manner.tsx';
import { useYard } from '../model/use-yard.tsx';
import { entrySentence } from './entry-sentence.ts';

export function ConflictList() {
  const { t, manner } = useText();
  const { aside, entries, append } = useYard();
  const [faults, setFaults] = useState<readonly string[]>([]);
  const byId = new Map(entries.map((entry) => [entry.id, entry]));

  async function settle(target: Entry, chosen: Entry): Promise<void> {
    const stored = await append([keepOne(entries, target, chosen, t('journal.settled'))]);
    setFaults(stored.ok ? [] : stored.issues.map((issue) => issueText(issue, manner)));
  }

  return (
    <section className="slip">
      <h2>{t('journal.conflicts', { count: aside.conflicts.length })}</h2>
      {aside.conflicts.map(({ target, amendments: ids }) => {
        const entry = byId.get(target);
        if (entry === undefined) return null;
        const heads = ids.flatMap((one) => byId.get(one) ?? []);
        return (
          <div key={target}>
            <p>{entrySentence(entry, aside.names, manner)}</p>
            <ul>
              {heads.map((head, n) => (
                <li key={head.id}>
                  {aside.names[head.by] ?? t('entry.unnamed')}: {entrySentence(head, aside.names, manner)} {changeText(head)}
                  {n === heads.length - 1 ? ` ${t('journal.in-use')}` : ''}{' '}
                  <button type="button" onClick={() => void settle(entry, head)}>
                    {t('journal.keep-this')}
                  </button>
                </li>
              ))}
            </ul>
          </div>
        );
      })}
      {faults.map((fault) => (
        <p key={fault} className="fault" role="alert">
          {fault}
        </p>
      ))}
    </section>
  );
}

/** What a correction changes, as it was written: two of them can then be told apart. */
function changeText(entry: Entry): string {
  const { why: _why, knew: _knew, ...change } = entry.body as Record<string, unknown>;
  return JSON.stringify(change);
}
