/**
 * The queen as chances: the ribbon of her states through time, what she is today out of ten, the days on which a
 * look does harm, and the day from which one tells.
 */
import type { Foreseen } from '../../../colony/foreseen.ts';
import type { QueenState } from '../../../colony/queen-state.ts';
import type { ColonyView } from '../../../colony/view.ts';
import { addDays, later } from '../../../numbers/day.ts';
import { queenSample } from '../../../sheets/queen-marks.ts';
import { queenRibbon, type Ribbon } from '../../../sheets/queen-ribbon.ts';
import { formatTenths } from '../../../words/format-chance.ts';
import { formatDay } from '../../../words/format-day.ts';
import { ribbonWords, statesToSay } from '../../../words/foreseen-lines.ts';
import { Drawn } from '../frame/drawn.tsx';
import { shortDay, useTextSize } from '../frame/drawings.ts';
import { useText } from '../frame/manner.tsx';
import { dayPart, windowPart } from '../frame/parts.ts';
import { useWide } from '../frame/wide.ts';

interface QueenChancesProps {
  readonly view: ColonyView;
  readonly foreseen: Foreseen;
}

/** Two rounds of brood behind and the longest way to a new queen's eggs ahead: our choice. */
const behindDays = { wide: 56, narrow: 35 };
const aheadDays = 28;

export function QueenChances({ view, foreseen }: QueenChancesProps) {
  const { t, manner } = useText();
  const { states, nextTelling, harmful } = foreseen.queen;
  const { said, rest } = statesToSay(states);
  const ribbon = useRibbon(view, foreseen);
  const also = ribbon === null ? [] : ribbon.unnamed.filter((state) => !said.some((one) => one.state === state));
  return (
    <>
      <p>{t('chances.today')}</p>
      <ul className="chances">
        {said.map(({ state, chance }) => (
          <li key={state}>
            <Sample state={state} />
            {t('chances.one', { state: t(`queen-state.${state}`), tenths: formatTenths(chance, manner) })}
          </li>
        ))}
        {rest < 0.005 ? null : <li className="soft">{t('chances.rest', { tenths: formatTenths(rest, manner) })}</li>}
      </ul>
      {ribbon === null ? null : <Drawn svg={ribbon.svg} className="drawn chart" />}
      {also.length === 0 ? null : (
        <p className="also small">
          {t('ribbon.also')}
          {also.map((state) => (
            <span key={state}>
              <Sample state={state} small /> {t(`ribbon.${state}`)}
            </span>
          ))}
        </p>
      )}
      {ribbon === null ? null : <p className="soft small">{t('ribbon.key')}</p>}
      <ul>
        {harmful.map(({ window, why }) => (
          <li key={`${why}-${window.earliest}`}>{t(`chances.harm-${why}`, { window: windowPart(window) })}</li>
        ))}
        <li>{nextTelling === null ? t('chances.told') : t('queen.next-telling', { day: dayPart(nextTelling) })}</li>
      </ul>
    </>
  );
}

function Sample({ state, small = false }: { readonly state: QueenState; readonly small?: boolean }) {
  const prefix = `queen-${small ? 'also-' : ''}${state.replaceAll(' ', '-')}`;
  const svg = small ? queenSample(state, prefix, 28, 18) : queenSample(state, prefix);
  return <span className="queen-sample" dangerouslySetInnerHTML={{ __html: svg }} />;
}

function useRibbon(view: ColonyView, foreseen: Foreseen): Ribbon | null {
  const { t, manner } = useText();
  const wide = useWide();
  const textSize = useTextSize();
  const from = later(foreseen.line[0]?.day ?? view.day, addDays(view.day, -behindDays[wide ? 'wide' : 'narrow']));
  const to = addDays(view.day, aheadDays);
  const rows = foreseen.line.filter((row) => row.day >= from && row.day <= to);
  const last = rows.at(-1)?.day;
  if (rows.length < 2 || last === undefined) return null;
  const { nextTelling, harmful } = foreseen.queen;
  return queenRibbon(
    rows.map(({ day, queen }) => ({ day, chances: queen })),
    {
      width: wide ? 760 : 360,
      height: wide ? 150 : 130,
      ...(textSize === null ? {} : { textSize }),
      from,
      to: last,
      today: view.day,
      todayLabel: t('history.today'),
      dayLabel: (day) => shortDay(day, t),
      label: t('ribbon.label', { name: view.name, from: dayPart(from), to: dayPart(last) }),
      prefix: 'queen-ribbon',
      words: ribbonWords(manner),
      visits: view.visits.map((visit) => visit.day),
      harmful: harmful.map(({ window }) => window),
      harmWord: t('ribbon.harm'),
      telling: nextTelling,
      tellingWord: nextTelling === null ? '' : t('ribbon.telling', { day: formatDay(nextTelling, manner) }),
    },
  );
}
