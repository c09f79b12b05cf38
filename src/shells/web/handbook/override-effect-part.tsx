/** What the figure that is typed would change, worked out beside the screen; what was shown stays until it is there. */
import { useEffect, useState } from 'react';
import type { ColonyEffect, EffectNumber, OwnFigure } from '../../../apiary/override-effect.ts';
import type { Slot } from '../../../advice/advice.ts';
import { useText } from '../frame/manner.tsx';
import { effectOf } from '../model/engine.ts';
import { useYard } from '../model/use-yard.tsx';

const settleMs = 300;
const units = { adults: 'bees', sealed: 'cells', honeyKg: 'kg', laying: 'per day', emptyInBrood: 'cells' } as const;

export function OverrideEffect({ own }: { readonly own: OwnFigure | null }) {
  const { t, say } = useText();
  const { today } = useYard();
  const [found, setFound] = useState<readonly ColonyEffect[] | null>(null);
  const asked = own === null ? null : JSON.stringify(own);
  useEffect(() => {
    if (asked === null) return undefined;
    let wanted = true;
    const later = setTimeout(() => {
      void effectOf(JSON.parse(asked) as OwnFigure, today).then((effects) => {
        if (wanted) setFound(effects);
      });
    }, settleMs);
    return () => {
      wanted = false;
      clearTimeout(later);
    };
  }, [asked, today]);
  if (own === null || found === null) return null;
  return (
    <section className="override-effect" aria-live="polite">
      <h3>{t('effect.title')}</h3>
      {found.length === 0 ? <p>{t('effect.none')}</p> : null}
      <ul>
        {found.map((effect) => (
          <li key={effect.colony}>
            <b>{effect.name}</b>
            <ul>
              {effect.moved.map(({ what, was, would }) => (
                <li key={what}>{t(`effect.${what}`, { was: rangeOf(was, what), would: rangeOf(would, what) })}</li>
              ))}
              {effect.gone.map((saying, n) => (
                <li key={`gone ${n}`}>{t('effect.gone', { advice: say(saying) })}</li>
              ))}
              {effect.come.map((saying, n) => (
                <li key={`come ${n}`}>{t('effect.come', { advice: say(saying) })}</li>
              ))}
            </ul>
          </li>
        ))}
      </ul>
    </section>
  );
}

function rangeOf(range: ColonyEffect['moved'][number]['was'], what: EffectNumber): Slot {
  return { kind: 'range', range, unit: units[what], cite: { kind: 'worked out', from: [] } };
}
