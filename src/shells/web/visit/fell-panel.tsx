/** A comb fell: what hung on it, then what was done with it; two taps after the one that opened this. */
import { doneWithFallen, fallenCombs } from '../../../apiary/visit-terms.ts';
import { useText } from '../frame/manner.tsx';
import { placeNamed } from './arrangement.ts';
import type { BarDraft, Draft } from './draft.ts';
import { OneOf } from './parts.tsx';
import { useHand } from './use-session.ts';

export function FellPanel({ draft, bar }: { readonly draft: Draft; readonly bar: BarDraft }) {
  const { t } = useText();
  const { fell, tap } = useHand();
  const what = fallenCombs.find((each) => draft.panel === `fell-${each}`) ?? null;
  const place = String(placeNamed(draft, bar.place));
  const noted = draft.fell.includes(bar.place);
  return (
    <>
      <h2>{t('visiting.fell-asked', { place })}</h2>
      {noted ? (
        <p>{t('visiting.fell-noted', { place })}</p>
      ) : (
        <>
          <OneOf
            legend={t('visiting.fell-what')}
            value={what}
            onChoose={(value) => tap({ kind: 'panel', panel: `fell-${value}` })}
            options={fallenCombs.map((value) => ({ value, label: t(`fallen.${value}`) }))}
          />
          {what === null ? (
            <p>{t('visiting.fell-about')}</p>
          ) : (
            <OneOf
              legend={t('visiting.fell-done')}
              value={null}
              onChoose={(done) => fell(bar.place, what, done)}
              options={doneWithFallen.map((value) => ({ value, label: t(`fallen-done.${value}`) }))}
            />
          )}
        </>
      )}
      <button type="button" className="visit-wide" onClick={() => tap({ kind: 'panel', panel: null })}>
        {t(noted ? 'visiting.back' : 'visiting.fell-no')}
      </button>
    </>
  );
}
