/** The list behind "where the numbers come from": it needs the figures' book, so it is loaded when it is asked for. */
import { Link } from 'wouter';
import { figures as printedFigures } from '../../../apiary/handbook.ts';
import { dayOf, type Id } from '../../../journal/entry.ts';
import { useText } from '../frame/manner.tsx';
import { dayPart } from '../frame/parts.ts';
import { FigureLine } from '../handbook/figure-line.tsx';
import { entrySentence } from '../journal/entry-sentence.ts';
import { useYard } from '../model/use-yard.tsx';

interface SourceListProps {
  readonly figures: readonly string[];
  readonly entries: readonly Id[];
}

const mostEntries = 8;

export function SourceList({ figures, entries }: SourceListProps) {
  const { t, manner } = useText();
  const yard = useYard();
  const rows = yard.entries.filter((entry) => entries.includes(entry.id));
  return (
    <div className="sources">
      {printedFigures
        .filter((one) => figures.includes(one.key))
        .map((one) => (
          <FigureLine key={one.key} figure={one} />
        ))}
      {rows.length === 0 ? null : (
        <ul>
          {rows.slice(0, mostEntries).map((entry) => (
            <li key={entry.id}>
              {t('colony.entry-on', {
                day: dayPart(dayOf(entry.at)),
                sentence: entrySentence(entry, yard.aside.names, manner),
              })}
            </li>
          ))}
        </ul>
      )}
      {rows.length > mostEntries ? <p>{t('colony.entries-more', { count: rows.length - mostEntries })}</p> : null}
      <p>
        <Link href="/handbook">{t('colony.all-figures')}</Link>
      </p>
    </div>
  );
}
