/** One entry of the list: its day, its sentence, who wrote it, and what was done to it since. */
import { dayOf, type Entry } from '../../../journal/entry.ts';
import { formatDay } from '../../../words/format-day.ts';
import { useText } from '../frame/manner.tsx';
import { useYard } from '../model/use-yard.tsx';
import { entrySentence } from './entry-sentence.ts';

interface EntryRowProps {
  readonly entry: Entry;
  readonly amendments: readonly Entry[];
  readonly onCorrect: () => void;
  readonly onVoid: () => void;
}

export function EntryRow({ entry, amendments, onCorrect, onVoid }: EntryRowProps) {
  const { t, manner } = useText();
  const { aside } = useYard();
  const struck = aside.struck.includes(entry.id);
  const unknown = aside.notUnderstood.includes(entry.id);
  const now = aside.amended[entry.id] ?? entry;
  const written = entrySentence(entry, aside.names, manner);
  const sentence = entrySentence(now, aside.names, manner);
  const writer = aside.names[entry.by];
  return (
    <li>
      <details>
        <summary>
          <span>
            <b>{formatDay(dayOf(now.at), manner)}</b> {struck ? <s>{sentence}</s> : sentence}
            {struck ? ` (${t('journal.taken-back')})` : amendments.length > 0 ? ` (${t('journal.corrected')})` : ''}
            {unknown ? ` (${t('journal.unknown-kind')})` : ''}
          </span>
        </summary>
        <p className="soft small">
          {writer === undefined
            ? t('journal.written', { noted: notedText(entry, manner) })
            : t('journal.written-by', { name: writer, noted: notedText(entry, manner) })}
        </p>
        {written === sentence ? null : <p className="small">{t('journal.before', { sentence: written })}</p>}
        {amendments.map((one) => (
          <p key={one.id} className="small">
            {formatDay(dayOf(one.noted), manner)}: {entrySentence(one, aside.names, manner)}
            {aside.names[one.by] === undefined ? '' : ` (${aside.names[one.by]})`}
          </p>
        ))}
        <div className="acts">
          <button type="button" onClick={onCorrect} disabled={unknown}>
            {t('journal.correct')}
          </button>
          <button type="button" onClick={onVoid} disabled={struck}>
            {t('journal.void')}
          </button>
        </div>
      </details>
    </li>
  );
}

/** When an entry was written down, in UTC. */
export function notedText(entry: Entry, manner: Parameters<typeof formatDay>[1]): string {
  return `${formatDay(dayOf(entry.noted), manner)} ${entry.noted.slice(11, 16)} UTC`;
}
