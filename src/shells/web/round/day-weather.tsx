/** Today's low and high as the keeper types them, and the hours that suit opening by them. Weather is never said to be safe. */
import { type FormEvent, useState } from 'react';
import type { OpeningHours } from '../../../apiary/round-day.ts';
import { formatHours } from '../../../words/format-time.ts';
import type { Manner } from '../../../words/say.ts';
import { numberOf, TextField } from '../frame/fields.tsx';
import { useText, type Wording } from '../frame/manner.tsx';
import { numberPart } from '../frame/parts.ts';
import { Sheet } from '../frame/sheet.tsx';
import { useYard } from '../model/use-yard.tsx';

export function DayWeather() {
  const { t, manner } = useText();
  const {
    picture,
    roundDay: { hours },
  } = useYard();
  const [typing, setTyping] = useState(false);
  const weather = picture?.weather ?? null;
  const unit = manner.units === 'US' ? 'degF' : 'degC';
  const low = weather?.lowC ?? null;
  const high = weather?.highC ?? null;
  const degrees = (value: number) => numberPart(value, 'degC');
  return (
    <div className="weather">
      <p>
        {low !== null && high !== null ? t('round.low-high', { low: degrees(low), high: degrees(high) }) : null}
        {low === null && high !== null ? t('round.high-only', { high: degrees(high) }) : null}
        {low !== null && high === null ? t('round.low-only', { low: degrees(low) }) : null}
        {low === null && high === null ? t('round.no-weather') : null}
        {hours === null ? null : ` ${hoursText(hours, t, manner)}`}
      </p>
      <button type="button" className="plain" onClick={() => setTyping(true)}>
        {t('round.type-weather')}
      </button>
      {typing ? <WeatherSheet unit={unit} onClose={() => setTyping(false)} /> : null}
    </div>
  );
}

function hoursText({ full, brief, but }: OpeningHours, t: Wording['t'], manner: Manner): string {
  if (full !== null) return t('round.suits', { hours: formatHours(full.from, full.to, manner) });
  if (brief !== null) return t('round.suits-brief', { hours: formatHours(brief.from, brief.to, manner) });
  return t(but === null ? 'round.suits-not' : `round.suits-not-${but}`);
}

/** Outside these, in °C, a temperature of a day is more likely a slip of the thumb. */
const fitsC = { least: -60, most: 60 };

function WeatherSheet({ unit, onClose }: { readonly unit: 'degC' | 'degF'; readonly onClose: () => void }) {
  const { t } = useText();
  const { append, today } = useYard();
  const [low, setLow] = useState('');
  const [high, setHigh] = useState('');
  const [fault, setFault] = useState(false);
  const said = unit === 'degF' ? '°F' : '°C';

  async function keep(event: FormEvent): Promise<void> {
    event.preventDefault();
    const ends = [low, high].map((typed) => (typed.trim() === '' ? null : numberOf(typed)));
    const [lowest = null, highest = null] = ends;
    const wrong = [low, high].some((typed, n) => typed.trim() !== '' && !fits(ends[n] ?? null, unit));
    if (wrong || (lowest === null && highest === null) || (lowest !== null && highest !== null && lowest > highest)) {
      setFault(true);
      return;
    }
    const typed = (value: number | null) => (value === null ? null : { value, unit });
    await append([{ kind: 'day-weather', at: today, body: { low: typed(lowest), high: typed(highest) } }]);
    onClose();
  }

  return (
    <Sheet title={t('round.weather-title')} onClose={onClose}>
      <form onSubmit={(event) => void keep(event)} noValidate>
        <TextField label={t('round.low')} value={low} onChange={setLow} inputMode="text" unit={said} />
        <TextField label={t('round.high')} value={high} onChange={setHigh} inputMode="text" unit={said} />
        {fault ? (
          <p className="fault" role="alert">
            {t('round.weather-fault')}
          </p>
        ) : null}
        <div className="acts">
          <button type="submit" className="go">
            {t('frame.keep')}
          </button>
        </div>
      </form>
    </Sheet>
  );
}

function fits(value: number | null, unit: 'degC' | 'degF'): boolean {
  if (value === null) return false;
  const celsius = unit === 'degF' ? ((value - 32) * 5) / 9 : value;
  return celsius >= fitsC.least && celsius <= fitsC.most;
}
