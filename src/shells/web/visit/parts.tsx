/** What the visit is tapped with: steps of a ruler, one of several, more and less. Never a drag, a pinch or a long press. */
import { memo, type ReactNode, useId } from 'react';
import { useText } from '../frame/manner.tsx';
import { useHand } from './use-session.ts';

const steps = [0, 1, 2, 3, 4, 5, 6, 7, 8] as const;

interface RulerProps {
  readonly what: 'brood' | 'food';
  readonly value: number | null;
}

/** Nine touching steps: a thumb that lands between two is still on one of them. Made anew only when its value changes. */
export const Ruler = memo(function Ruler({ what, value }: RulerProps) {
  const { t } = useText();
  const { tap } = useHand();
  const id = useId();
  const name = t(`visiting.what.${what}`);
  return (
    <div className="visit-ruled" role="group" aria-labelledby={id}>
      <h2 id={id}>{t(`visiting.${what}`)}</h2>
      <div className="visit-ruler">
        {steps.map((n) => (
          <button
            key={n}
            type="button"
            aria-pressed={value === n}
            aria-label={t('visiting.step', { n, what: name })}
            onClick={() => tap({ kind: what, eighths: n })}
          >
            {n}
          </button>
        ))}
      </div>
    </div>
  );
});

interface OneOfProps<T extends string> {
  readonly legend: string;
  /** Hidden: said by screen readers only. */
  readonly quiet?: boolean;
  readonly value: T | null;
  readonly options: readonly { readonly value: T; readonly label: string }[];
  readonly onChoose: (value: T) => void;
  readonly columns?: number;
}

export function OneOf<T extends string>({ legend, quiet = false, value, options, onChoose, columns = 3 }: OneOfProps<T>) {
  const id = useId();
  return (
    <div role="group" aria-labelledby={id}>
      <h2 id={id} className={quiet ? 'hidden-text' : undefined}>
        {legend}
      </h2>
      <div className={`visit-grid visit-grid-${columns}`}>
        {options.map((option) => (
          <button key={option.value} type="button" aria-pressed={option.value === value} onClick={() => onChoose(option.value)}>
            {option.label}
          </button>
        ))}
      </div>
    </div>
  );
}

interface StepperProps {
  readonly what: string;
  readonly value: number | null;
  /** Shown instead of the number while there is none. */
  readonly unset?: string;
  /** The name before the number: "place 8". */
  readonly named?: boolean;
  readonly onStep: (by: 1 | -1) => void;
  readonly children?: ReactNode;
}

export function Stepper({ what, value, unset = '–', named = false, onStep, children }: StepperProps) {
  const { t } = useText();
  return (
    <div className="visit-stepper" role="group" aria-label={what}>
      <button type="button" aria-label={t('visiting.less-of', { what })} onClick={() => onStep(-1)}>
        −
      </button>
      <span>
        {named ? <span>{what} </span> : null}
        <b>{value ?? unset}</b> {named ? null : <span>{children ?? what}</span>}
      </span>
      <button type="button" aria-label={t('visiting.more-of', { what })} onClick={() => onStep(1)}>
        +
      </button>
    </div>
  );
}
