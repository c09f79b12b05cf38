/** How right the forecasts of one colony were: what each kind was off by, and those that most visits met against what came. */
import { Link } from 'wouter';
import type { ForecastRecord, RecordScore } from '../../../colony/record.ts';
import type { ColonyView } from '../../../colony/view.ts';
import { addDays, daysBetween } from '../../../numbers/day.ts';
import { exactly, scaleRange } from '../../../numbers/range.ts';
import { chart } from '../../../sheets/chart.ts';
import { plainNumber } from '../../../words/format-number.ts';
import { briefLine } from '../../../words/record-lines.ts';
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
  const kinds = [...new Set(met.map(({ what }) => what))];
  const drawn = fullest(record);
  return (
    <>
      <p>{t(met.length === 0 ? 'record.none' : 'record.brief-lead')}</p>
      {kinds.map((what) => (
        <article key={what}>
          <h3>{t(`outlook.${what}`)}</h3>
          <ul>
            {met
              .filter((score) => score.what === what)
              .map((score) => (
                <li key={score.horizonDays}>{briefLine(score, manner)}</li>
              ))}
          </ul>
        </article>
      ))}
      {record.waiting === 0 ? null : <p>{t('record.waiting', { n: record.waiting })}</p>}
      {drawn === null || drawn.rows.length < 2 ? null : <AgainstWhatCame score={drawn} />}
    </>
  );
}

/** Of the scores of about a round of brood ahead the one that most visits met; bees before brood before honey. */
function fullest(record: ForecastRecord): RecordScore | null {
  const scores = (['bees', 'sealed', 'honeyKg'] as const).flatMap((what) => scoreNear(record, what, chartDays) ?? []);
  return scores.reduce<RecordScore | null>((most, score) => (most === null || score.n > most.n ? score : most), null);
}

const thousand = 1000;
/** Forecasts that are drawn: those of about a round of brood. */
const chartDays = 21;
/** Room on both sides, as a share of the days drawn, so that no bracket stands on an edge: our choice. */
const edgeShare = 0.03;

function AgainstWhatCame({ score }: { readonly score: RecordScore }) {
  const { t } = useText();
  const wide = useWide();
  const textSize = useTextSize();
  const [first, last] = [score.rows[0], score.rows.at(-1)];
  if (first === undefined || last === undefined) return null;
  const { what, horizonDays: days } = score;
  const edge = Math.ceil(daysBetween(first.forDay, last.forDay) * edgeShare) + 1;
  const scale = what === 'honeyKg' ? 1 : 1 / thousand;
  const svg = chart(
    [
      {
        title: '',
        bands: [],
        issued: score.rows.map(({ forDay, low, likely, high }) => ({
          day: forDay,
          range: scaleRange({ low, likely, high }, scale),
        })),
        points: score.rows.map(({ forDay, came }) => ({ day: forDay, range: exactly(came * scale), ink: 'seen' })),
      },
    ],
    {
      width: wide ? 760 : 360,
      panelHeight: 118,
      ...(textSize === null ? {} : { textSize }),
      from: addDays(first.forDay, -edge),
      to: addDays(last.forDay, edge),
      today: null,
      todayLabel: '',
      dayLabel: (day) => shortDay(day, t),
      valueLabel: (value) => plainNumber(value),
      label: t('record.chart', { what: t(`outlook.${what}`), days }),
    },
  );
  return (
    <>
      <h3>{t(`record.axis-${what}`)}</h3>
      <Drawn svg={svg} className="drawn chart" />
      <p className="soft small">{t('record.chart-key', { days })}</p>
    </>
  );
}
