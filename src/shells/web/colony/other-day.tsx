/** Another day for the combs: back and on by a day or a week, worked out beside the screen; what was shown stays until it is there. */
import { useEffect, useState } from 'react';
import type { ColonyView } from '../../../colony/view.ts';
import { addDays } from '../../../numbers/day.ts';
import { useText } from '../frame/manner.tsx';
import { viewOn } from '../model/engine.ts';

export interface DayOfCombs {
  /** Of the day chosen, or the last one that could be worked out. */
  readonly view: ColonyView;
  readonly ahead: number;
  readonly turn: (days: number) => void;
  readonly toToday: () => void;
}

/** A season ahead is more than the plain outlook can tell: our choice. */
const mostAhead = 60;
const week = 7;

export function useOtherDay(today: ColonyView): DayOfCombs {
  const [ahead, setAhead] = useState(0);
  const [found, setFound] = useState<ColonyView | null>(null);
  const { colony, day } = today;
  useEffect(() => setAhead(0), [colony, day]);
  useEffect(() => {
    if (ahead === 0) return undefined;
    let wanted = true;
    void viewOn(colony, addDays(day, ahead)).then((view) => {
      if (wanted && view !== null) setFound(view);
    });
    return () => {
      wanted = false;
    };
  }, [colony, day, ahead]);
  const usable = ahead !== 0 && found !== null && found.colony === colony ? found : today;
  return {
    view: usable,
    ahead,
    turn: (days) => setAhead((now) => Math.min(mostAhead, now + days)),
    toToday: () => setAhead(0),
  };
}

export function OtherDay({ day }: { readonly day: DayOfCombs }) {
  const { t } = useText();
  return (
    <div className="other-day" role="group" aria-label={t('bars.other-day')}>
      <button type="button" onClick={() => day.turn(-week)}>
        {t('bars.week-back')}
      </button>
      <button type="button" onClick={() => day.turn(-1)}>
        {t('bars.day-back')}
      </button>
      <button type="button" disabled={day.ahead >= mostAhead} onClick={() => day.turn(1)}>
        {t('bars.day-on')}
      </button>
      <button type="button" disabled={day.ahead >= mostAhead} onClick={() => day.turn(week)}>
        {t('bars.week-on')}
      </button>
      {day.ahead === 0 ? null : (
        <button type="button" onClick={day.toToday}>
          {t('bars.to-today')}
        </button>
      )}
    </div>
  );
}
