/** The code that the server shows on its own screen, typed once on a device that is not the server's own. */
import { type FormEvent, useState } from 'react';
import { TextField } from '../frame/fields.tsx';
import { useText } from '../frame/manner.tsx';
import { useYard } from '../model/use-yard.tsx';

export function Pairing() {
  const { t } = useText();
  const { pairing, pair } = useYard();
  const [code, setCode] = useState('');
  const [refused, setRefused] = useState(false);
  if (!pairing) return null;

  async function send(event: FormEvent): Promise<void> {
    event.preventDefault();
    setRefused(!(await pair(code.trim())));
  }

  return (
    <form onSubmit={(event) => void send(event)} noValidate>
      <h3>{t('settings.pairing')}</h3>
      <p>{t('settings.pairing-line')}</p>
      <TextField
        label={t('settings.pairing-code')}
        value={code}
        onChange={setCode}
        inputMode="text"
        fault={refused ? t('settings.pairing-refused') : undefined}
      />
      <div className="acts">
        <button type="submit" className="go">
          {t('settings.pair')}
        </button>
      </div>
    </form>
  );
}
