/** What the last visit showed otherwise than expected, with rival explanations and their chances; never a diagnosis. */
import type { Foreseen } from '../../../colony/foreseen.ts';
import { movedLines, surpriseLines } from '../../../words/foreseen-lines.ts';
import { useText } from '../frame/manner.tsx';

export function SurprisePart({ foreseen }: { readonly foreseen: Foreseen }) {
  const { t, manner } = useText();
  if (foreseen.cloud.visits === 0) return null;
  return (
    <section className="surprises">
      <h2>{t('surprise.title')}</h2>
      {foreseen.surprises.length === 0 ? <p>{t('surprise.none')}</p> : null}
      {foreseen.surprises.map((surprise, n) => {
        const { what, because } = surpriseLines(surprise, manner);
        return (
          <article key={n}>
            <p>
              <b>{what}</b>
            </p>
            <p>{t('surprise.because')}</p>
            <ul>
              {because.map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          </article>
        );
      })}
      {foreseen.moved.length === 0 ? null : (
        <article>
          <p>{t('surprise.moved')}</p>
          <ul>
            {movedLines(foreseen.moved, manner).map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </article>
      )}
      {foreseen.surprises.length === 0 ? null : <p className="soft small">{t('surprise.caution')}</p>}
    </section>
  );
}
