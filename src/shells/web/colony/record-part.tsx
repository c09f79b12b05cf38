/** How right the forecasts of one colony were: what each kind was off by, and the longest ones of bees against what came. */
import { Link } from 'wouter';
import type { ForecastRecord, RecordScore } from '../../../colony/record.ts';
import type { ColonyView } from '../../../colony/view.ts';
import { exactly, scaleRange } from '../../../numbers/range.ts';
import { chart } from '../../../sheets/chart.ts';
import { plainNumber } from '../../../words/format-number.ts';
import { scoreHead, scoreLines } from '../../../words/record-lines.ts';
import { Drawn } from '../frame/drawn.tsx';
import { shortDay, useTextSize } from '../frame/drawings.ts';
import { useText } from '../frame/manner.tsx';
import { useWide } from '../frame/wide.ts';
import { scoreNear, useRecord } from './use-record.ts';

export function RecordPart({ view }: { readonly view: ColonyView }) {
  const { t } = useText();
  const record = useRecord(view.colony, null);
  return (
    <section>
      <h2>{t('record.title')}</h2>
      {record === null ? <p className="soft">{t('frame.working')}</p> : null}
      {record === 'failed' ? <p>{t('record.failed')}</p> : null}
      {record === null || record === 'failed' ? null : <Told record={record} />}
      <p>
        <Link href="/record">{t('record.year-link')}</Link>
      </p>
    </section>
  );
}

function Told({ record }: { readonly record: ForecastRecord }) {
  const { t, manner } = useText();
  const met = record.scores.filter((score) => score.n > 0);
  const bees = scoreNear(record, 'bees', chartDays);
  return (
    <>
      {met.length === 0 ? <p>{t('record.none')}</p> : null}
      {met.map((score) => (
        <p key={`${score.what}-${score.horizonDays}`}>
          <b>{scoreHead(score, manner)}.</b> {scoreLines(score, manner).join(' ')}
        </p>
      ))}
      {record.waiting === 0 ? null : <p>{t('record.waiting', { n: record.waiting })}</p>}
      {bees === null || bees.rows.length < 2 ? null : <AgainstWhatCame score={bees} />}
    </>
  );
}

const thousand = 1000;
/** Forecasts that are drawn: those of about a round of brood. */
const chartDays = 21;

function AgainstWhatCame({ score }: { readonly score: RecordScore }) {
  const { t } = useText();
  const wide = useWide();
  const textSize = useTextSize();
  const [first, last] = [score.rows[0], score.rows.at(-1)];
  if (first === undefined || last === undefined) return null;
  const label = t('record.chart', { what: t('outlook.bees'), days: score.horizonDays });
  const svg = chart(
    [
      {
        title: t('history.adults'),
        bands: [],
        issued: score.rows.map(({ forDay, low, likely, high }) => ({
          day: forDay,
          range: scaleRange({ low, likely, high }, 1 / thousand),
        })),
        points: score.rows.map(({ forDay, came }) => ({ day: forDay, range: exactly(came / thousand), ink: 'seen' })),
      },
    ],
    {
      width: wide ? 760 : 360,
      panelHeight: 118,
      ...(textSize === null ? {} : { textSize }),
      from: first.forDay,
      to: last.forDay,
      today: null,
      todayLabel: '',
      dayLabel: (day) => shortDay(day, t),
      valueLabel: (value) => plainNumber(value),
      label,
    },
  );
  return (
    <>
      <Drawn svg={svg} className="drawn chart" />
      <p className="soft small">{t('record.chart-key')}</p>
    </>
  );
}
