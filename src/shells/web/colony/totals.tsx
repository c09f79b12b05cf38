/** Bees, brood and stores in two parts: seen at the last visit, and carried forward for what was not opened. */
import type { Unit } from '../../../advice/advice.ts';
import type { ColonyView, TotalName } from '../../../colony/view.ts';
import type { Range } from '../../../numbers/range.ts';
import { useText } from '../frame/manner.tsx';
import { dayPart, rangePart } from '../frame/parts.ts';

const rows = [
  { name: 'adults', unit: 'bees' },
  { name: 'egg', unit: 'cells' },
  { name: 'larva', unit: 'cells' },
  { name: 'sealed', unit: 'cells' },
  { name: 'emerging', unit: 'cells' },
  { name: 'drone', unit: 'cells' },
  { name: 'honeyKg', unit: 'kg' },
  { name: 'breadKg', unit: 'kg' },
] as const satisfies readonly { readonly name: TotalName; readonly unit: Unit }[];

export function Totals({ view }: { readonly view: ColonyView }) {
  const { t } = useText();
  const allSeen = rows.every(({ name }) => view.totals[name].carried.high <= 0);
  /** The two parts, where there are two: what was seen, and what stands for the bars that were not opened. */
  const partsLine = (seen: Range, carried: Range, unit: Unit): string => {
    if (carried.high <= 0) return t('colony.all-seen');
    if (seen.high <= 0) return t('colony.all-carried');
    return t('colony.parts', { seen: rangePart(seen, unit), carried: rangePart(carried, unit) });
  };
  return (
    <section>
      <h2>{t('colony.totals', { day: dayPart(view.day) })}</h2>
      <dl className="totals">
        {rows.map(({ name, unit }) => {
          const { seen, carried, total, ink } = view.totals[name];
          return (
            <div key={name} data-ink={ink}>
              <dt>{t(`total.${name}`)}</dt>
              <dd>{t('colony.value', { value: rangePart(total, unit) })}</dd>
              {allSeen ? null : <dd className="parts soft">{partsLine(seen, carried, unit)}</dd>}
            </div>
          );
        })}
      </dl>
      {view.layingPerDay === null ? null : <p>{t('colony.laying', { perDay: rangePart(view.layingPerDay, 'per day') })}</p>}
      <p className="soft small">
        {allSeen ? `${t('colony.nothing-carried')} ` : ''}
        {t('colony.ranges')}
      </p>
    </section>
  );
}
