/** What can be done at the chosen place: with the bar that hangs there, or where none hangs. */
import { useState } from 'react';
import { awayWhere, isTooWide, step } from '../../../apiary/visit-terms.ts';
import { useText } from '../frame/manner.tsx';
import type { Arrangement } from './arrangement.ts';
import { Stepper } from './parts.tsx';
import { useHand } from './use-session.ts';

interface AtProps {
  readonly now: Arrangement;
  readonly place: number;
}

export function AtBar({ now, place }: AtProps) {
  const { t } = useText();
  const { move } = useHand();
  const next = place + step(now.row.outward);
  return (
    <>
      <h2>{t('visiting.moves-take')}</h2>
      <div className="visit-grid visit-grid-4">
        {awayWhere.map((to) => (
          <button key={to} type="button" onClick={() => move({ do: 'take', place, to })}>
            {t(`visiting.moves-to.${to}`)}
          </button>
        ))}
      </div>
      <h2>{t('visiting.moves-here')}</h2>
      <div className="visit-grid visit-grid-2">
        <button type="button" aria-disabled={!now.row.at.has(next)} onClick={() => move({ do: 'swap', place, with: next })}>
          {t('visiting.moves-swap', { place: String(next) })}
        </button>
        <button type="button" onClick={() => move({ do: 'turn', place })}>
          {t('visiting.moves-turn')}
        </button>
        <button type="button" onClick={() => move({ do: 'put', place, what: { kind: 'bare' }, room: 'make way' })}>
          {t('visiting.moves-bare')}
        </button>
        <button type="button" onClick={() => move({ do: 'shift', place, by: 1 })}>
          {t('visiting.moves-shift')}
        </button>
        <button type="button" onClick={() => move({ do: 'follower', place })}>
          {t('visiting.moves-follower')}
        </button>
        <Spacer key={place} place={place} />
      </div>
    </>
  );
}

const usualSpacerMm = 5;
const mostSpacerMm = 40;

/** A strip of wood beside the bar, of so many millimetres. */
function Spacer({ place }: { readonly place: number }) {
  const { t } = useText();
  const { move, ports } = useHand();
  const [widthMm, setWidthMm] = useState<number | null>(null);
  if (widthMm === null) {
    return (
      <button type="button" onClick={() => setWidthMm(usualSpacerMm)}>
        {t('visiting.moves-spacer')}
      </button>
    );
  }
  const { widths } = ports;
  const tooWide = widths !== null && isTooWide({ ...widths, sumMm: widths.sumMm + widthMm });
  const set = (): void => {
    if (tooWide) return;
    move({ do: 'spacer', place, widthMm });
    setWidthMm(null);
  };
  return (
    <>
      <Stepper
        what={t('visiting.moves-spacer-mm')}
        value={widthMm}
        onStep={(by) => setWidthMm(Math.min(mostSpacerMm, Math.max(0, widthMm + by)))}
      />
      <button type="button" aria-disabled={tooWide} onClick={set}>
        {t(tooWide ? 'visiting.moves-spacer-wide' : 'visiting.moves-spacer-set', { n: widthMm })}
      </button>
    </>
  );
}

export function AtGap({ now, place }: AtProps) {
  const { t } = useText();
  const { move } = useHand();
  const next = place + step(now.row.outward);
  return (
    <div className="visit-grid visit-grid-2">
      <button type="button" onClick={() => move({ do: 'put', place, what: { kind: 'bare' }, room: 'free' })}>
        {t('visiting.moves-bare-gap')}
      </button>
      <button type="button" aria-disabled={!now.row.at.has(next)} onClick={() => move({ do: 'shift', place: next, by: -1 })}>
        {t('visiting.moves-close')}
      </button>
    </div>
  );
}
