/**
 * One page for a substitute: what each hive is, what is due, what must not be opened, whom to call. What the keeper has
 * not entered is a line to write on, so that nothing looks known that is not.
 */
import type { Picture, Stop } from '../../../apiary.ts';
import type { ColonyView } from '../../../colony/view.ts';
import { formatDay, formatWeekday } from '../../../words/format-day.ts';
import { useText } from '../frame/manner.tsx';
import { useYard } from '../model/use-yard.tsx';

const called = ['authority', 'mentor', 'vet', 'emergency', 'neighbour'] as const;

export function CoverSheet({ picture }: { readonly picture: Picture }) {
  const { t, manner } = useText();
  const { aside, today } = useYard();
  const living = picture.colonies.filter(({ ended }) => ended === null);
  const stops = new Map(picture.round.map((stop) => [stop.colony, stop]));
  return (
    <article className="paper-sheet cover-sheet">
      <h2>{t('cover.title', { yard: picture.yard?.name ?? '' })}</h2>
      <p>{t('cover.since', { day: formatWeekday(today, manner) })}</p>
      <table>
        <thead>
          <tr>
            <th scope="col">{t('cover.hive')}</th>
            <th scope="col">{t('cover.what')}</th>
            <th scope="col">{t('cover.due')}</th>
          </tr>
        </thead>
        <tbody>
          {living.map((view) => (
            <HiveRow key={view.colony} view={view} stop={stops.get(view.colony) ?? null} />
          ))}
        </tbody>
      </table>
      <h3>{t('cover.call')}</h3>
      <ul className="cover-call">
        {called.map((role) => {
          const known = aside.contacts.find((one) => one.role === role);
          return (
            <li key={role}>
              <b>{t(`contact.${role}`)}:</b>{' '}
              {known === undefined ? <span className="write-on">{t('cover.not-entered')}</span> : `${known.name}, ${known.phone}`}
            </li>
          );
        })}
      </ul>
      <h3>{t('cover.care')}</h3>
      <ul>
        <li>{t('cover.care-law')}</li>
        <li>{t('caution.stings')}</li>
        <li>{t('caution.smoker')}</li>
        <li>{t('caution.lifting')}</li>
        <li>{t('cover.care-ill')}</li>
      </ul>
    </article>
  );
}

function HiveRow({ view, stop }: { readonly view: ColonyView; readonly stop: Stop | null }) {
  const { t, say, manner } = useText();
  const advice = stop === null || stop.first === null ? [] : [stop.first, ...stop.more];
  const shut = advice.find(({ verb }) => verb === 'leave shut') ?? null;
  const due = advice.find(({ verb }) => verb !== 'leave shut') ?? null;
  const temper = view.visits.findLast((visit) => visit.temper !== null)?.temper ?? null;
  const marked = view.queenMark !== null && view.queenMark !== 'none';
  return (
    <tr>
      <th scope="row">
        {view.name}
        <br />
        <span>{t('cover.place', { hive: view.hiveName, from: String(view.bay.from), to: String(view.bay.to) })}</span>
      </th>
      <td>
        {t(`origin.${view.origin}`)}, {temper === null ? t('cover.temper-unknown') : t(`temper.${temper}` as 'temper.calm')}.{' '}
        {marked ? t('cover.queen-mark', { mark: t(`mark.${view.queenMark}` as 'mark.white') }) : t('cover.queen-unmarked')}
      </td>
      <td>
        {shut === null ? null : (
          <p>
            <b>{t('cover.shut', { day: formatDay(shut.window.latest, manner) })}</b> {say(shut.say)}
          </p>
        )}
        {due === null && shut !== null ? null : <p>{due === null ? t('cover.nothing') : say(due.say)}</p>}
      </td>
    </tr>
  );
}
