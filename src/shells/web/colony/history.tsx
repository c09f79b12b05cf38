/** Bees, brood and honey through the visits, as they were counted: points with their ranges, and nothing drawn between them. */
import type { ColonyView } from '../../../colony/view.ts';
import { scaleRange } from '../../../numbers/range.ts';
import { chart } from '../../../sheets/chart.ts';
import { plainNumber } from '../../../words/format-number.ts';
import { Drawn } from '../frame/drawn.tsx';
import { shortDay, useTextSize } from '../frame/drawings.ts';
import { useText, type Wording } from '../frame/manner.tsx';
import { useWide } from '../frame/wide.ts';
import type { HistoryPoint } from '../model/shown.ts';
import { useHistory } from './use-history.ts';

export function History({ view }: { readonly view: ColonyView }) {
  const { t } = useText();
  const wide = useWide();
  const textSize = useTextSize();
  const points = useHistory(view);
  return (
    <section>
      <h2>{t('history.title')}</h2>
      {points === null ? <p className="soft">{t('frame.working')}</p> : null}
      {points !== null && points.length < 2 ? <p>{t('history.too-few')}</p> : null}
      {points !== null && points.length >= 2 ? (
        <Drawn svg={drawn(view, points, { wide, textSize, t })} className="drawn chart" />
      ) : null}
    </section>
  );
}

interface Look {
  readonly wide: boolean;
  readonly textSize: number | null;
  readonly t: Wording['t'];
}

function drawn(view: ColonyView, points: readonly HistoryPoint[], { wide, textSize, t }: Look): string {
  const panels = (['adults', 'brood', 'honeyKg'] as const).map((what) => ({
    title: t(`history.${what}`),
    bands: [],
    points: points.map((point) => ({
      day: point.day,
      range: what === 'honeyKg' ? point[what] : scaleRange(point[what], 1 / 1000),
      ink: point.ink,
    })),
  }));
  return chart(panels, {
    width: wide ? 760 : 360,
    panelHeight: 118,
    ...(textSize === null ? {} : { textSize }),
    from: points[0]?.day ?? view.day,
    to: view.day,
    today: view.day,
    todayLabel: t('history.today'),
    dayLabel: (day) => shortDay(day, t),
    valueLabel: (value) => plainNumber(value),
    label: t('history.label', { name: view.name, count: points.length }),
  });
}
