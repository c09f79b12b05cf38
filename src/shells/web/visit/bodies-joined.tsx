/** Combs that have grown together: said of neighbouring bars, then cut apart in their order, or as far as it went. */
import { useState } from 'react';
import { joinedHow, placesTogether, stopReasons } from '../../../apiary/visit-terms.ts';
import { useText } from '../frame/manner.tsx';
import type { BodyProps } from './body-props.ts';
import { OneOf, Stepper } from './parts.tsx';
import { useHand } from './use-session.ts';

const most = 8;
const steps = [1, 2, 3, 4, 5] as const;

export function BodiesJoined(props: BodyProps) {
  const { t } = useText();
  const { now, place } = props;
  const hung = now.row.at.get(place);
  if (hung === undefined) return <p>{t('visiting.moves-at.gap', { place: String(place) })}</p>;
  return hung.joined === undefined ? <Alone {...props} /> : <Together {...props} joined={hung.joined} />;
}

/** From this bar up to another one. */
function Alone({ now, place }: BodyProps) {
  const { t } = useText();
  const { body, ports } = useHand();
  const { from, to, at } = now.row;
  const [other, setOther] = useState(place < to ? place + 1 : place - 1);
  const [first, last] = [Math.min(place, other), Math.max(place, other)];
  const places = Array.from({ length: last - first + 1 }, (_, i) => first + i);
  const can =
    places.length > 1 && places.length <= most && places.every((one) => at.has(one) && at.get(one)?.joined === undefined);
  return (
    <>
      <p>{t('visiting.joined-none', { place: String(place) })}</p>
      <Stepper
        named
        what={t('visiting.joined-with')}
        value={other}
        onStep={(by) => setOther((before) => Math.min(to, Math.max(from, before + by)))}
      />
      {can ? (
        <OneOf
          legend={t('visiting.joined-how', { places: places.join(', ') })}
          columns={2}
          value={null}
          onChoose={(how) => body({ kind: 'joined', how, places, combs: places.map(() => ports.newId()) })}
          options={joinedHow.map((value) => ({ value, label: t(`visiting.joined-how.${value}`) }))}
        />
      ) : (
        <p>{t('visiting.joined-cannot')}</p>
      )}
    </>
  );
}

function Together({ now, place, joined }: BodyProps & { readonly joined: string }) {
  const { t } = useText();
  const { body } = useHand();
  const places = placesTogether(now.row, place);
  const [free, setFree] = useState<readonly number[]>([]);
  const toggle = (one: number) => setFree((old) => (old.includes(one) ? old.filter((other) => other !== one) : [...old, one]));
  return (
    <>
      <p>{t('visiting.joined-are', { places: places.join(', ') })}</p>
      <p className="visit-stop">
        {t('visiting.part-stop')} {t('visiting.part-later')}
      </p>
      <h2>{t('visiting.part-order')}</h2>
      <ol className="visit-steps">
        {steps.map((n) => (
          <li key={n}>{t(`visiting.part-step.${n}`)}</li>
        ))}
      </ol>
      <h2>{t('visiting.part-free')}</h2>
      <div className="visit-grid visit-grid-4">
        {places.map((one) => (
          <button key={one} type="button" aria-pressed={free.includes(one)} onClick={() => toggle(one)}>
            {one}
          </button>
        ))}
      </div>
      <button
        type="button"
        className="visit-wide"
        aria-disabled={free.length === 0}
        onClick={() => (free.length === 0 ? undefined : body({ kind: 'parted', joined, places: free, stopped: null }))}
      >
        {free.length === 0 ? t('visiting.part-none') : t('visiting.part-done', { n: free.length })}
      </button>
      <OneOf
        legend={t('visiting.part-stopped')}
        columns={2}
        value={null}
        onChoose={(stopped) => body({ kind: 'parted', joined, places: free, stopped })}
        options={stopReasons.map((value) => ({ value, label: t(`stop-reason.${value}`) }))}
      />
    </>
  );
}
