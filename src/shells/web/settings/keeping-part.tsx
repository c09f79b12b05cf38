/** How safe the journal is here: kept by the browser or not, usable without a network or not, on the server or not. */
import { useEffect, useState } from 'react';
import { issueText } from '../../../words/issue-text.ts';
import { useText } from '../frame/manner.tsx';
import { askPersistence, type Keeping, keepingNow } from '../model/keeping.ts';
import { useYard } from '../model/use-yard.tsx';
import { InstallButton } from './install-button.tsx';
import { Pairing } from './pairing.tsx';

const perMegabyte = 1e6;

export function KeepingPart() {
  const { t, manner } = useText();
  const { unsent, forgets, refused } = useYard();
  const [keeping, setKeeping] = useState<Keeping | null>(null);
  const offline = useOfflineReady();
  const look = () => void keepingNow().then(setKeeping);
  useEffect(look, []);
  return (
    <section>
      <h2>{t('settings.keeping')}</h2>
      <ul>
        <li>
          {forgets ? t('frame.forgets') : keeping?.persisted === true ? t('settings.persisted') : t('settings.not-persisted')}
        </li>
        {keeping?.usedBytes === null || keeping === null ? null : (
          <li>{t('settings.used', { megabytes: Math.max(1, Math.round(keeping.usedBytes / perMegabyte)) })}</li>
        )}
        <li>
          {offline === null
            ? t('settings.offline-impossible')
            : offline
              ? t('settings.offline-ready')
              : t('settings.offline-not-yet')}
        </li>
        <li>
          {unsent === null
            ? t('settings.no-server')
            : unsent === 0
              ? t('settings.all-sent')
              : t('frame.unsent', { count: unsent })}
        </li>
      </ul>
      <div className="acts">
        {keeping?.persisted === false ? (
          <button
            type="button"
            onClick={() => {
              askPersistence();
              setTimeout(look, 500);
            }}
          >
            {t('settings.ask-keep')}
          </button>
        ) : null}
        <InstallButton />
      </div>
      {refused.length === 0 ? null : (
        <details>
          <summary>{t('settings.refused', { count: refused.length })}</summary>
          <ul>
            {refused.map((issue, n) => (
              <li key={n}>{issueText(issue, manner)}</li>
            ))}
          </ul>
        </details>
      )}
      <Pairing />
    </section>
  );
}

/** Null where the browser has no service workers: plain http from another host. */
function useOfflineReady(): boolean | null {
  const able = 'serviceWorker' in navigator;
  const [ready, setReady] = useState(able && navigator.serviceWorker.controller !== null);
  useEffect(() => {
    if (!able) return;
    const check = () => setReady(navigator.serviceWorker.controller !== null);
    navigator.serviceWorker.addEventListener('controllerchange', check);
    return () => navigator.serviceWorker.removeEventListener('controllerchange', check);
  }, [able]);
  return able ? ready : null;
}
