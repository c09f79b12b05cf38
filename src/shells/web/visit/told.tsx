/**
 * The line under the strip. First what keeps Down from working, then what is told of the bar put down
 * last: what was seen, last time, today's expectation, and a word when it surprises; when it lies far from
 * what was foreseen, that instead, until something is read of the next bar. Of the bar in the hand it never
 * tells anything.
 */
import type { Day } from '../../../numbers/day.ts';
import { useText, type Wording } from '../frame/manner.tsx';
import { FarLine } from './far-line.tsx';
import { placeNamed } from './arrangement.ts';
import type { BarDraft, Draft, ToldBar } from './draft.ts';
import { stopSigns, StopText } from './sign-panel.tsx';
import { downRefused } from './tap.ts';

export function Told({ draft, bar }: { readonly draft: Draft; readonly bar: BarDraft }) {
  const { t } = useText();
  if (stopSigns(bar).length > 0 && draft.panel === null) return <StopText short />;
  const { told } = draft;
  const named = (place: number): string => String(placeNamed(draft, place));
  return (
    <div className="visit-told" role="status">
      {downRefused(bar) === 'too much' ? (
        <p>{t('visiting.refused.too much', { brood: bar.seen.brood8 ?? 0, food: bar.seen.food8 ?? 0 })}</p>
      ) : bar.again !== null ? (
        <p>{t('visiting.again', { place: named(bar.place) })}</p>
      ) : told === null && bar.touched ? null : told === null ? (
        <p>{t('visiting.refused.nothing read', { place: named(bar.place) })}</p>
      ) : told.far !== null && !bar.touched ? (
        <FarLine told={told} />
      ) : (
        <p>{toldOf(told, named(told.place), t)}</p>
      )}
    </div>
  );
}

function toldOf({ seen, expected }: ToldBar, place: string, t: Wording['t']): string {
  const eighths = (value: number | null) => (value === null ? t('visiting.not-read') : String(value));
  const read = t(seen.asExpected === true ? 'visiting.told-as-expected' : 'visiting.told-seen', {
    brood: eighths(seen.brood8),
    food: eighths(seen.food8),
  });
  const { lastTime, today, surprise } = expected;
  return [
    t('visiting.told', { place, seen: read }),
    surprise === null ? '' : t(`visiting.surprise.${surprise}`),
    lastTime === null
      ? t('visiting.told-first')
      : t('visiting.told-last', { day: daySlot(lastTime.day), brood: lastTime.brood8, food: lastTime.food8 }),
    today === null ? t('visiting.told-nothing') : t('visiting.told-today', { brood: today.brood8, food: today.food8 }),
  ]
    .filter((part) => part !== '')
    .join(' ');
}

function daySlot(day: Day) {
  return { kind: 'day', day, cite: { kind: 'worked out', from: [] } } as const;
}
