/** What a keeper writes down without opening the hive: a look from outside, feeding, a swarm, a note. One thing a time. */
import { useState } from 'react';
import type { ColonyView } from '../../../colony/view.ts';
import { Choices } from '../frame/fields.tsx';
import { useText } from '../frame/manner.tsx';
import { Sheet } from '../frame/sheet.tsx';
import { LookForm } from './look-form.tsx';
import { FeedingForm, NoteForm, SwarmForm } from './write-forms.tsx';

const things = ['look', 'feeding', 'swarm', 'note'] as const;
type Thing = (typeof things)[number];

export function WriteSheet({ view, onClose }: { readonly view: ColonyView; readonly onClose: () => void }) {
  const { t } = useText();
  const [thing, setThing] = useState<Thing>('look');
  const Form = { look: LookForm, feeding: FeedingForm, swarm: SwarmForm, note: NoteForm }[thing];
  return (
    <Sheet title={t('write.title', { name: view.name })} onClose={onClose}>
      <Choices
        legend={t('write.what')}
        value={thing}
        onChange={setThing}
        options={things.map((value) => ({ value, label: t(`write.${value}`) }))}
      />
      <Form view={view} onDone={onClose} />
    </Sheet>
  );
}
