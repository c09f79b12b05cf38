/** Where the yard is: its name, its place on the earth for the length of the day, and the time zone in which its days are counted. */
import { useState } from 'react';
import { numberOf, TextField } from '../frame/fields.tsx';
import { useText } from '../frame/manner.tsx';
import { deviceTimeZone } from '../model/clock.ts';
import { useYard } from '../model/use-yard.tsx';
import { WriteForm } from '../round/write-forms.tsx';

export function YardPlace() {
  const { t } = useText();
  const { picture, today, entries } = useYard();
  const yard = picture?.yard ?? null;
  const [name, setName] = useState(yard?.name ?? '');
  const [latitude, setLatitude] = useState(yard?.latitude === null || yard === null ? '' : String(yard.latitude));
  const [longitude, setLongitude] = useState(yard?.longitude === null || yard === null ? '' : String(yard.longitude));
  const [zone, setZone] = useState(yard?.timeZone ?? deviceTimeZone());
  const [kept, setKept] = useState(false);
  if (entries.length === 0) return null;

  function here(): void {
    navigator.geolocation.getCurrentPosition(({ coords }) => {
      setLatitude(coords.latitude.toFixed(2));
      setLongitude(coords.longitude.toFixed(2));
    });
  }

  return (
    <section>
      <h2>{t('settings.yard')}</h2>
      <WriteForm
        onDone={() => setKept(true)}
        fault="settings.yard-fault"
        notes={() => {
          const [lat, long] = [latitude, longitude].map((typed) => (typed.trim() === '' ? null : numberOf(typed)));
          const wrong = (typed: string, value: number | null | undefined, most: number) =>
            typed.trim() !== '' && (typeof value !== 'number' || Math.abs(value) > most);
          if (name.trim() === '' || zone.trim() === '' || wrong(latitude, lat, 90) || wrong(longitude, long, 180)) return null;
          return [
            {
              kind: 'yard',
              at: today,
              body: { name: name.trim(), latitude: lat ?? null, longitude: long ?? null, timeZone: zone.trim() },
            },
          ];
        }}
      >
        <TextField label={t('settings.name')} value={name} onChange={setName} />
        <TextField
          label={t('settings.latitude')}
          hint={t('settings.place-hint')}
          value={latitude}
          onChange={setLatitude}
          inputMode="text"
          unit="°"
        />
        <TextField label={t('settings.longitude')} value={longitude} onChange={setLongitude} inputMode="text" unit="°" />
        {'geolocation' in navigator ? (
          <div className="acts">
            <button type="button" onClick={here}>
              {t('settings.here')}
            </button>
          </div>
        ) : null}
        <TextField label={t('settings.zone')} value={zone} onChange={setZone} />
        {kept ? <p role="status">{t('settings.kept')}</p> : null}
      </WriteForm>
    </section>
  );
}
