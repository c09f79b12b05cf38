/** A piece cut or broken from the comb of the chosen place: how much of it, and where it went. */
import { useState } from 'react';
import { useText } from '../frame/manner.tsx';
import type { BodyProps } from './body-props.ts';
import { Stepper } from './parts.tsx';
import { useHand } from './use-session.ts';

const away = ['box', 'tub', 'freezer'] as const;
const most8 = 7;

export function BodiesPiece({ draft, now, place }: BodyProps) {
  const { t } = useText();
  const { body, view, ports } = useHand();
  const [share8, setShare8] = useState(2);
  const hung = now.row.at.get(place);
  if (hung === undefined || hung.bare) return <p>{t('visiting.piece-none', { place: String(place) })}</p>;
  const bare = bareBars(draft, now, view.bars).filter((one) => one !== place);
  const [nearest] = bare.sort((a, b) => Math.abs(a - place) - Math.abs(b - place));
  return (
    <>
      <p>{t('visiting.piece-about', { place: String(place) })}</p>
      <Stepper
        what={t('visiting.piece-share')}
        value={share8}
        onStep={(by) => setShare8((old) => Math.min(most8, Math.max(1, old + by)))}
      />
      <h2>{t('visiting.piece-to')}</h2>
      <div className="visit-grid visit-grid-3">
        {away.map((where) => (
          <button
            key={where}
            type="button"
            onClick={() => body({ kind: 'piece', place, comb: ports.newId(), share8, to: { kind: 'away', where } })}
          >
            {t(`visiting.moves-to.${where}`)}
          </button>
        ))}
      </div>
      {nearest === undefined ? null : (
        <button
          type="button"
          className="visit-wide"
          onClick={() => body({ kind: 'piece', place, comb: ports.newId(), share8, to: { kind: 'place', place: nearest } })}
        >
          {t('visiting.piece-tied', { place: String(nearest) })}
        </button>
      )}
    </>
  );
}

/** Places with a bar known to be bare: hung in or read so today, or so by the journal and not moved. */
function bareBars(
  draft: BodyProps['draft'],
  { row }: BodyProps['now'],
  believed: readonly { readonly place: number; readonly kind: string }[],
): number[] {
  const readToday = new Set(draft.read.map((one) => one.place));
  return [...row.at].flatMap(([place, { what, bare }]) => {
    const byJournal =
      what === place && !readToday.has(place) && believed.some((bar) => bar.place === place && bar.kind === 'bare');
    if (place < row.from || place > row.to) return [];
    const tied = draft.acts.some(({ onto }) => onto === what);
    return bare || (byJournal && !tied) ? [place] : [];
  });
}
