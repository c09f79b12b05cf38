/** The demo carries its own today: it is said on every screen, and turned day by day with two buttons. */
import { addDays } from '../../../numbers/day.ts';
import { formatWeekday } from '../../../words/format-day.ts';
import { useYard } from '../model/use-yard.tsx';
import { useText } from './manner.tsx';

export function DayLine() {
  const { t, manner } = useText();
  const { book, today, turnTo, computing } = useYard();
  if (book !== 'demo') return null;
  return (
    <div className="dayline" role="group" aria-label={t('frame.demo-day')}>
      <p role="status">
        {t('frame.demo-today', { day: formatWeekday(today, manner) })}
        {computing ? ` ${t('frame.working')}` : ''}
      </p>
      <button type="button" onClick={() => turnTo(addDays(today, -1))}>
        {t('frame.day-back')}
      </button>
      <button type="button" onClick={() => turnTo(addDays(today, 1))}>
        {t('frame.day-on')}
      </button>
    </div>
  );
}
