/**
 * The round of the day: the date, the hours that suit opening, and the hives along a path, the
 * longest need first. It shows what was last believed at once and never waits for the engine.
 */
import { lazy, Suspense, useEffect, useMemo, useState } from 'react';
import { Link, useLocation, useSearch } from 'wouter';
import type { Stop } from '../../../apiary.ts';
import type { ColonyView } from '../../../colony/view.ts';
import { formatWeekday } from '../../../words/format-day.ts';
import { useText } from '../frame/manner.tsx';
import { Screen } from '../frame/screen.tsx';
import { painted } from '../model/painted.ts';
import { useYard } from '../model/use-yard.tsx';
import { DayWeather } from './day-weather.tsx';
import { EmptyHives } from './empty-hives.tsx';
import { Minutes } from './minutes.tsx';
import { StopOnPath } from './stop-on-path.tsx';

const SwarmSheet = lazy(() => import('../start/swarm-sheet.tsx').then((file) => ({ default: file.SwarmSheet })));
const WriteSheet = lazy(() => import('./write-sheet.tsx').then((file) => ({ default: file.WriteSheet })));

interface RoundProps {
  /** The colony that stands at the right on a laptop. */
  readonly chosen: string | null;
  readonly takesFocus: boolean;
}

interface Placed {
  readonly stop: Stop;
  readonly view: ColonyView;
  /** Its number in the order of need; null where nothing is to be done. */
  readonly peg: number | null;
}

export function RoundScreen({ chosen, takesFocus }: RoundProps) {
  const { t, manner } = useText();
  const { picture, today, aside } = useYard();
  const [, go] = useLocation();
  const asked = new URLSearchParams(useSearch()).get('hive') === 'swarm';
  const [hiving, setHiving] = useState(false);
  const [writing, setWriting] = useState<ColonyView | null>(null);
  const placed = useMemo(() => (picture === null ? [] : placeStops(picture.round, picture.colonies)), [picture]);
  const drawn = useDrawnFirst(placed.length);
  if (picture === null) return null;
  return (
    <Screen title={formatWeekday(today, manner)} aside={picture.yard?.name} takesFocus={takesFocus}>
      <DayWeather />
      {aside.conflicts.length === 0 ? null : (
        <p className="slip">
          <Link href="/journal">{t('journal.conflicts-link', { count: aside.conflicts.length })}</Link>
        </p>
      )}
      {placed.length === 0 ? null : <Minutes views={placed.map(({ view }) => view)} />}
      {placed.length === 0 ? (
        <p>{t('round.no-colony')}</p>
      ) : (
        <ol className="path" aria-label={t('round.path')}>
          {placed.slice(0, drawn).map(({ stop, view, peg }) => (
            <StopOnPath
              key={stop.colony}
              stop={stop}
              view={view}
              peg={peg}
              chosen={stop.colony === chosen}
              onWrite={() => setWriting(view)}
            />
          ))}
        </ol>
      )}
      <EmptyHives />
      <div className="acts">
        <button type="button" className={placed.length === 0 ? 'go' : ''} onClick={() => setHiving(true)}>
          {t('round.hive-swarm')}
        </button>
      </div>
      {placed.length === 0 ? null : (
        <p>
          <Link href="/record">{t('record.year-link')}</Link>
        </p>
      )}
      {placed.length === 0 ? null : (
        <p>
          <Link href="/paper">{t('paper.link')}</Link>
        </p>
      )}
      <Suspense>
        {hiving || asked ? (
          <SwarmSheet
            onClose={() => {
              setHiving(false);
              if (asked) go('/', { replace: true });
            }}
          />
        ) : null}
        {writing === null ? null : <WriteSheet view={writing} onClose={() => setWriting(null)} />}
      </Suspense>
    </Screen>
  );
}

/** More hives than a screen holds: our choice. */
const firstHives = 6;

/** How many hives are drawn: those that the keeper sees first, then all, so that a large yard does not keep the first waiting. */
function useDrawnFirst(all: number): number {
  const [drawn, setDrawn] = useState(firstHives);
  useEffect(() => {
    let here = true;
    if (all > drawn) {
      void painted().then(() => {
        if (here) setDrawn(all);
      });
    }
    return () => {
      here = false;
    };
  }, [all, drawn]);
  return drawn;
}

/** Something is to be done today; a hive that is left shut may still be fed. */
function isDueToday({ first, verb, turnsUp }: Stop): boolean {
  if (first === null || first.verb === 'leave shut') return false;
  return turnsUp === null || verb === 'leave shut';
}

function placeStops(round: readonly Stop[], colonies: readonly ColonyView[]): readonly Placed[] {
  const views = new Map(colonies.map((view) => [view.colony, view]));
  let last = 0;
  return round.flatMap((stop) => {
    const view = views.get(stop.colony);
    if (view === undefined) return [];
    return [{ stop, view, peg: isDueToday(stop) ? ++last : null }];
  });
}
