/**
 * Signs, described and never named as an illness, a page for each of the three levels. A sign that
 * means stop takes the page at once: stop, move nothing, call the authority.
 */
import { signs, type SignLevel } from '../../../apiary/visit-terms.ts';
import { useText } from '../frame/manner.tsx';
import type { BarDraft } from './draft.ts';
import { OneOf } from './parts.tsx';
import { useHand } from './use-session.ts';

const levels: readonly SignLevel[] = ['note', 'ask', 'stop'];

export function stopSigns(bar: BarDraft): BarDraft['seen']['signs'] {
  return bar.seen.signs.filter((code) => signs.some((sign) => sign.code === code && sign.level === 'stop'));
}

export function SignPanel({ bar, level }: { readonly bar: BarDraft; readonly level: SignLevel }) {
  const { t } = useText();
  const { tap } = useHand();
  const stops = stopSigns(bar);
  return (
    <>
      {stops.length > 0 ? <StopText /> : null}
      <OneOf
        legend={t('visiting.signs-asked')}
        quiet={stops.length > 0}
        value={level}
        onChoose={(value) => tap({ kind: 'panel', panel: `sign-${value}` })}
        options={levels.map((value) => ({ value, label: t(`visiting.signs-level.${value}`) }))}
      />
      <div className="visit-grid visit-grid-2 visit-signs">
        {signs
          .filter((sign) => sign.level === level)
          .map(({ code }) => (
            <button
              key={code}
              type="button"
              aria-pressed={bar.seen.signs.includes(code)}
              onClick={() => tap({ kind: 'sign', code })}
            >
              {t(`sign.${code}`)}
            </button>
          ))}
      </div>
    </>
  );
}

/** In full where the sign is tapped; in short above the rulers, so that Down stays on the screen. */
export function StopText({ short = false }: { readonly short?: boolean }) {
  const { t } = useText();
  const { authority } = useHand().ports;
  return (
    <div className="visit-stop" role="alert">
      <p>{t(short ? 'visiting.stop-short' : 'visiting.stop')}</p>
      {authority === null ? (
        <p>{short ? null : t('visiting.stop-no-contact')}</p>
      ) : (
        <a className="button" href={`tel:${authority.phone.replace(/[^+\d]/g, '')}`}>
          {t('visiting.stop-contact', authority)}
        </a>
      )}
    </div>
  );
}
