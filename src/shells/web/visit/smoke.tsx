/** How long the smoker burns: started by a tap, counted from a moment in the draft, so that a reload does not stop it. */
import { useEffect, useState } from 'react';
import { useText } from '../frame/manner.tsx';
import { smokeMinutes } from './hand.ts';
import { useHand } from './use-session.ts';

const lookEveryMs = 10_000;

export function Smoke({ since }: { readonly since: number | null }) {
  const { t } = useText();
  const { ports, tap } = useHand();
  const [nowMs, setNowMs] = useState(() => ports.now().ms);
  useEffect(() => {
    const look = () => setNowMs(ports.now().ms);
    look();
    const timer = setInterval(look, lookEveryMs);
    return () => clearInterval(timer);
  }, [ports, since]);
  const minutes = smokeMinutes({ smokeSince: since }, nowMs);
  if (since === null || minutes === null) {
    return (
      <button type="button" className="visit-smoke" onClick={() => tap({ kind: 'smoke', ms: ports.now().ms })}>
        {t('visiting.smoke-start')}
      </button>
    );
  }
  return <p className="visit-smoke">{t('visiting.smoke', { n: minutes })}</p>;
}
