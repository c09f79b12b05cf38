/** What comes before everything else: where someone can be hurt, whom to call, and that law and licensed practice come first. */
import { useText } from '../frame/manner.tsx';
import { useYard } from '../model/use-yard.tsx';

const cautions = [
  'stings',
  'smoker',
  'lifting',
  'suspected illness',
  'infants',
  'learners',
  'ladder',
  'label and law',
  'local code',
] as const;

export function FirstThings() {
  const { t } = useText();
  const { contacts } = useYard().aside;
  return (
    <section>
      <h2>{t('handbook.first')}</h2>
      <ul>
        {cautions.map((caution) => (
          <li key={caution}>{t(`caution.${caution}`)}</li>
        ))}
      </ul>
      {contacts.length === 0 ? (
        <p className="soft">{t('handbook.no-contact')}</p>
      ) : (
        <ul className="plain-list">
          {contacts.map((contact) => (
            <li key={contact.role}>
              {t(`contact.${contact.role}`)}: {contact.name},{' '}
              <a href={`tel:${contact.phone.replace(/[^+\d]/g, '')}`}>{contact.phone}</a>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
