/** One entry's rival corrections, a card each, side by side: who, when and why, the values that differ, and one tap to keep it. */
import { useMemo } from 'react';
import { dayOf, type Entry, isAt } from '../../../journal/entry.ts';
import { formatDay } from '../../../words/format-day.ts';
import { useText } from '../frame/manner.tsx';
import { useYard } from '../model/use-yard.tsx';
import { notedText } from './entry-row.tsx';
import { entrySentence, word } from './entry-sentence.ts';
import { leafName } from './leaf-name.ts';
import { type Rival, type RivalRow, sideBySide } from './rivals.ts';

interface RivalCardsProps {
  readonly target: Entry;
  readonly heads: readonly Entry[];
  /** Nothing can be tapped for a moment. */
  readonly pause: boolean;
  readonly onKeep: (head: Entry) => void;
}

export function RivalCards({ target, heads, pause, onKeep }: RivalCardsProps) {
  const { t, manner } = useText();
  const { aside, entries } = useYard();
  const { rivals, rows } = useMemo(
    () => sideBySide(entries, target, heads, (value, unit) => `${value} ${word(`unit-name.${unit}`, unit, manner)}`),
    [entries, target, heads, manner],
  );
  const sentence = entrySentence(target, aside.names, manner);
  return (
    <div role="group" aria-label={sentence}>
      <p>{t('journal.first-written', { at: formatDay(dayOf(target.at), manner), sentence })}</p>
      <div className="rival-cards">
        {rivals.map((rival, n) => (
          <RivalCard
            key={rival.head.id}
            rival={rival}
            rows={rows}
            n={n}
            inUse={n === rivals.length - 1}
            same={rivals.every(({ struck }) => !struck)}
            pause={pause}
            onKeep={() => onKeep(rival.head)}
          />
        ))}
      </div>
    </div>
  );
}

interface RivalCardProps {
  readonly rival: Rival;
  readonly rows: readonly RivalRow[];
  readonly n: number;
  readonly inUse: boolean;
  /** None of them strikes out: without rows they all come to the same. */
  readonly same: boolean;
  readonly pause: boolean;
  readonly onKeep: () => void;
}

function RivalCard({ rival: { head, struck }, rows, n, inUse, same, pause, onKeep }: RivalCardProps) {
  const { t, manner } = useText();
  const { aside } = useYard();
  const lines = Math.max(1, rows.length);
  const who = `rival-${head.id}`;
  const name = aside.names[head.by] ?? t('entry.unnamed');
  return (
    <section className="rival" style={{ gridRow: `span ${lines + 2}` }} aria-labelledby={who}>
      <div>
        <p id={who}>
          <b>{t('journal.rival-by', { name, noted: notedText(head, manner) })}</b>
        </p>
        <p className="soft">{entrySentence(head, aside.names, manner)}</p>
      </div>
      {struck ? (
        <p style={{ gridRow: `span ${lines}` }}>{t('journal.rival-struck')}</p>
      ) : rows.length === 0 ? (
        <p>{t(same ? 'journal.rival-same' : 'journal.rival-unchanged')}</p>
      ) : (
        rows.map((row) => <RivalLine key={row.path ?? ''} row={row} n={n} />)
      )}
      <div className="rival-end">
        {inUse ? <p className="soft">{t('journal.in-use')}</p> : null}
        <button type="button" onClick={onKeep} disabled={pause} aria-describedby={who}>
          {t('journal.keep-this')}
        </button>
      </div>
    </section>
  );
}

function RivalLine({ row, n }: { readonly row: RivalRow; readonly n: number }) {
  const { t, manner } = useText();
  const { aside } = useYard();
  const said = (value: string | null): string => {
    if (value === null) return t('entry.nothing');
    if (isAt(value)) return `${formatDay(dayOf(value), manner)}${value.slice(10).replace('T', ' ')}`;
    return /^[0-9a-f]{8}-[0-9a-f]{4}-/.test(value) ? (aside.names[value] ?? t('entry.unnamed')) : value;
  };
  const value = row.values[n] ?? null;
  const kept = value === row.first;
  return (
    <p>
      <span className="soft">{row.path === null ? t('journal.when') : leafName(row.path)}</span>
      <span className={kept ? 'rival-value' : 'rival-value changed'}>{said(value)}</span>
      <span className="soft small">
        {kept ? t('journal.rival-as-first') : t('journal.rival-first', { value: said(row.first) })}
      </span>
    </p>
  );
}
