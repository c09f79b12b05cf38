/** The film: every visit under the last, combs traced between their places; and the marks it is drawn with. */
import type { ColonyView } from '../../../colony/view.ts';
import { formatDay } from '../../../words/format-day.ts';
import { Drawn } from '../frame/drawn.tsx';
import { useDrawings } from '../frame/drawings.ts';
import { useText } from '../frame/manner.tsx';
import { useWide } from '../frame/wide.ts';
import { MarksLegend } from '../handbook/marks-legend.tsx';

/** More than this and the first screen of a colony takes too long to draw; the rest is one tap away. */
const framesAtOnce = { wide: 8, narrow: 5 };

export function Film({ view }: { readonly view: ColonyView }) {
  const { t, manner } = useText();
  const { film } = useDrawings();
  const atOnce = useWide() ? framesAtOnce.wide : framesAtOnce.narrow;
  const recent = view.film.slice(-atOnce);
  const [first, last] = [recent[0], recent.at(-1)];
  return (
    <section>
      <h2>{t('film.title')}</h2>
      {first === undefined || last === undefined ? null : (
        <p className="soft small">
          {t('film.span', { from: formatDay(first.day, manner), to: formatDay(last.day, manner) })}
        </p>
      )}
      {view.film.length === 0 ? <p>{t('film.none')}</p> : <Drawn svg={film(view, recent)} className="drawn film" />}
      {view.film.length <= atOnce ? null : <Earlier view={view} count={view.film.length - atOnce} />}
      <details>
        <summary>{t('film.marks')}</summary>
        <MarksLegend />
      </details>
    </section>
  );
}

function Earlier({ view, count }: { readonly view: ColonyView; readonly count: number }) {
  const { t } = useText();
  const { film } = useDrawings();
  return (
    <details>
      <summary>{t('film.earlier', { count })}</summary>
      <Drawn svg={film(view, view.film.slice(0, count))} className="drawn film" />
    </details>
  );
}
