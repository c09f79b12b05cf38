/**
 * One quiet line on a bar that lies far from what was foreseen of it: what was seen and foreseen, the likeliest
 * explanations, and one tap to look at it again. It stands in nobody's way and goes with the next reading.
 */
import { farBarLine } from '../../../words/far-bar-line.ts';
import { useText } from '../frame/manner.tsx';
import type { ToldBar } from './draft.ts';
import { useHand } from './use-session.ts';

/** Nothing where the bar put down last was about as foreseen. */
export function FarLine({ told }: { readonly told: ToldBar | null }) {
  const { t, manner } = useText();
  const { go } = useHand();
  const far = told?.far ?? null;
  if (told === null || far === null) return null;
  const { place } = told;
  return (
    <div className="visit-far">
      <p>{farBarLine(far.part, far.surprise, manner)}</p>
      <button type="button" onClick={() => go(place)}>
        {t('visiting.far-again')}
        <span className="hidden-text"> {t('visiting.far-place', { place: String(place) })}</span>
      </button>
    </div>
  );
}
