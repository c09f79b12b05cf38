/** The film: every visit under the last, combs traced between their places; and the marks it is drawn with. */
import { type SyntheticEvent, useState } from 'react';
import type { ColonyView, FilmFrame } from '../../../colony/view.ts';
import { formatDay } from '../../../words/format-day.ts';
import { Drawn } from '../frame/drawn.tsx';
import { useDrawings } from '../frame/drawings.ts';
import { useText } from '../frame/manner.tsx';
import { useWide } from '../frame/wide.ts';
import { earlierFilm } from '../model/engine.ts';
import { useYard } from '../model/use-yard.tsx';
import { MarksLegend } from '../handbook/marks-legend.tsx';

/** More than this and the first screen of a colony takes too long to draw; the rest is one tap away. */
const framesAtOnce = { wide: 8, narrow: 5 };

export function Film({ view }: { readonly view: ColonyView }) {
  const { t, manner } = useText();
  const { film } = useDrawings();
  const atOnce = useWide() ? framesAtOnce.wide : framesAtOnce.narrow;
  const recent = view.film.slice(-atOnce);
  const total = useYard().aside.filmLengths[view.colony] ?? view.film.length;
  const [first, last] = [recent[0], recent.at(-1)];
  return (
    <section>
      <h2>{t('film.title')}</h2>
      {first === undefined || last === undefined ? null : (
        <p className="soft small">{t('film.span', { from: formatDay(first.day, manner), to: formatDay(last.day, manner) })}</p>
      )}
      {view.film.length === 0 ? <p>{t('film.none')}</p> : <Drawn svg={film(view, recent)} className="drawn film" />}
      {total <= recent.length ? null : <Earlier view={view} shown={recent.length} count={total - recent.length} />}
      <details>
        <summary>{t('film.marks')}</summary>
        <MarksLegend />
      </details>
    </section>
  );
}

interface EarlierProps {
  readonly view: ColonyView;
  /** Strips that stand above already. */
  readonly shown: number;
  readonly count: number;
}

function Earlier({ view, shown, count }: EarlierProps) {
  const { t } = useText();
  const { film } = useDrawings();
  const [before, setBefore] = useState<readonly FilmFrame[] | null>(null);
  const frames = before === null ? [] : [...before, ...view.film.slice(0, -shown)];

  function open(event: SyntheticEvent<HTMLDetailsElement>): void {
    if (event.currentTarget.open && before === null) void earlierFilm(view.colony).then(setBefore, () => setBefore([]));
  }

  return (
    <details onToggle={open}>
      <summary>{t('film.earlier', { count })}</summary>
      {before === null ? <p className="soft">{t('frame.working')}</p> : null}
      {frames.length === 0 ? null : <Drawn svg={film(view, frames)} className="drawn film" />}
    </details>
  );
}
