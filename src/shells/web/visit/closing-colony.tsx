/**
 * The colony as a whole: bars with bees, how it took the visit, straight comb at a glance, cells cut.
 * Nothing is asked twice, nothing must be answered.
 */
import { temperNotes, temperWords } from '../../../apiary/visit-terms.ts';
import { useText } from '../frame/manner.tsx';
import type { Draft, Straight } from './draft.ts';
import { FarLine } from './far-line.tsx';
import { placesRead } from './next-place.ts';
import { OneOf, Stepper } from './parts.tsx';
import type { Trouble } from './session.ts';
import { Shell } from './shell.tsx';
import { useHand } from './use-session.ts';

const straights: readonly Straight[] = ['straight', 'bent', 'crossed'];

export function ClosingColony({ draft, trouble }: { readonly draft: Draft; readonly trouble: Trouble | null }) {
  const { t } = useText();
  const { view, tap, toPhase } = useHand();
  const { closing, visitKind } = draft;
  const cellsSeen = draft.read.some((row) => row.seen.cellsLooked === 'seen');
  const bees = (by: 1 | -1) => {
    const value =
      closing.beesBars === null ? placesRead(draft).length : Math.min(draft.hiveBars, Math.max(0, closing.beesBars + by));
    tap({ kind: 'count', what: 'beesBars', value });
  };
  return (
    <Shell
      title={t('visiting.title-colony', { colony: view.name })}
      trouble={trouble}
      foot={
        <>
          <button type="button" onClick={() => toPhase(visitKind === 'closing for winter' ? 'winter' : 'row')}>
            {t(visitKind === 'glance' ? 'visiting.to-row-only' : 'visiting.previous')}
          </button>
          <button type="button" className="visit-go" onClick={() => toPhase('confirm')}>
            {t('visiting.next')}
          </button>
        </>
      }
    >
      {visitKind === 'glance' ? <FarLine told={draft.told} /> : null}
      {visitKind === 'glance' || visitKind === 'after a swarm' ? (
        <OneOf
          legend={t('visiting.straight')}
          value={closing.straight}
          onChoose={(straight) => tap({ kind: 'straight', straight })}
          options={straights.map((value) => ({ value, label: t(`straight.${value}`) }))}
        />
      ) : null}
      <OneOf
        legend={t('visiting.temper')}
        columns={4}
        value={closing.temper}
        onChoose={(temper) => tap({ kind: 'temper', temper })}
        options={temperWords.map((value) => ({ value, label: t(`temper.${value}`) }))}
      />
      <div role="group" aria-label={t('visiting.temper-notes')}>
        <div className="visit-grid visit-grid-2">
          {temperNotes.map((note) => (
            <button
              key={note}
              type="button"
              aria-pressed={closing.temperNotes.includes(note)}
              onClick={() => tap({ kind: 'temper note', note })}
            >
              {t(`visiting.temper-note.${note}`)}
            </button>
          ))}
        </div>
      </div>
      <Stepper what={t('visiting.bees')} value={closing.beesBars} onStep={bees}>
        {closing.beesBars === null ? t('visiting.bees-none') : null}
      </Stepper>
      {cellsSeen ? (
        <OneOf
          legend={t('visiting.cells-cut')}
          columns={2}
          value={closing.cellsCut === null ? null : closing.cellsCut ? 'yes' : 'no'}
          onChoose={(value) => tap({ kind: 'cells cut', cut: value === 'yes' })}
          options={(['no', 'yes'] as const).map((value) => ({ value, label: t(`visiting.${value}`) }))}
        />
      ) : null}
    </Shell>
  );
}
