/** The film: every visit under the last, combs traced between their places; and the marks it is drawn with. */
import type { ColonyView } from '../../../colony/view.ts';
import { Drawn } from '../frame/drawn.tsx';
import { useDrawings } from '../frame/drawings.ts';
import { useText } from '../frame/manner.tsx';
import { MarksLegend } from '../handbook/marks-legend.tsx';

/** More than this and the first screen of a colony takes too long to draw; the rest is one tap away. */
const framesAtOnce = 8;

export function Film({ view }: { readonly view: ColonyView }) {
  const { t } = useText();
  const { film } = useDrawings();
  const recent = view.film.slice(-framesAtOnce);
  return (
    <section>
      <h2>{t('film.title')}</h2>
      {view.film.length === 0 ? <p>{t('film.none')}</p> : <Drawn svg={film(view, recent)} className="drawn film" />}
      {view.film.length <= framesAtOnce ? null : <Earlier view={view} count={view.film.length - framesAtOnce} />}
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
