/**
 * One minute at the entrance: a tap for each bee that comes in, with pollen or without, until the minute
 * is over; or the two numbers typed. A minute that was stopped early keeps the seconds that were watched.
 */
import { useEffect, useState } from 'react';
import { TextField } from '../frame/fields.tsx';
import { useText } from '../frame/manner.tsx';
import { leastSeconds, type MinuteTyped, wholeMinute } from './minute-counted.ts';

interface Running {
  readonly since: number;
  readonly plain: number;
  readonly laden: number;
}

interface MinuteProps {
  readonly typed: MinuteTyped;
  readonly onChange: (typed: MinuteTyped) => void;
}

export function EntranceMinute({ typed, onChange }: MinuteProps) {
  const { t } = useText();
  const [running, setRunning] = useState<Running | null>(null);
  const [left, setLeft] = useState(wholeMinute);
  const since = running?.since ?? null;
  const over = running !== null && left <= 0;

  useEffect(() => {
    if (since === null) return undefined;
    const ticking = setInterval(() => setLeft(wholeMinute - Math.floor((performance.now() - since) / 1000)), 250);
    return () => clearInterval(ticking);
  }, [since]);

  useEffect(() => {
    if (over) finish(wholeMinute);
  });

  function finish(seconds: number): void {
    if (running === null) return;
    setRunning(null);
    if (seconds < leastSeconds) return;
    onChange({ seconds, all: String(running.plain + running.laden), laden: String(running.laden) });
  }

  function start(): void {
    setLeft(wholeMinute);
    setRunning({ since: performance.now(), plain: 0, laden: 0 });
  }

  if (running !== null)
    return (
      <fieldset>
        <legend>{t('write.minute')}</legend>
        <p role="timer">{t('write.minute-left', { seconds: Math.max(0, left) })}</p>
        <div className="minute-taps">
          <button type="button" onClick={() => setRunning({ ...running, plain: running.plain + 1 })}>
            {t('write.minute-plain')} <b>{running.plain}</b>
          </button>
          <button type="button" onClick={() => setRunning({ ...running, laden: running.laden + 1 })}>
            {t('write.minute-laden')} <b>{running.laden}</b>
          </button>
        </div>
        <div className="acts">
          <button type="button" onClick={() => finish(wholeMinute - Math.max(0, left))}>
            {t('write.minute-stop')}
          </button>
        </div>
      </fieldset>
    );
  return (
    <fieldset>
      <legend>{t('write.minute')}</legend>
      <p className="soft small">{t('write.minute-about')}</p>
      <div className="acts">
        <button type="button" onClick={start}>
          {t(typed.all === '' ? 'write.minute-start' : 'write.minute-again')}
        </button>
      </div>
      {typed.seconds === wholeMinute ? null : (
        <p>{t('write.minute-counted', { seconds: typed.seconds, in: typed.all, laden: typed.laden })}</p>
      )}
      <TextField
        label={t('write.minute-in')}
        inputMode="numeric"
        value={typed.all}
        onChange={(all) => onChange({ ...typed, seconds: wholeMinute, all })}
      />
      <TextField
        label={t('write.minute-with')}
        hint={t('write.minute-hint')}
        inputMode="numeric"
        value={typed.laden}
        onChange={(laden) => onChange({ ...typed, laden })}
      />
    </fieldset>
  );
}
