/**
 * One colony: the nest as it should look today, every visit under the last, its queen, its room, and
 * why something is due. Each number says whether it was seen or carried forward, and until when it holds.
 */
import { lazy, Suspense, useState } from 'react';
import { Link } from 'wouter';
import { useText } from '../frame/manner.tsx';
import { dayPart } from '../frame/parts.ts';
import { Screen } from '../frame/screen.tsx';
import { useColony, useYard } from '../model/use-yard.tsx';
import { lastSeen } from '../round/last-seen.ts';
import { type ColonyAct, colonyActs } from './acts.ts';
import { BarsToday } from './bars-today.tsx';
import { ComingPart } from './coming-part.tsx';
import { EventList } from './event-list.tsx';
import { Film } from './film.tsx';
import { LookPart } from './look-part.tsx';
import { QueenPart } from './queen-part.tsx';
import { RoomPart } from './room-part.tsx';
import { SurprisePart } from './surprise-part.tsx';
import { Totals } from './totals.tsx';
import { Why } from './why.tsx';
import './foreseen.css';

const AgesPart = lazy(() => import('./ages-part.tsx').then((file) => ({ default: file.AgesPart })));
const OutlookPart = lazy(() => import('./outlook-part.tsx').then((file) => ({ default: file.OutlookPart })));
const RecordPart = lazy(() => import('./record-part.tsx').then((file) => ({ default: file.RecordPart })));
const History = lazy(() => import('./history.tsx').then((file) => ({ default: file.History })));
const ActSheet = lazy(() => import('./act-sheet.tsx').then((file) => ({ default: file.ActSheet })));
const WriteSheet = lazy(() => import('../round/write-sheet.tsx').then((file) => ({ default: file.WriteSheet })));

interface ColonyProps {
  readonly colony: string;
  readonly takesFocus: boolean;
}

export function ColonyScreen({ colony, takesFocus }: ColonyProps) {
  const { t } = useText();
  const { picture } = useYard();
  const view = useColony(colony);
  const [act, setAct] = useState<ColonyAct | null>(null);
  const [writing, setWriting] = useState(false);
  if (view === null || picture === null) {
    return (
      <Screen title={t('colony.unknown')} takesFocus={takesFocus}>
        <p>
          <Link href="/">{t('colony.to-round')}</Link>
        </p>
      </Screen>
    );
  }
  const { foreseen } = view;
  const stop = picture.round.find((one) => one.colony === colony);
  const advice = stop === undefined || stop.first === null ? [] : [stop.first, ...stop.more];
  return (
    <Screen
      title={view.name}
      aside={
        view.hiveName === view.name ? lastSeen(view, t) : t('colony.aside', { hive: view.hiveName, seen: lastSeen(view, t) })
      }
      takesFocus={takesFocus}
    >
      {view.ended === null ? (
        <div className="acts">
          <Link className="button go" href={`/visit/${colony}`}>
            {t('colony.visit')}
          </Link>
          <button type="button" onClick={() => setWriting(true)}>
            {t('round.write')}
          </button>
        </div>
      ) : (
        <p className="slip">{t(`colony.ended-${view.ended.how}`, { day: dayPart(view.ended.day) })}</p>
      )}
      <Why advice={advice} />
      {foreseen === null ? null : <LookPart foreseen={foreseen} />}
      {foreseen === null ? null : <SurprisePart foreseen={foreseen} />}
      <Film view={view} />
      <BarsToday view={view} />
      <Totals view={view} />
      <Suspense>{foreseen === null ? null : <OutlookPart view={view} foreseen={foreseen} />}</Suspense>
      <QueenPart view={view} />
      <RoomPart view={view} />
      {foreseen === null ? null : <ComingPart foreseen={foreseen} />}
      <Suspense>{foreseen === null ? <History view={view} /> : <AgesPart view={view} foreseen={foreseen} />}</Suspense>
      <Suspense>{foreseen === null ? null : <RecordPart view={view} />}</Suspense>
      <EventList view={view} />
      {view.ended === null ? (
        <section className="acts-only">
          <h2>{t('colony.acts')}</h2>
          <p className="soft">{t('colony.acts-line')}</p>
          <div className="acts">
            {colonyActs.map((one) => (
              <button key={one} type="button" onClick={() => setAct(one)}>
                {t(`act-form.${one}`)}
              </button>
            ))}
          </div>
        </section>
      ) : null}
      <Suspense>
        {act === null ? null : <ActSheet act={act} view={view} onClose={() => setAct(null)} />}
        {writing ? <WriteSheet view={view} onClose={() => setWriting(false)} /> : null}
      </Suspense>
    </Screen>
  );
}
