/**
 * Bees, sealed brood and honey behind and ahead: what was believed then, what was seen, what is foreseen, with
 * both ranges. Where the model was no better than "as last time" so far, that is said and drawn first.
 */
import type { DayBelief, Foreseen } from '../../../colony/foreseen.ts';
import type { RecordScore } from '../../../colony/record.ts';
import type { ColonyView } from '../../../colony/view.ts';
import { addDays, type Day, daysBetween, later } from '../../../numbers/day.ts';
import { type Range, scaleRange } from '../../../numbers/range.ts';
import { chart, type ChartLevel } from '../../../sheets/chart.ts';
import { plainNumber } from '../../../words/format-number.ts';
import { Drawn } from '../frame/drawn.tsx';
import { shortDay, useTextSize } from '../frame/drawings.ts';
import { useText, type Wording } from '../frame/manner.tsx';
import { dayPart, rangePart } from '../frame/parts.ts';
import { useWide } from '../frame/wide.ts';
import type { HistoryPoint } from '../model/shown.ts';
import { useHistory } from './use-history.ts';
import { isModelBetter, scoreNear, useRecord } from './use-record.ts';

const shown = ['bees', 'sealed', 'honeyKg'] as const;
type Shown = (typeof shown)[number];

const units = { bees: 'bees', sealed: 'cells', honeyKg: 'kg' } as const;
const pointNames = { bees: 'adults', sealed: 'sealed', honeyKg: 'honeyKg' } as const satisfies Record<Shown, keyof HistoryPoint>;
/** Three rounds of brood behind and one ahead: our choice. A phone shows less of what is behind, with large letters still less. */
const behindDays = { wide: 91, narrow: 63, narrowLarge: 42 };
const aheadDays = 28;
/** What is said ahead: a round of brood. */
const saidDays = 21;
const thousand = 1000;

interface OutlookProps {
  readonly view: ColonyView;
  readonly foreseen: Foreseen;
}

export function OutlookPart({ view, foreseen }: OutlookProps) {
  const { t } = useText();
  const wide = useWide();
  const textSize = useTextSize();
  const behind = behindDays[wide ? 'wide' : textSize === null ? 'narrow' : 'narrowLarge'];
  const from = later(foreseen.line[0]?.day ?? view.day, addDays(view.day, -behind));
  const points = useHistory(view, from);
  const record = useRecord(view.colony, null);
  const to = addDays(view.day, aheadDays);
  const rows = foreseen.line.filter((row) => row.day >= from && row.day <= to);
  const scores = shown.map((what) => ({ what, score: scoreNear(record, what, saidDays) }));
  const isWorse = scores.some(({ what, score }) => isModelBetter(score) === false && lastTimeOf(foreseen, what) !== null);
  return (
    <section>
      <h2>{t('outlook.title')}</h2>
      {scores.map(({ what, score }) => (
        <One key={what} what={what} view={view} foreseen={foreseen} rows={rows} points={points ?? []} score={score} />
      ))}
      <p className="soft small">
        {t('outlook.key')}
        {isWorse ? ` ${t('outlook.key-last')}` : ''}
      </p>
    </section>
  );
}

interface OneProps extends OutlookProps {
  readonly what: Shown;
  readonly rows: readonly DayBelief[];
  readonly points: readonly HistoryPoint[];
  readonly score: RecordScore | null;
}

function One({ what, view, foreseen, rows, points, score }: OneProps) {
  const { t } = useText();
  const wide = useWide();
  const textSize = useTextSize();
  const [first, last] = [rows[0], rows.at(-1)];
  if (first === undefined || last === undefined) return null;
  const lastTime = isModelBetter(score) === false ? lastTimeOf(foreseen, what) : null;
  const scale = (range: Range) => (what === 'honeyKg' ? range : scaleRange(range, 1 / thousand));
  const level: ChartLevel | null =
    lastTime === null
      ? null
      : { from: view.visits.at(-1)?.day ?? view.day, value: scale(lastTime).likely, label: t('outlook.as-last-time') };
  const svg = chart(
    [
      {
        title: '',
        points: points.map((point) => ({ day: point.day, range: scale(point[pointNames[what]]), ink: point.ink })),
        bands: rows.map((row) => ({ day: row.day, wide: scale(row.values[what]), half: scale(row.half[what]) })),
        level,
      },
    ],
    {
      width: wide ? 760 : 360,
      panelHeight: wide ? 150 : 128,
      ...(textSize === null ? {} : { textSize }),
      from: first.day,
      to: last.day,
      today: view.day,
      todayLabel: t('history.today'),
      dayLabel: (day) => shortDay(day, t),
      valueLabel: (value) => plainNumber(value),
      label: t('outlook.label', { name: view.name, what: t(`outlook.${what}`), from: dayPart(first.day), to: dayPart(last.day) }),
    },
  );
  return (
    <article className="outlook">
      <h3>
        {t(`outlook.${what}`)} <span className="soft">{t(`outlook.axis-${what}`)}</span>
      </h3>
      <p>{said({ what, day: view.day, rows, score, lastTime }, t)}</p>
      <Drawn svg={svg} className="drawn chart" />
    </article>
  );
}

interface Said {
  readonly what: Shown;
  readonly day: Day;
  readonly rows: readonly DayBelief[];
  readonly score: RecordScore | null;
  readonly lastTime: Range | null;
}

/** Today and a round of brood ahead; "as last time" before it where the model has shown no more skill than that. */
function said({ what, day, rows, score, lastTime }: Said, t: Wording['t']): string {
  const unit = units[what];
  const today = rows.filter((row) => row.day <= day).at(-1);
  const ahead = rows.find((row) => daysBetween(day, row.day) >= saidDays);
  const now = today === undefined ? null : rangePart(today.values[what], unit);
  const then = ahead === undefined ? null : rangePart(ahead.values[what], unit);
  const days = score?.horizonDays ?? saidDays;
  const isBetter = isModelBetter(score);
  const lines: string[] = [];
  if (isBetter === false) {
    if (now !== null) lines.push(t('outlook.now', { now }));
    lines.push(
      lastTime === null || then === null || ahead === undefined
        ? t('outlook.last-unknown', { days })
        : t('outlook.last-first', { last: rangePart(lastTime, unit), then, day: dayPart(ahead.day), days }),
    );
  } else {
    if (now !== null && then !== null && ahead !== undefined)
      lines.push(t('outlook.line', { now, then, day: dayPart(ahead.day) }));
    else if (now !== null) lines.push(t('outlook.now', { now }));
    if (isBetter === true && score !== null) lines.push(t('outlook.better', { days, n: score.n }));
  }
  return lines.join(' ');
}

/** What "as last time" says for about a round of brood ahead. */
function lastTimeOf({ day, forecasts }: Foreseen, what: Shown): Range | null {
  const far = (one: { readonly day: Day }) => Math.abs(daysBetween(day, one.day) - saidDays);
  const [nearest = null] = forecasts.filter((one) => one.what === what).sort((a, b) => far(a) - far(b));
  return nearest?.ranges['last time'] ?? null;
}
