/** Whether opening the hive is worth it, when, what a look is asked, and the fewest bars that answer. */
import type { Foreseen } from '../../../colony/foreseen.ts';
import { lookLines } from '../../../words/foreseen-lines.ts';
import { useText } from '../frame/manner.tsx';

export function LookPart({ foreseen }: { readonly foreseen: Foreseen }) {
  const { t, manner } = useText();
  const { look, day, coming } = foreseen;
  return (
    <section>
      <h2>{t('look.title')}</h2>
      {look.harms ? (
        <ul className="forbids">
          <li>{t('look.harms')}</li>
        </ul>
      ) : null}
      {lookLines(look, day, coming.horizonDays, manner).map((line) => (
        <p key={line}>{line}</p>
      ))}
    </section>
  );
}
