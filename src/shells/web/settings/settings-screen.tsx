/**
 * Settings: how this device shows things, who holds it, whom to call, where the yard is, how the hives are measured,
 * how safe the data is.
 */
import { Link } from 'wouter';
import { themes } from '../model/preferences.ts';
import { Choices } from '../frame/fields.tsx';
import { usePreferences, useText } from '../frame/manner.tsx';
import { Screen } from '../frame/screen.tsx';
import { ContactList } from './contact-list.tsx';
import { HiveList } from './hive-list.tsx';
import { KeepingPart } from './keeping-part.tsx';
import { ObserverList } from './observer-list.tsx';
import { WhichBook } from './which-book.tsx';
import { YardPlace } from './yard-place.tsx';

export function SettingsScreen() {
  const { t } = useText();
  const { preferences, prefer } = usePreferences();
  return (
    <Screen title={t('frame.settings')}>
      <Choices
        legend={t('settings.theme')}
        value={preferences.theme}
        onChange={(theme) => prefer({ theme })}
        options={themes.map((value) => ({ value, label: t(`theme.${value}`) }))}
      />
      <Choices
        legend={t('settings.units')}
        value={preferences.units}
        onChange={(units) => prefer({ units })}
        options={[
          { value: 'metric', label: t('settings.metric') },
          { value: 'US', label: t('settings.us') },
        ]}
      />
      <Choices
        legend={t('settings.hours')}
        value={preferences.hours}
        onChange={(hours) => prefer({ hours })}
        options={[
          { value: 24, label: t('settings.hours-24') },
          { value: 12, label: t('settings.hours-12') },
        ]}
      />
      <WhichBook />
      <ObserverList />
      <ContactList />
      <p>
        <Link href="/paper">{t('paper.link')}</Link>
      </p>
      <YardPlace />
      <HiveList />
      <KeepingPart />
    </Screen>
  );
}
