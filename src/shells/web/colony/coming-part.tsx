/** What may come: a swarm, a brood hemmed in, a full trough, hunger; each with its chance, its days and what would settle it. */
import type { Foreseen } from '../../../colony/foreseen.ts';
import { comingLines } from '../../../words/foreseen-lines.ts';
import { useText } from '../frame/manner.tsx';

export function ComingPart({ foreseen }: { readonly foreseen: Foreseen }) {
  const { t, manner } = useText();
  return (
    <section>
      <h2>{t('coming.title', { days: foreseen.coming.horizonDays })}</h2>
      <dl className="coming">
        {comingLines(foreseen.coming, manner).map(({ name, what, chance, more }) => (
          <div key={name}>
            <dt>{what}</dt>
            <dd>{chance}</dd>
            {more === '' ? null : <dd className="soft">{more}</dd>}
          </div>
        ))}
      </dl>
    </section>
  );
}
