/** One hive on the path: its peg, its strip, and its slip with verb, window and reason. A slip turned down says when it turns up. */
import { useId } from 'react';
import { Link } from 'wouter';
import type { Stop } from '../../../apiary.ts';
import type { ColonyView } from '../../../colony/view.ts';
import { formatDay } from '../../../words/format-day.ts';
import { Drawn } from '../frame/drawn.tsx';
import { useDrawings } from '../frame/drawings.ts';
import { useText } from '../frame/manner.tsx';
import { lastSeen } from './last-seen.ts';

interface StopProps {
  readonly stop: Stop;
  readonly view: ColonyView;
  readonly peg: number | null;
  readonly chosen: boolean;
  readonly onWrite: () => void;
}

export function StopOnPath({ stop, view, peg, chosen, onWrite }: StopProps) {
  const { t } = useText();
  const id = useId();
  const { roundStrip } = useDrawings();
  const { first, verb } = stop;
  return (
    <li className="stop" aria-labelledby={id} aria-current={chosen ? 'true' : undefined}>
      <span className="peg" aria-hidden="true">{peg ?? '–'}</span>
      <div className="stop-head">
        <h2 id={id}>
          <Link href={`/colony/${view.colony}`}>{view.name}</Link>
          {peg === null ? null : <span className="hidden-text">{t('round.peg', { n: peg })}</span>}
        </h2>
        <p className="soft">{lastSeen(view, t)}</p>
      </div>
      <Drawn svg={roundStrip(view)} />
      <Slip stop={stop} />
      <div className="acts">
        <Link className={first !== null && verb !== 'leave shut' && verb !== 'no visit' ? 'button go' : 'button'} href={`/visit/${view.colony}`}>
          {t(verb === 'glance' ? 'round.glance' : 'round.open')}<span className="hidden-text"> {view.name}</span>
        </Link>
        <button type="button" onClick={onWrite}>{t('round.write')}<span className="hidden-text"> {view.name}</span></button>
      </div>
    </li>
  );
}

function Slip({ stop }: { readonly stop: Stop }) {
  const { t, say, manner } = useText();
  const { first, verb, more, turnsUp } = stop;
  if (first === null) return <p className="slip soft">{t('round.nothing-due')}</p>;
  const reason = first.reasons[0];
  return (
    <div className={verb === 'leave shut' ? 'slip down' : 'slip'}>
      <p><b>{say(first.say)}</b> {reason === undefined ? null : say(reason)}</p>
      {verb === 'leave shut' && turnsUp !== null ? <p>{t('round.turns-up', { day: formatDay(turnsUp, manner) })}</p> : null}
      {more.length === 0 ? null : <p className="soft small">{t('round.more', { count: more.length })}</p>}
    </div>
  );
}
