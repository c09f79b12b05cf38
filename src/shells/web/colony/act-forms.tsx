/** Forms for a colony that is united, moved or ended, and for a measurement of the keeper's own. */
import { useState } from 'react';
import type { ColonyView } from '../../../colony/view.ts';
import { isDay } from '../../../numbers/day.ts';
import { Choices, numberOf, TextField } from '../frame/fields.tsx';
import { useText } from '../frame/manner.tsx';
import { useYard } from '../model/use-yard.tsx';
import { WriteForm } from '../round/write-forms.tsx';

export interface ActFormProps {
  readonly view: ColonyView;
  readonly onDone: () => void;
}

/** The day on which it was so: today unless the keeper says otherwise. */
export function useDay() {
  const { today } = useYard();
  const { t } = useText();
  const [day, setDay] = useState<string>(today);
  const valid = isDay(day) && day <= today;
  return { day, valid, field: <TextField label={t('act-form.day')} type="date" value={day} onChange={setDay} /> };
}

export function UnitedForm({ view, onDone }: ActFormProps) {
  const { t } = useText();
  const { picture } = useYard();
  const others = (picture?.colonies ?? []).filter((one) => one.colony !== view.colony && one.ended === null);
  const [into, setInto] = useState<string | null>(null);
  const { day, valid, field } = useDay();
  return (
    <WriteForm
      onDone={onDone}
      fault="act-form.fault"
      notes={() => (into === null || !valid ? null : [{ kind: 'unite', at: day, body: { from: view.colony, into } }])}
    >
      {others.length === 0 ? (
        <p>{t('act-form.no-other')}</p>
      ) : (
        <Choices
          legend={t('act-form.into-colony')}
          value={into}
          onChange={setInto}
          options={others.map((one) => ({ value: one.colony, label: one.name }))}
        />
      )}
      {field}
    </WriteForm>
  );
}

export function MovedForm({ view, onDone }: ActFormProps) {
  const { t } = useText();
  const { picture } = useYard();
  const empty = (picture?.hives ?? []).filter((hive) => hive.colonies.length === 0);
  const [hive, setHive] = useState<string | null>(empty[0]?.id ?? null);
  const { day, valid, field } = useDay();
  return (
    <WriteForm
      onDone={onDone}
      fault="act-form.fault"
      notes={() =>
        hive === null || !valid
          ? null
          : [
              {
                kind: 'colony',
                at: day,
                body: {
                  colony: view.colony,
                  name: view.name,
                  origin: view.origin,
                  parent: view.parent,
                  began: view.began,
                  hive,
                  bay: null,
                },
              },
            ]
      }
    >
      {empty.length === 0 ? (
        <p>{t('write.no-empty-hive')}</p>
      ) : (
        <Choices
          legend={t('act-form.into-hive')}
          value={hive}
          onChange={setHive}
          options={empty.map((one) => ({ value: one.id, label: one.name }))}
        />
      )}
      {field}
    </WriteForm>
  );
}

const ends = ['died in winter', 'died', 'absconded', 'sold', 'unknown'] as const;

export function EndedForm({ view, onDone }: ActFormProps) {
  const { t } = useText();
  const { today } = useYard();
  const [how, setHow] = useState<(typeof ends)[number] | null>(null);
  const { day, valid, field } = useDay();
  return (
    <WriteForm
      onDone={onDone}
      fault="act-form.fault"
      notes={() =>
        how === null || !valid
          ? null
          : [
              {
                kind: 'colony-ended',
                at: day,
                body: { colony: view.colony, how, window: { earliest: day, latest: today } },
              },
            ]
      }
    >
      <Choices
        legend={t('act-form.how-ended')}
        value={how}
        onChange={setHow}
        options={ends.map((value) => ({ value, label: t(`end.${value}`) }))}
      />
      {field}
      <p className="soft small">{t('act-form.ended-line')}</p>
    </WriteForm>
  );
}

const measures = [
  { what: 'cells along 10 cm', units: { metric: 'mm', US: 'mm' }, least: 8, most: 30 },
  { what: 'honey comb weight', units: { metric: 'kg', US: 'lb' }, least: 0.1, most: 20 },
  { what: 'bees on a face', units: { metric: 'bees', US: 'bees' }, least: 50, most: 5000 },
  { what: 'box length', units: { metric: 'cm', US: 'in' }, least: 10, most: 400 },
] as const;

export function MeasuredForm({ view, onDone }: ActFormProps) {
  const { t, manner } = useText();
  const [what, setWhat] = useState<(typeof measures)[number]['what']>('cells along 10 cm');
  const [typed, setTyped] = useState('');
  const [place, setPlace] = useState('');
  const { day, valid, field } = useDay();
  const measure = measures.find((one) => one.what === what) ?? measures[0];
  const counted = what === 'cells along 10 cm' || what === 'bees on a face';
  const unit = counted ? 'count' : measure.units[manner.units];
  return (
    <WriteForm
      onDone={onDone}
      fault="act-form.measure-fault"
      notes={() => {
        const value = numberOf(typed);
        if (value === null || value < measure.least || value > measure.most || !valid) return null;
        const comb = view.bars.find((bar) => String(bar.place) === place.trim())?.comb ?? null;
        return [{ kind: 'measurement', at: day, body: { what, typed: { value, unit }, comb, hive: view.hive } }];
      }}
    >
      <Choices
        legend={t('act-form.what-measured')}
        value={what}
        onChange={setWhat}
        options={measures.map((one) => ({ value: one.what, label: t(`measure.${one.what}`) }))}
      />
      <TextField label={t('act-form.value')} value={typed} onChange={setTyped} inputMode="decimal" unit={counted ? '' : unit} />
      {what === 'box length' ? null : (
        <TextField label={t('act-form.place')} value={place} onChange={setPlace} inputMode="numeric" />
      )}
      {field}
    </WriteForm>
  );
}
