/** The hives and their inside measures: what is typical is said to be so, until the keeper measures it. */
import { useState } from 'react';
import { printed } from '../../../apiary/handbook.ts';
import type { Hive } from '../../../hive/state.ts';
import { Choices, numberOf, TextField } from '../frame/fields.tsx';
import { useText } from '../frame/manner.tsx';
import { Sheet } from '../frame/sheet.tsx';
import { newId } from '../model/notes.ts';
import { useYard } from '../model/use-yard.tsx';
import { WriteForm } from '../round/write-forms.tsx';

type Measured = Pick<Hive, 'name' | 'bars' | 'barWidth' | 'topWidth' | 'depth' | 'wallAngleDeg' | 'wallAngleHow' | 'entrance'> & {
  readonly id: string | null;
};

export function HiveList() {
  const { t, manner } = useText();
  const { aside, entries } = useYard();
  const [open, setOpen] = useState<Measured | null>(null);
  if (entries.length === 0) return null;
  const unit = manner.units === 'US' ? 'in' : 'cm';
  const another = (): Measured => {
    const last = aside.hives.at(-1);
    const typical = { unit: 'mm', how: 'typical' } as const;
    return {
      id: null,
      name: t('start.hive-name', { n: aside.hives.length + 1 }),
      bars: last?.bars ?? 24,
      barWidth: last?.barWidth ?? { value: printed('bar-width').value, ...typical },
      topWidth: last?.topWidth ?? { value: unit === 'in' ? 18 : 45, unit, how: 'typical' },
      depth: last?.depth ?? { value: unit === 'in' ? 12 : 30, unit, how: 'typical' },
      wallAngleDeg: last?.wallAngleDeg ?? printed('wall-angle').value,
      wallAngleHow: last?.wallAngleHow ?? 'typical',
      entrance: last?.entrance ?? 'first',
    };
  };
  const length = (one: Hive['depth']) =>
    t(one.how === 'typical' ? 'settings.length-typical' : 'settings.length', { value: one.value, unit: one.unit });
  return (
    <section>
      <h2>{t('settings.hives')}</h2>
      <ul className="plain-list">
        {aside.hives.map((hive) => (
          <li key={hive.id}>
            <p>
              <b>{hive.name}</b>:{' '}
              {t('settings.hive-line', {
                bars: hive.bars,
                width: length(hive.topWidth),
                depth: length(hive.depth),
                barWidth: length(hive.barWidth),
              })}
            </p>
            <button type="button" onClick={() => setOpen(hive)}>
              {t('settings.measure')}
              <span className="hidden-text"> {hive.name}</span>
            </button>
          </li>
        ))}
      </ul>
      <div className="acts">
        <button type="button" onClick={() => setOpen(another())}>
          {t('settings.add-hive')}
        </button>
      </div>
      {open === null ? null : <HiveSheet hive={open} onClose={() => setOpen(null)} />}
    </section>
  );
}

const entrances = ['first', 'last', 'side'] as const;

function HiveSheet({ hive, onClose }: { readonly hive: Measured; readonly onClose: () => void }) {
  const { t } = useText();
  const { today } = useYard();
  const [name, setName] = useState(hive.name);
  const [bars, setBars] = useState(String(hive.bars));
  const [lengths, setLengths] = useState({
    topWidth: String(hive.topWidth.value),
    depth: String(hive.depth.value),
    barWidth: String(hive.barWidth.value),
  });
  const [angle, setAngle] = useState(String(hive.wallAngleDeg));
  const [entrance, setEntrance] = useState(hive.entrance);
  return (
    <Sheet title={hive.name} onClose={onClose}>
      <WriteForm
        onDone={onClose}
        fault="settings.hive-fault"
        notes={() => {
          const [count, lean] = [numberOf(bars), numberOf(angle)];
          const values = {
            topWidth: numberOf(lengths.topWidth),
            depth: numberOf(lengths.depth),
            barWidth: numberOf(lengths.barWidth),
          };
          if (
            name.trim() === '' ||
            count === null ||
            !Number.isInteger(count) ||
            count < 1 ||
            count > 60 ||
            lean === null ||
            lean < 0 ||
            lean > 60
          )
            return null;
          if (Object.values(values).some((value) => value === null || value <= 0)) return null;
          const now = (key: 'topWidth' | 'depth' | 'barWidth') => {
            const was = hive[key];
            const value = values[key] ?? was.value;
            return { value, unit: was.unit, how: value === was.value ? was.how : 'measured' };
          };
          return [
            {
              kind: 'hive',
              at: today,
              body: {
                hive: hive.id ?? newId(),
                name: name.trim(),
                bars: count,
                barWidth: now('barWidth'),
                topWidth: now('topWidth'),
                depth: now('depth'),
                wallAngleDeg: lean,
                wallAngleHow: lean === hive.wallAngleDeg ? hive.wallAngleHow : 'measured',
                entrance,
              },
            },
          ];
        }}
      >
        <p className="soft small">{t('settings.hive-sheet')}</p>
        <TextField label={t('settings.name')} value={name} onChange={setName} />
        <TextField label={t('start.bars')} value={bars} onChange={setBars} inputMode="numeric" />
        {(['topWidth', 'depth', 'barWidth'] as const).map((key) => (
          <TextField
            key={key}
            label={t(`settings.${key}`)}
            hint={hive[key].how === 'typical' ? t('settings.is-typical') : undefined}
            value={lengths[key]}
            onChange={(value) => setLengths({ ...lengths, [key]: value })}
            inputMode="decimal"
            unit={hive[key].unit}
          />
        ))}
        <TextField
          label={t('settings.angle')}
          hint={hive.wallAngleHow === 'typical' ? t('settings.is-typical') : undefined}
          value={angle}
          onChange={setAngle}
          inputMode="decimal"
          unit="°"
        />
        <Choices
          legend={t('settings.entrance')}
          value={entrance}
          onChange={setEntrance}
          options={entrances.map((value) => ({ value, label: t(`entrance.${value}`) }))}
        />
      </WriteForm>
    </Sheet>
  );
}
