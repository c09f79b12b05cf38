/** The sums: a list, and for each a form made from its own fields, with its formula and its sources. */
import { useMemo } from 'react';
import { Link, useParams } from 'wouter';
import { sumHelp, sums } from '../../../apiary/sums.ts';
import { useText } from '../frame/manner.tsx';
import { Screen } from '../frame/screen.tsx';
import { bookOf } from '../model/book.ts';
import { useYard } from '../model/use-yard.tsx';
import { SumForm } from './sum-form.tsx';

export function SumsScreen() {
  const { t } = useText();
  const { key } = useParams<{ key?: string }>();
  const { overrides } = useYard().aside;
  const book = useMemo(() => bookOf(overrides), [overrides]);
  const help = key === undefined ? null : sumHelp(key, book);
  if (help !== null) {
    return (
      <Screen title={help.title}>
        <p>
          <Link href="/sums">{t('sums.all')}</Link>
        </p>
        <p>{help.line}</p>
        <SumForm key={help.key} help={help} book={book} />
      </Screen>
    );
  }
  return (
    <Screen title={t('frame.sums')}>
      <p className="lead">{t('sums.lead')}</p>
      <ul className="rows">
        {sums.map((sum) => (
          <li key={sum.key}>
            <Link href={`/sums/${sum.key}`}>
              <b>{sum.title}</b> <span className="soft">{sum.line}</span>
            </Link>
          </li>
        ))}
      </ul>
    </Screen>
  );
}
