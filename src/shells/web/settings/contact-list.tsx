/** Whom to call: entered by the keeper, because it differs from place to place. */
import { useState } from 'react';
import { Choices, TextField } from '../frame/fields.tsx';
import { useText } from '../frame/manner.tsx';
import { useYard } from '../model/use-yard.tsx';
import { WriteForm } from '../round/write-forms.tsx';

const roles = ['authority', 'mentor', 'vet', 'emergency', 'neighbour'] as const;

export function ContactList() {
  const { t } = useText();
  const { aside, today, entries } = useYard();
  const [role, setRole] = useState<(typeof roles)[number]>('authority');
  const [name, setName] = useState('');
  const [phone, setPhone] = useState('');
  if (entries.length === 0) return null;
  return (
    <section>
      <h2>{t('settings.contacts')}</h2>
      {aside.contacts.length === 0 ? (
        <p>{t('handbook.no-contact')}</p>
      ) : (
        <ul className="plain-list">
          {aside.contacts.map((one) => (
            <li key={one.role}>
              {t(`contact.${one.role}`)}: {one.name}, {one.phone}
            </li>
          ))}
        </ul>
      )}
      <details>
        <summary>{t('settings.add-contact')}</summary>
        <WriteForm
          onDone={() => {
            setName('');
            setPhone('');
          }}
          fault="settings.contact-fault"
          notes={() =>
            name.trim() === '' || phone.trim() === ''
              ? null
              : [{ kind: 'contact', at: today, body: { role, name: name.trim(), phone: phone.trim() } }]
          }
        >
          <Choices
            legend={t('settings.contact-role')}
            value={role}
            onChange={setRole}
            options={roles.map((value) => ({ value, label: t(`contact.${value}`) }))}
          />
          <TextField label={t('settings.name')} value={name} onChange={setName} />
          <TextField label={t('settings.phone')} value={phone} onChange={setPhone} type="tel" inputMode="tel" />
        </WriteForm>
      </details>
    </section>
  );
}
