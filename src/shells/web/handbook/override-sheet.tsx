/** A figure of the keeper's own on top of the printed one: value, the ends between which it lies, and the reason. */
import { useState } from 'react';
import type { Figure } from '../../../apiary/handbook.ts';
import type { OwnFigure } from '../../../apiary/override-effect.ts';
import { numberOf, TextField } from '../frame/fields.tsx';
import { useText } from '../frame/manner.tsx';
import { Sheet } from '../frame/sheet.tsx';
import { WriteForm } from '../round/write-forms.tsx';
import { useYard } from '../model/use-yard.tsx';
import { unitText } from './figure-line.tsx';
import { OverrideEffect } from './override-effect-part.tsx';

export function OverrideSheet({ figure, onClose }: { readonly figure: Figure; readonly onClose: () => void }) {
  const { t } = useText();
  const { today, aside } = useYard();
  const own = aside.overrides.findLast((one) => one.key === figure.key) ?? null;
  const [value, setValue] = useState(String((own ?? figure).value));
  const [low, setLow] = useState(String((own ?? figure).low));
  const [high, setHigh] = useState(String((own ?? figure).high));
  const [why, setWhy] = useState('');
  const typed = ownOf(figure, value, low, high);
  return (
    <Sheet title={figure.title} onClose={onClose}>
      <p className="soft">
        {t('figure.override-line', {
          value: String(figure.value),
          low: String(figure.low),
          high: String(figure.high),
          unit: unitText(figure.unit),
        })}
      </p>
      <WriteForm
        onDone={onClose}
        fault="figure.override-fault"
        notes={() => {
          if (typed === null || why.trim() === '') return null;
          return [{ kind: 'figure-override', at: today, body: { ...typed, why: why.trim() } }];
        }}
      >
        <TextField
          label={t('figure.override-value')}
          value={value}
          onChange={setValue}
          inputMode="decimal"
          unit={unitText(figure.unit)}
        />
        <TextField
          label={t('figure.override-low')}
          value={low}
          onChange={setLow}
          inputMode="decimal"
          unit={unitText(figure.unit)}
        />
        <TextField
          label={t('figure.override-high')}
          value={high}
          onChange={setHigh}
          inputMode="decimal"
          unit={unitText(figure.unit)}
        />
        <TextField label={t('figure.override-why')} hint={t('figure.override-why-hint')} value={why} onChange={setWhy} />
        <OverrideEffect own={typed} />
      </WriteForm>
    </Sheet>
  );
}

/** What is typed, where it is a value between its ends; null while it is not. */
function ownOf(figure: Figure, value: string, low: string, high: string): OwnFigure | null {
  const [likely, least, most] = [numberOf(value), numberOf(low), numberOf(high)];
  if (likely === null || least === null || most === null || least > likely || likely > most) return null;
  return { figure: figure.key, value: likely, low: least, high: most };
}
