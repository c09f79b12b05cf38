/** The year's forecasts of the whole yard: each kind with what came, how far off every method was, and where "as last time" is no worse. */
import { useState } from 'react';
import { Link } from 'wouter';
import type { RecordScore } from '../../../colony/record.ts';
import { recordDots } from '../../../sheets/record-dots.ts';
import { methodLines, scoreHead, scoreLines } from '../../../words/record-lines.ts';
import { useRecord } from '../colony/use-record.ts';
import { Drawn } from '../frame/drawn.tsx';
import { useTextSize } from '../frame/drawings.ts';
import { Choices } from '../frame/fields.tsx';
import { useText } from '../frame/manner.tsx';
import { Screen } from '../frame/screen.tsx';
import { useWide } from '../frame/wide.ts';
import './record.css';

/** Stands for all years among the choices. */
const allYears = 0;

export function RecordScreen() {
  const { t } = useText();
  const [year, setYear] = useState(allYears);
  const record = useRecord(null, year === allYears ? null : year);
  const scores = record === null || record === 'failed' ? [] : record.scores.filter((score) => score.n > 0);
  return (
    <Screen title={t('record.year-title')}>
      <p>{t('record.lead')}</p>
      {record === null ? <p role="status">{t('frame.working')}</p> : null}
      {record === 'failed' ? <p role="alert">{t('record.failed')}</p> : null}
      {record === null || record === 'failed' || record.years.length < 2 ? null : (
        <Choices
          legend={t('record.year')}
          value={year}
          onChange={setYear}
          options={[
            { value: allYears, label: t('record.all-years') },
            ...record.years.map((one) => ({ value: one, label: String(one) })),
          ]}
        />
      )}
      {record !== null && record !== 'failed' && scores.length === 0 ? <p>{t('record.none')}</p> : null}
      {record === null || record === 'failed' || record.waiting === 0 ? null : (
        <p>{t('record.waiting', { n: record.waiting })}</p>
      )}
      {scores.length === 0 ? null : <p className="soft small">{t('record.dots-key')}</p>}
      {scores.map((score) => (
        <OneScore key={`${score.what}-${score.horizonDays}`} score={score} />
      ))}
      <p>
        <Link href="/">{t('colony.to-round')}</Link>
      </p>
    </Screen>
  );
}

function OneScore({ score }: { readonly score: RecordScore }) {
  const { t, manner } = useText();
  const wide = useWide();
  const textSize = useTextSize();
  const head = scoreHead(score, manner);
  const dots = score.rows
    .filter((row) => row.likely > 0)
    .map((row) => ({ ratio: row.came / row.likely, inside: row.low <= row.came && row.came <= row.high }));
  return (
    <section className="score">
      <h2>{head}</h2>
      {scoreLines(score, manner).map((line) => (
        <p key={line}>{line}</p>
      ))}
      <Drawn
        className="drawn"
        svg={recordDots(dots, {
          width: wide ? 560 : 360,
          ...(textSize === null ? {} : { textSize: wide ? textSize * 0.9 : textSize }),
          label: t('record.dots', { n: dots.length, what: head }),
          fewerWord: t('record.dots-fewer'),
          asWord: t('record.dots-as'),
          moreWord: t('record.dots-more'),
        })}
      />
      <Methods score={score} />
    </section>
  );
}

function Methods({ score }: { readonly score: RecordScore }) {
  const { t, manner } = useText();
  const methods = methodLines(score, manner);
  if (methods.length === 0) return null;
  return (
    <table className="methods">
      <caption>{t('record.methods')}</caption>
      <tbody>
        {methods.map(({ method, factor }) => (
          <tr key={method}>
            <th scope="row">{method}</th>
            <td>{factor}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
