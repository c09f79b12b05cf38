/** The three questions of a hive: how many bars, how wide inside at the top, how deep. The rest is typical until measured. */
import { type FormEvent, useState } from 'react';
import { inBase } from '../../../numbers/units.ts';
import { numberOf, TextField } from '../frame/fields.tsx';
import { useText } from '../frame/manner.tsx';
import type { HiveMeasures } from './hive-note.ts';

interface HiveQuestionsProps {
  readonly submit: string;
  readonly onDone: (measures: HiveMeasures) => void;
}

/** Outside these a length is more likely a slip of the thumb than a hive; in mm. */
const widthFits = { least: 150, most: 900 };
const depthFits = { least: 100, most: 700 };
const mostBars = 60;

export function HiveQuestions({ submit, onDone }: HiveQuestionsProps) {
  const { t, manner } = useText();
  const unit = manner.units === 'US' ? 'in' : 'cm';
  const [bars, setBars] = useState('');
  const [width, setWidth] = useState('');
  const [depth, setDepth] = useState('');
  const [tried, setTried] = useState(false);
  const barsGiven = numberOf(bars);
  const barsFit = barsGiven !== null && Number.isInteger(barsGiven) && barsGiven >= 1 && barsGiven <= mostBars;
  const widthOk = fits(width, unit, widthFits);
  const depthOk = fits(depth, unit, depthFits);

  function send(event: FormEvent): void {
    event.preventDefault();
    setTried(true);
    if (!barsFit || !widthOk || !depthOk) return;
    onDone({
      bars: barsGiven,
      topWidth: { value: numberOf(width) ?? 0, unit, how: 'measured' },
      depth: { value: numberOf(depth) ?? 0, unit, how: 'measured' },
    });
  }

  return (
    <form onSubmit={send} noValidate>
      <TextField
        label={t('start.bars')}
        value={bars}
        onChange={setBars}
        inputMode="numeric"
        unit={t('start.bars-unit')}
        fault={tried && !barsFit ? t('start.bars-fault', { most: mostBars }) : undefined}
      />
      <TextField
        label={t('start.width')}
        hint={t('start.width-hint')}
        value={width}
        onChange={setWidth}
        inputMode="decimal"
        unit={unit}
        fault={tried && !widthOk ? t('start.length-fault', spanOf(widthFits, unit)) : undefined}
      />
      <TextField
        label={t('start.depth')}
        hint={t('start.depth-hint')}
        value={depth}
        onChange={setDepth}
        inputMode="decimal"
        unit={unit}
        fault={tried && !depthOk ? t('start.length-fault', spanOf(depthFits, unit)) : undefined}
      />
      <p className="soft small">{t('start.typical')}</p>
      <div className="acts">
        <button type="submit" className="go">
          {submit}
        </button>
      </div>
    </form>
  );
}

function fits(typed: string, unit: string, span: { readonly least: number; readonly most: number }): boolean {
  const value = numberOf(typed);
  const mm = value === null ? null : inBase({ value, unit }, 'mm');
  return mm !== null && mm >= span.least && mm <= span.most;
}

function spanOf(
  span: { readonly least: number; readonly most: number },
  unit: 'cm' | 'in',
): { least: number; most: number; unit: string } {
  const perUnit = inBase({ value: 1, unit }, 'mm') ?? 1;
  return { least: Math.ceil(span.least / perUnit), most: Math.floor(span.most / perUnit), unit };
}
