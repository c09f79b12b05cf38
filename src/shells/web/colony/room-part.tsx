/** Room for the queen: empty cells in the brood, what comes free and what is filled a day, and when it runs out. */
import type { ColonyView } from '../../../colony/view.ts';
import { useText } from '../frame/manner.tsx';
import { numberPart, rangePart, windowPart } from '../frame/parts.ts';

export function RoomPart({ view }: { readonly view: ColonyView }) {
  const { t } = useText();
  const { room, solid } = view;
  return (
    <section>
      <h2>{t('room.title')}</h2>
      {room === null ? (
        <p>{t('room.unknown')}</p>
      ) : (
        <ul>
          <li>{t('room.empty', { cells: rangePart(room.empty, 'cells') })}</li>
          <li>{t('room.emerging', { perDay: rangePart(room.emergingPerDay, 'per day') })}</li>
          <li>{t('room.laid', { perDay: rangePart(room.laidPerDay, 'per day') })}</li>
          {room.nectarPerDay.high > 0 ? <li>{t('room.nectar', { perDay: rangePart(room.nectarPerDay, 'per day') })}</li> : null}
          <li>{room.fullOn === null ? t('room.not-in-sight') : t('room.full-on', { window: windowPart(room.fullOn) })}</li>
          <li>{t('room.bare-bars', { count: numberPart(room.bareBars, 'bars') })}</li>
        </ul>
      )}
      {solid === null ? null : (
        <p>
          {t('room.solid', {
            percent: Math.round(solid.percent),
            low: Math.round(solid.lo95),
            high: Math.round(solid.hi95),
          })}
        </p>
      )}
    </section>
  );
}
