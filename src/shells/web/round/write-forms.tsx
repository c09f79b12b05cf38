/** The forms of the write sheet. Each of them writes one entry, of today, or says which field it does not understand. */
import { type FormEvent, type ReactNode, useState } from 'react';
import type { ColonyView } from '../../../colony/view.ts';
import { issueText } from '../../../words/issue-text.ts';
import type { TextKey } from '../../../words/text.ts';
import { Choices, numberOf, TextField } from '../frame/fields.tsx';
import { useText } from '../frame/manner.tsx';
import { newId, type Note } from '../model/notes.ts';
import { useYard } from '../model/use-yard.tsx';

export interface FormProps {
  readonly view: ColonyView;
  readonly onDone: () => void;
}

interface WriteProps {
  /** The entries to be, or null when something is not understood yet. */
  readonly notes: () => readonly Note[] | null;
  readonly fault: TextKey;
  readonly onDone: () => void;
  readonly children: ReactNode;
}

/** The frame that all forms share: keep, or say why not. */
export function WriteForm({ notes, fault, onDone, children }: WriteProps) {
  const { t, manner } = useText();
  const { append } = useYard();
  const [faults, setFaults] = useState<readonly string[]>([]);

  async function keep(event: FormEvent): Promise<void> {
    event.preventDefault();
    const made = notes();
    if (made === null) {
      setFaults([t(fault)]);
      return;
    }
    const stored = await append(made);
    if (stored.ok) onDone();
    else setFaults(stored.issues.map((issue) => issueText(issue, manner)));
  }

  return (
    <form onSubmit={(event) => void keep(event)} noValidate>
      {children}
      {faults.map((line) => (
        <p key={line} className="fault" role="alert">
          {line}
        </p>
      ))}
      <div className="acts">
        <button type="submit" className="go">
          {t('frame.keep')}
        </button>
      </div>
    </form>
  );
}

const foods = ['sugar syrup', 'dry sugar', 'candy', 'own honey', 'pollen'] as const;

export function FeedingForm({ view, onDone }: FormProps) {
  const { t, manner } = useText();
  const [what, setWhat] = useState<(typeof foods)[number]>('sugar syrup');
  const [amount, setAmount] = useState('');
  const unit = what === 'sugar syrup' ? (manner.units === 'US' ? 'gal' : 'l') : manner.units === 'US' ? 'lb' : 'kg';
  return (
    <WriteForm
      onDone={onDone}
      fault="write.amount-fault"
      notes={() => {
        const value = amount.trim() === '' ? null : numberOf(amount);
        if (amount.trim() !== '' && (value === null || value <= 0)) return null;
        return [{ kind: 'feeding', body: { colony: view.colony, what, amount: value === null ? null : { value, unit } } }];
      }}
    >
      <Choices
        legend={t('write.food')}
        value={what}
        onChange={setWhat}
        options={foods.map((value) => ({ value, label: t(`food.${value}`) }))}
      />
      <TextField
        label={t('write.amount')}
        hint={t('write.amount-hint')}
        value={amount}
        onChange={setAmount}
        inputMode="decimal"
        unit={unit}
      />
      <p className="soft small">{t('write.food-caution')}</p>
    </WriteForm>
  );
}

export function SwarmForm({ view, onDone }: FormProps) {
  const { t } = useText();
  const { picture, today } = useYard();
  const empty = (picture?.hives ?? []).filter((hive) => hive.colonies.length === 0);
  const [what, setWhat] = useState<'left' | 'seen' | 'hived'>('left');
  const [into, setInto] = useState(empty[0]?.id ?? '');
  const [since, setSince] = useState<string>(today);
  const target = empty.find((hive) => hive.id === into) ?? null;
  return (
    <WriteForm
      onDone={onDone}
      fault="write.swarm-fault"
      notes={() => {
        if (since === '' || since > today || (what === 'hived' && target === null)) return null;
        const hived = what === 'hived' && target !== null;
        return [
          {
            kind: 'swarm',
            body: {
              what,
              from: view.colony,
              window: { earliest: since, latest: today },
              child: hived ? newId() : null,
              childName: hived ? target.name : null,
              into: hived ? { hive: target.id, bay: null, bars: Math.min(target.bars, 6) } : null,
            },
          },
        ];
      }}
    >
      <Choices
        legend={t('write.swarm-what')}
        value={what}
        onChange={setWhat}
        options={(['left', 'seen', 'hived'] as const).map((value) => ({ value, label: t(`write.swarm-${value}`) }))}
      />
      {what !== 'hived' ? null : empty.length === 0 ? (
        <p>{t('write.no-empty-hive')}</p>
      ) : (
        <Choices
          legend={t('swarm.into')}
          value={into}
          onChange={setInto}
          options={empty.map((hive) => ({ value: hive.id, label: hive.name }))}
        />
      )}
      <TextField label={t('write.swarm-since')} type="date" value={since} onChange={setSince} />
    </WriteForm>
  );
}

export function NoteForm({ view, onDone }: FormProps) {
  const { t } = useText();
  const [words, setWords] = useState('');
  return (
    <WriteForm
      onDone={onDone}
      fault="write.note-fault"
      notes={() => (words.trim() === '' ? null : [{ kind: 'note', body: { about: view.colony, text: words.trim() } }])}
    >
      <TextField label={t('write.note')} value={words} onChange={setWords} long />
    </WriteForm>
  );
}
