/** What is needed seldom: another bar, bees brushed from here on, the smoker, the end of the row, leaving, throwing away. */
import { useState } from 'react';
import { Link } from 'wouter';
import { useText } from '../frame/manner.tsx';
import { arrangementOf, placeNamed } from './arrangement.ts';
import { type BarDraft, type Draft, unseen } from './draft.ts';
import { OneOf, Stepper } from './parts.tsx';
import { readingOf } from './to-entries.ts';
import { useHand } from './use-session.ts';

interface MoreProps {
  readonly draft: Draft;
  readonly bar: BarDraft;
  readonly discarding: boolean;
}

export function MorePanel({ draft, bar, discarding }: MoreProps) {
  const { t } = useText();
  const { tap, toPhase, view, ports } = useHand();
  if (discarding) return <Discard draft={draft} />;
  return (
    <>
      <AsExpected draft={draft} bar={bar} />
      <GoTo key={bar.place} draft={draft} bar={bar} />
      <OneOf
        legend={t('visiting.brushed-always')}
        columns={2}
        value={draft.brushed === null ? null : draft.brushed ? 'yes' : 'no'}
        onChoose={(value) => tap({ kind: 'brushed always', brushed: value === 'yes' })}
        options={(['no', 'yes'] as const).map((value) => ({ value, label: t(`visiting.brushed.${value}`) }))}
      />
      {draft.smokeSince === null ? null : (
        <div className="visit-grid visit-grid-2">
          <button type="button" onClick={() => tap({ kind: 'smoke', ms: ports.now().ms })}>
            {t('visiting.smoke-again')}
          </button>
          <button type="button" onClick={() => tap({ kind: 'smoke', ms: null })}>
            {t('visiting.smoke-out')}
          </button>
        </div>
      )}
      <div className="visit-grid visit-grid-2">
        <button type="button" aria-disabled={bar.touched} onClick={() => toPhase('moves')}>
          {t('visiting.to-moves')}
        </button>
        <button type="button" aria-disabled={bar.touched} onClick={() => toPhase('bodies')}>
          {t('visiting.to-bodies')}
        </button>
        <button type="button" aria-disabled={bar.touched} onClick={() => toPhase('row')}>
          {t('visiting.to-row')}
        </button>
        <Link className="button" href={`/colony/${view.colony}`}>
          {t('visiting.leave')}
        </Link>
        <button type="button" onClick={() => tap({ kind: 'panel', panel: 'discard' })}>
          {t('visiting.discard')}
        </button>
      </div>
    </>
  );
}

/** Where something is expected of the bar: it is filled in, and weighs little. */
function AsExpected({ draft, bar }: { readonly draft: Draft; readonly bar: BarDraft }) {
  const { t } = useText();
  const { tap, ports, view } = useHand();
  const { today } = ports.expect(view, readingOf(draft, bar.place, unseen));
  // Of a bar that was moved today nothing is told: the picture may know of the move already.
  if (today === null || placeNamed(draft, bar.place) !== bar.place) return null;
  return (
    <button type="button" className="visit-wide" onClick={() => tap({ kind: 'as expected', ...today })}>
      {t('visiting.as-expected')}
    </button>
  );
}

/** Another bar of the bay, one that was put down before too; by the place where it hangs now. */
function GoTo({ draft, bar }: { readonly draft: Draft; readonly bar: BarDraft }) {
  const { t } = useText();
  const { go } = useHand();
  const { row } = arrangementOf(draft);
  const inHand = placeNamed(draft, bar.place);
  const [place, setPlace] = useState(inHand);
  const step = (by: 1 | -1) => setPlace((before) => Math.min(row.to, Math.max(row.from, before + by)));
  const hung = row.at.get(place)?.what;
  const found = typeof hung === 'number' ? hung : null;
  return (
    <div className="visit-grid visit-grid-2">
      <Stepper named what={t('visiting.go-place')} value={place} onStep={step} />
      <button
        type="button"
        aria-disabled={bar.touched || found === null || found === bar.place}
        onClick={() => (found === null ? undefined : go(found))}
      >
        {bar.touched ? t('visiting.in-hand', { place: String(inHand) }) : t('visiting.go', { place: String(place) })}
      </button>
    </div>
  );
}

function Discard({ draft }: { readonly draft: Draft }) {
  const { t } = useText();
  const { session, tap } = useHand();
  return (
    <>
      <h2>{t('visiting.discard')}</h2>
      <p>{draft.read.length === 0 ? t('visiting.discard-none') : t('visiting.discard-asked', { n: draft.read.length })}</p>
      <div className="visit-grid visit-grid-2">
        <button type="button" onClick={() => void session.discard()}>
          {t('visiting.discard-yes')}
        </button>
        <button type="button" onClick={() => tap({ kind: 'panel', panel: null })}>
          {t('visiting.discard-no')}
        </button>
      </div>
    </>
  );
}
