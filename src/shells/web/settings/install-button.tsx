/** Puts the program on the home screen, where the browser offers that. */
import { useSyncExternalStore } from 'react';
import { useText } from '../frame/manner.tsx';
import { offeredInstall, onInstallOffer } from '../model/install.ts';

export function InstallButton() {
  const { t } = useText();
  const offer = useSyncExternalStore(onInstallOffer, offeredInstall);
  if (offer === null) return null;
  return (
    <button type="button" onClick={() => void offer()}>
      {t('settings.install')}
    </button>
  );
}
