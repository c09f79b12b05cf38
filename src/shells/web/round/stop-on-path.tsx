/** One hive on the path: its peg, its strip, and its slip with verb, window and reason. A slip turned down says when it turns up. */
import { useId } from 'react';
import { Link } from 'wouter';
import type { Advice } from '../../../advice/advice.ts';
import type { Stop } from '../../../apiary.ts';
import type { ColonyView } from '../../../colony/view.ts';
import { formatDay } from '../../../words/format-day.ts';
import { hintLine } from '../../../words/foreseen-lines.ts';
import type { Manner } from '../../../words/say.ts';
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
  const { t, manner } = useText();
  const id = useId();
  const { roundStrip } = useDrawings();
  const { first, verb } = stop;
  const rest = first === null ? 0 : 1 + stop.more.length - slipsOf(stop).length;
  return (
    <li className="stop" aria-labelledby={id} aria-current={chosen ? 'true' : undefined}>
      <span className="peg" aria-hidden="true">
        {peg ?? '–'}
      </span>
      <div className="stop-head">
        <h2 id={id}>
          <Link href={`/colony/${view.colony}`}>{view.name}</Link>
          {peg === null ? null : <span className="hidden-text">{t('round.peg', { n: peg })}</span>}
        </h2>
        <p className="soft">{lastSeen(view, t)}</p>
      </div>
      <Drawn svg={roundStrip(view)} />
      {first === null ? (
        <p className="slip soft">{t('round.nothing-due')}</p>
      ) : (
        slipsOf(stop).map((advice, n) => (
          <Slip key={advice.rule} stop={stop} advice={advice} hint={n === 0 ? hintOf(view, advice, manner) : null} />
        ))
      )}
      {rest === 0 ? null : <p className="soft small">{t('round.more', { count: rest })}</p>}
      <div className="acts">
        <Link
          className={peg !== null && (verb === 'open' || verb === 'glance') ? 'button go' : 'button'}
          href={`/visit/${view.colony}`}
        >
          {t(verb === 'glance' ? 'round.glance' : 'round.open')}
          <span className="hidden-text"> {view.name}</span>
        </Link>
        <button type="button" onClick={onWrite}>
          {t('round.write')}
          <span className="hidden-text"> {view.name}</span>
        </button>
      </div>
    </li>
  );
}

/** The first advice; and, where another one decides the verb, that one as well: a hive to be fed may have to stay shut. */
function slipsOf({ first, verb, more }: Stop): readonly Advice[] {
  if (first === null) return [];
  const deciding = first.verb === verb ? undefined : more.find((one) => one.verb === verb);
  return deciding === undefined ? [first] : [first, deciding];
}

/** Advice that asks somebody else: no chance of the model's has anything to say to it. */
const asksOthers: readonly Advice['act'][] = ['ask someone', 'call the authority'];

/** What the model adds to a slip, where it knows and where the slip is not turned down. */
function hintOf({ foreseen }: ColonyView, advice: Advice, manner: Manner): string | null {
  return foreseen === null || advice.verb === 'leave shut' || asksOthers.includes(advice.act) ? null : hintLine(foreseen, manner);
}

interface SlipProps {
  readonly stop: Stop;
  readonly advice: Advice;
  readonly hint: string | null;
}

function Slip({ stop, advice, hint }: SlipProps) {
  const { t, say, manner } = useText();
  const reason = advice.reasons[0];
  const down = advice.verb === 'leave shut';
  return (
    <div className={down ? 'slip down' : stop.turnsUp === null ? 'slip' : 'slip ahead'}>
      <p>
        <b>{say(advice.say)}</b> {reason === undefined ? null : say(reason)} {hint}
      </p>
      {down && stop.turnsUp !== null ? <p>{t('round.turns-up', { day: formatDay(stop.turnsUp, manner) })}</p> : null}
    </div>
  );
}
