/** A swarm into a hive in one act: which hive, what it is called, how many bars it got. All three are filled in already. */
import { type FormEvent, useState } from 'react';
import { useLocation } from 'wouter';
import { issueText } from '../../../words/issue-text.ts';
import { Choices, TextField } from '../frame/fields.tsx';
import { useText } from '../frame/manner.tsx';
import { Sheet } from '../frame/sheet.tsx';
import { newId, type Note } from '../model/notes.ts';
import { useYard } from '../model/use-yard.tsx';
import { likeHive } from './hive-note.ts';

/** Enough for the first days of a swarm; the keeper changes it by a tap. */
const barsUsual = 6;
const barChoices = [4, 6, 8, 10, 12] as const;
const anotherHive = 'another';

export function SwarmSheet({ onClose }: { readonly onClose: () => void }) {
  const { t, manner } = useText();
  const { picture, aside, append, today } = useYard();
  const [, go] = useLocation();
  const empty = (picture?.hives ?? []).filter((hive) => hive.colonies.length === 0);
  const last = aside.hives.at(-1) ?? null;
  // Until the keeper chooses, the first empty hive, also one that the picture shows only now.
  const [chosen, setInto] = useState<string | null>(null);
  const into = chosen ?? empty[0]?.id ?? anotherHive;
  const [name, setName] = useState('');
  const [bars, setBars] = useState<number>(barsUsual);
  const [faults, setFaults] = useState<readonly string[]>([]);
  const hiveName = empty.find((hive) => hive.id === into)?.name ?? t('start.hive-name', { n: aside.hives.length + 1 });

  async function hive(event: FormEvent): Promise<void> {
    event.preventDefault();
    const colony = newId();
    const made: Note[] = [];
    let hiveId = into;
    if (into === anotherHive) {
      if (last === null) return;
      hiveId = newId();
      made.push(likeHive(last, hiveId, hiveName, today));
    }
    made.push({
      kind: 'swarm',
      body: {
        what: 'hived',
        from: null,
        window: { earliest: today, latest: today },
        child: colony,
        childName: name.trim() === '' ? hiveName : name.trim(),
        into: { hive: hiveId, bay: null, bars },
      },
    });
    const stored = await append(made);
    if (!stored.ok) {
      setFaults(stored.issues.map((issue) => issueText(issue, manner)));
      return;
    }
    onClose();
    go('/', { replace: true });
  }

  return (
    <Sheet title={t('swarm.title')} onClose={onClose}>
      <form onSubmit={(event) => void hive(event)}>
        <Choices
          legend={t('swarm.into')}
          value={into}
          onChange={setInto}
          options={[
            ...empty.map((one) => ({ value: one.id, label: one.name })),
            ...(last === null ? [] : [{ value: anotherHive, label: t('swarm.another', { name: last.name }) }]),
          ]}
        />
        <TextField label={t('swarm.name')} hint={t('swarm.name-hint', { name: hiveName })} value={name} onChange={setName} />
        <Choices
          legend={t('swarm.bars')}
          value={bars}
          onChange={setBars}
          options={barChoices.map((value) => ({ value, label: String(value) }))}
        />
        {faults.map((fault) => (
          <p key={fault} className="fault" role="alert">
            {fault}
          </p>
        ))}
        <p className="soft small">{t('swarm.cautions')}</p>
        <div className="acts">
          <button type="submit" className="go">
            {t('swarm.hive-today')}
          </button>
        </div>
      </form>
    </Sheet>
  );
}
