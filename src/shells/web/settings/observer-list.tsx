/** Who writes in this journal, and who holds this device now. */
import { useState } from 'react';
import { Choices, TextField } from '../frame/fields.tsx';
import { useText } from '../frame/manner.tsx';
import { newId } from '../model/notes.ts';
import { useYard } from '../model/use-yard.tsx';
import { WriteForm } from '../round/write-forms.tsx';

const roles = ['keeper', 'helper', 'learner'] as const;

export function ObserverList() {
  const { t } = useText();
  const { aside, observer, setObserver, today, entries } = useYard();
  const [name, setName] = useState('');
  const [role, setRole] = useState<(typeof roles)[number]>('helper');
  if (entries.length === 0) return null;
  return (
    <section>
      <h2>{t('settings.observers')}</h2>
      {aside.observers.length === 0 ? null : (
        <Choices
          legend={t('settings.holds')}
          value={observer}
          onChange={setObserver}
          options={aside.observers.map((one) => ({
            value: one.id,
            label: t('settings.observer', { name: one.name, role: t(`role.${one.role}`) }),
          }))}
        />
      )}
      <ReaderBiases />
      <details>
        <summary>{t('settings.add-observer')}</summary>
        <WriteForm
          onDone={() => setName('')}
          fault="settings.name-fault"
          notes={() =>
            name.trim() === '' ? null : [{ kind: 'observer', at: today, body: { observer: newId(), name: name.trim(), role } }]
          }
        >
          <TextField label={t('settings.name')} value={name} onChange={setName} />
          <Choices
            legend={t('settings.role')}
            value={role}
            onChange={setRole}
            options={roles.map((value) => ({ value, label: t(`role.${value}`) }))}
          />
          <p className="soft small">{t('settings.learner-line')}</p>
        </WriteForm>
      </details>
    </section>
  );
}

/** How readers differ, where two read the same comb on the same day. */
function ReaderBiases() {
  const { t } = useText();
  const { biases = [], names } = useYard().aside;
  if (biases.length === 0) return null;
  return (
    <>
      <h3>{t('settings.readers')}</h3>
      <ul className="plain-list">
        {biases.map(({ reader, against, content, pairs, bias }) => {
          const who = { reader: names[reader] ?? '', against: names[against] ?? '', n: pairs };
          return (
            <li key={`${reader} ${content}`}>
              {bias === null
                ? t(`settings.bias-few-${content}`, who)
                : t(`settings.bias-${content}`, { ...who, ...eighthsOf(bias) })}
            </li>
          );
        })}
      </ul>
      <p className="soft small">{t('settings.bias-line')}</p>
    </>
  );
}

/** Signed, so that more and less are told apart. */
function eighthsOf(bias: { readonly low: number; readonly likely: number; readonly high: number }) {
  const signed = (value: number): string => `${value < 0 ? '−' : '+'}${Math.abs(value).toFixed(1)}`;
  return { likely: signed(bias.likely), low: signed(bias.low), high: signed(bias.high) };
}
