/** A look from outside: how many fly must be said; the minute, the window, the knock and the dead bees may be left out. */
import { useState } from 'react';
import { signs } from '../../../apiary/handbook.ts';
import { deadWords, humWords, windowWords } from '../../../apiary/visit-terms.ts';
import type { TextKey } from '../../../words/text.ts';
import { Check, Choices } from '../frame/fields.tsx';
import { useText } from '../frame/manner.tsx';
import { EntranceMinute } from './entrance-minute.tsx';
import { countedMinute, type MinuteTyped, nothingTyped } from './minute-counted.ts';
import { type FormProps, WriteForm } from './write-forms.tsx';

const unasked = 'not looked';
type Asked<T> = T | typeof unasked;

export function LookForm({ view, onDone }: FormProps) {
  const { t } = useText();
  const [flight, setFlight] = useState<'none' | 'few' | 'many' | null>(null);
  const [pollen, setPollen] = useState<'yes' | 'no' | 'unsure'>('unsure');
  const [minute, setMinute] = useState<MinuteTyped>(nothingTyped);
  const [pane, setPane] = useState<Asked<(typeof windowWords)[number]>>(unasked);
  const [hum, setHum] = useState<Asked<(typeof humWords)[number]>>(unasked);
  const [dead, setDead] = useState<Asked<(typeof deadWords)[number]>>(unasked);
  const [seen, setSeen] = useState<readonly string[]>([]);
  const outside = signs.filter((sign) => sign.where === 'hive' || sign.where === 'bees');
  function notes() {
    const counted = countedMinute(minute);
    if (flight === null || counted === null) return null;
    if (counted !== 'not counted' && counted.in > 0 && flight === 'none') return null;
    const laden = counted === 'not counted' ? 0 : (counted.withPollen ?? 0);
    const pollenIn = laden > 0 ? true : pollen === 'unsure' ? null : pollen === 'yes';
    const more = {
      ...(counted === 'not counted' ? {} : { minute: counted }),
      ...(pane === unasked ? {} : { window: pane }),
      ...(hum === unasked ? {} : { hum }),
      ...(dead === unasked ? {} : { dead }),
    };
    return [{ kind: 'look', body: { hive: view.hive, colony: view.colony, flight, pollenIn, seen, ...more } }];
  }
  return (
    <WriteForm onDone={onDone} fault="write.look-fault" notes={notes}>
      <Choices
        legend={t('write.flight')}
        value={flight}
        onChange={setFlight}
        options={(['none', 'few', 'many'] as const).map((value) => ({ value, label: t(`write.flight-${value}`) }))}
      />
      <Choices
        legend={t('write.pollen')}
        value={pollen}
        onChange={setPollen}
        options={(['yes', 'no', 'unsure'] as const).map((value) => ({ value, label: t(`write.${value}`) }))}
      />
      <EntranceMinute typed={minute} onChange={setMinute} />
      <Choices
        legend={t('write.dead')}
        value={dead}
        onChange={setDead}
        options={[...deadWords.map((value) => ({ value, label: t(`write.dead.${value}`) })), notLooked(t('write.not-looked'))]}
      />
      <Choices
        legend={t('write.window')}
        value={pane}
        onChange={setPane}
        options={[
          ...windowWords.map((value) => ({ value, label: t(`write.window.${value}`) })),
          notLooked(t('write.not-looked')),
        ]}
      />
      <Choices
        legend={t('write.hum')}
        value={hum}
        onChange={setHum}
        options={[...humWords.map((value) => ({ value, label: t(`write.hum.${value}`) })), notLooked(t('write.not-looked'))]}
      />
      <p className="soft small">{t('write.hum-about')}</p>
      <fieldset>
        <legend>{t('write.signs')}</legend>
        {outside.map(({ code }) => (
          <Check
            key={code}
            label={t(`sign.${code}` as TextKey)}
            checked={seen.includes(code)}
            onChange={(on) => setSeen(on ? [...seen, code] : seen.filter((one) => one !== code))}
          />
        ))}
      </fieldset>
    </WriteForm>
  );
}

function notLooked(label: string): { readonly value: typeof unasked; readonly label: string } {
  return { value: unasked, label };
}
