/** Forms for a colony that got another queen, and for one that was split by the keeper. */
import { useState } from 'react';
import { Check, Choices, TextField } from '../frame/fields.tsx';
import { useText } from '../frame/manner.tsx';
import { newId, type Note } from '../model/notes.ts';
import { useYard } from '../model/use-yard.tsx';
import { WriteForm } from '../round/write-forms.tsx';
import { type ActFormProps, useDay } from './act-forms.tsx';

const marks = ['none', 'white', 'yellow', 'red', 'green', 'blue'] as const;
const comings = ['introduced', 'raised here', 'found', 'unknown'] as const;
const goings = ['removed', 'died', 'superseded', 'lost', 'unknown'] as const;

export function RequeenedForm({ view, onDone }: ActFormProps) {
  const { t } = useText();
  const { aside } = useYard();
  const [how, setHow] = useState<(typeof comings)[number]>('introduced');
  const [went, setWent] = useState<(typeof goings)[number]>('removed');
  const [mark, setMark] = useState<(typeof marks)[number]>('none');
  const { day, valid, field } = useDay();
  const old = aside.queens[view.colony] ?? null;
  return (
    <WriteForm
      onDone={onDone}
      fault="act-form.fault"
      notes={() => {
        if (!valid) return null;
        const queen = newId();
        const window = { earliest: day, latest: day };
        const gone: readonly Note[] =
          old === null
            ? []
            : [
                {
                  kind: 'reign',
                  at: day,
                  body: { colony: view.colony, queen: old.queen, change: { kind: 'ended', how: went, window } },
                },
              ];
        return [
          ...gone,
          {
            kind: 'queen',
            at: day,
            body: { queen, name: null, mark, emerged: null, clipped: null, motherColony: null },
          },
          { kind: 'reign', at: day, body: { colony: view.colony, queen, change: { kind: 'began', how, window } } },
        ];
      }}
    >
      {old === null ? null : (
        <Choices
          legend={t('act-form.old-queen')}
          value={went}
          onChange={setWent}
          options={goings.map((value) => ({ value, label: t(`going.${value}`) }))}
        />
      )}
      <Choices
        legend={t('act-form.new-queen')}
        value={how}
        onChange={setHow}
        options={comings.map((value) => ({ value, label: t(`coming.${value}`) }))}
      />
      <Choices
        legend={t('act-form.mark')}
        value={mark}
        onChange={setMark}
        options={marks.map((value) => ({ value, label: t(`mark.${value}`) }))}
      />
      {field}
    </WriteForm>
  );
}

export function SplitForm({ view, onDone }: ActFormProps) {
  const { t } = useText();
  const { picture } = useYard();
  const empty = (picture?.hives ?? []).filter((hive) => hive.colonies.length === 0);
  const combs = view.bars.filter((bar) => bar.comb !== null);
  const [hive, setHive] = useState<string | null>(empty[0]?.id ?? null);
  const [name, setName] = useState('');
  const [places, setPlaces] = useState<readonly number[]>([]);
  const [queenSide, setQueenSide] = useState<'stayed' | 'went' | 'unknown'>('unknown');
  const { day, valid, field } = useDay();
  const target = empty.find((one) => one.id === hive) ?? null;
  return (
    <WriteForm
      onDone={onDone}
      fault="act-form.split-fault"
      notes={() => {
        const moved = combs.filter((bar) => places.includes(bar.place));
        if (target === null || !valid || moved.length === 0 || moved.length === combs.length) return null;
        return [
          {
            kind: 'split',
            at: day,
            body: {
              from: view.colony,
              child: newId(),
              childName: name.trim() === '' ? target.name : name.trim(),
              into: { hive: target.id, bay: null },
              combs: moved.map((bar, n) => ({ comb: bar.comb, place: n + 1 })),
              queenSide,
            },
          },
        ];
      }}
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
      <TextField
        label={t('swarm.name')}
        hint={target === null ? undefined : t('swarm.name-hint', { name: target.name })}
        value={name}
        onChange={setName}
      />
      <fieldset>
        <legend>{t('act-form.combs')}</legend>
        <div className="choices">
          {combs.map(({ place }) => (
            <Check
              key={place}
              label={String(place)}
              checked={places.includes(place)}
              onChange={(on) => setPlaces(on ? [...places, place] : places.filter((one) => one !== place))}
            />
          ))}
        </div>
      </fieldset>
      <Choices
        legend={t('act-form.queen-side')}
        value={queenSide}
        onChange={setQueenSide}
        options={(['stayed', 'went', 'unknown'] as const).map((value) => ({ value, label: t(`queen-side.${value}`) }))}
      />
      {field}
    </WriteForm>
  );
}
