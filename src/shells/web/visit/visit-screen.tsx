/**
 * The Visit screen: full screen, one hand, nothing but the hive. It finds the draft of a visit that
 * was not closed, or asks how to begin one; then bars, end of the row, colony, one sentence, done.
 */
import { useEffect } from 'react';
import { Link, useParams } from 'wouter';
import type { ColonyView } from '../../../colony/view.ts';
import type { Id } from '../../../journal/entry.ts';
import { formatDay } from '../../../words/format-day.ts';
import { useText } from '../frame/manner.tsx';
import { useColony, useQuiet, useYard } from '../model/use-yard.tsx';
import { BarDesk } from './bar-desk.tsx';
import { BodiesScreen } from './bodies-screen.tsx';
import { ClosingColony } from './closing-colony.tsx';
import { ClosingConfirm } from './closing-confirm.tsx';
import { ClosingRow } from './closing-row.tsx';
import { ClosingWinter } from './closing-winter.tsx';
import type { Draft } from './draft.ts';
import { MovesScreen } from './moves-screen.tsx';
import { Shell } from './shell.tsx';
import { StartVisit } from './start-visit.tsx';
import { useVisitPorts } from './use-ports.ts';
import { HandProvider, useNewHand, useSession } from './use-session.ts';
import './visit.css';

export function VisitScreen() {
  const { colony = '' } = useParams<{ colony: string }>();
  return <VisitOf key={colony} colony={colony} />;
}

/** Also the key under which the draft is kept: one open visit a colony. */
export function draftKey(colony: Id): string {
  return `visit:${colony}`;
}

function VisitOf({ colony }: { readonly colony: Id }) {
  const { t, manner } = useText();
  const view = useColony(colony);
  const { picture, phase } = useYard();
  if (view === null) {
    const waiting = picture === null || phase !== 'ready';
    return (
      <Shell title={t(waiting ? 'visiting.opening' : 'visiting.title-none')}>
        {waiting ? null : <p>{t('visiting.gone')}</p>}
        {waiting ? null : (
          <Link className="button" href="/">
            {t('visiting.to-round')}
          </Link>
        )}
      </Shell>
    );
  }
  if (view.ended !== null) {
    return (
      <Shell title={view.name}>
        <p>{t('visiting.ended', { colony: view.name, day: formatDay(view.ended.day, manner) })}</p>
        <Link className="button" href={`/colony/${colony}`}>
          {t('visiting.to-colony', { colony: view.name })}
        </Link>
      </Shell>
    );
  }
  return <OpenVisit view={view} />;
}

function OpenVisit({ view }: { readonly view: ColonyView }) {
  const { t } = useText();
  useQuiet();
  const ports = useVisitPorts(view);
  const { session, state } = useSession(ports, draftKey(view.colony));
  const hand = useNewHand(ports, view, session);
  useEffect(() => {
    document.title = `${t('visiting.title-start', { colony: view.name })} · Festoon`;
  }, [t, view.name]);
  return (
    <HandProvider value={hand}>
      {state.phase === 'loading' ? (
        <Shell title={view.name}>
          <p role="status">{t('visiting.opening')}</p>
        </Shell>
      ) : null}
      {state.phase === 'none' ? <StartVisit /> : null}
      {state.phase === 'open' ? <Step draft={state.draft} trouble={state.trouble} /> : null}
      {state.phase === 'closed' ? <Closed view={view} /> : null}
    </HandProvider>
  );
}

function Step({ draft, trouble }: { readonly draft: Draft; readonly trouble: React.ComponentProps<typeof BarDesk>['trouble'] }) {
  switch (draft.phase) {
    case 'bars':
      return <BarDesk draft={draft} trouble={trouble} />;
    case 'moves':
      return <MovesScreen draft={draft} trouble={trouble} />;
    case 'bodies':
      return <BodiesScreen draft={draft} trouble={trouble} />;
    case 'row':
      return <ClosingRow draft={draft} trouble={trouble} />;
    case 'winter':
      return <ClosingWinter draft={draft} trouble={trouble} />;
    case 'colony':
      return <ClosingColony draft={draft} trouble={trouble} />;
    case 'confirm':
    case 'done':
      return <ClosingConfirm draft={draft} trouble={trouble} />;
  }
}

function Closed({ view }: { readonly view: ColonyView }) {
  const { t } = useText();
  return (
    <Shell title={t('visiting.title-done', { colony: view.name })}>
      <p role="status">{t('visiting.closed')}</p>
      <div className="visit-end">
        <Link className="button visit-go" href={`/colony/${view.colony}`}>
          {t('visiting.to-colony', { colony: view.name })}
        </Link>
        <Link className="button" href="/">
          {t('visiting.to-round')}
        </Link>
      </div>
    </Shell>
  );
}
