/** Bees, brood and stores in two parts: seen at the last visit, and carried forward for what was not opened. */
import type { ColonyView, TotalName } from '../../../colony/view.ts';
import type { Unit } from '../../../advice/advice.ts';
import { useText } from '../frame/manner.tsx';
import { dayPart, rangePart } from '../frame/parts.ts';

const rows = [
  { name: 'adults', unit: 'bees' }, { name: 'egg', unit: 'cells' }, { name: 'larva', unit: 'cells' }, { name: 'sealed', unit: 'cells' },
  { name: 'emerging', unit: 'cells' }, { name: 'drone', unit: 'cells' }, { name: 'honeyKg', unit: 'kg' }, { name: 'breadKg', unit: 'kg' },
] as const satisfies readonly { readonly name: TotalName; readonly unit: Unit }[];

export function Totals({ view }: { readonly view: ColonyView }) {
  const { t } = useText();
  return (
    <section>
      <h2>{t('colony.totals', { day: dayPart(view.day) })}</h2>
      <div className="scrolls" tabIndex={0} role="region" aria-label={t('colony.totals', { day: dayPart(view.day) })}>
        <table className="totals">
          <thead>
            <tr>
              <th scope="col">{t('colony.what')}</th><th scope="col">{t('colony.together')}</th>
              <th scope="col">{t('colony.seen')}</th><th scope="col">{t('colony.carried')}</th>
            </tr>
          </thead>
          <tbody>
            {rows.map(({ name, unit }) => {
              const total = view.totals[name];
              const carried = total.carried.high > 0;
              return (
                <tr key={name} data-ink={total.ink}>
                  <th scope="row">{t(`total.${name}`)}</th>
                  <td className="together">{t('colony.value', { value: rangePart(total.total, unit) })}</td>
                  <td>{total.seen.high > 0 ? t('colony.value', { value: rangePart(total.seen, unit) }) : '–'}</td>
                  <td>{carried ? t('colony.value', { value: rangePart(total.carried, unit) }) : '–'}</td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </div>
      {view.layingPerDay === null ? null : <p>{t('colony.laying', { perDay: rangePart(view.layingPerDay, 'per day') })}</p>}
      <p className="soft small">{t('colony.ranges')}</p>
    </section>
  );
}
