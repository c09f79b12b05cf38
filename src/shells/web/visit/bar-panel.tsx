/** What opens in the place of the rulers: one file a question, chosen here. */
import { attachments } from '../../../apiary/visit-terms.ts';
import { useText } from '../frame/manner.tsx';
import type { LookedFor, Stage } from '../../../colony/reading.ts';
import type { BarDraft, Draft, Panel } from './draft.ts';
import { FellPanel } from './fell-panel.tsx';
import { MorePanel } from './more-panel.tsx';
import { OneOf, Stepper } from './parts.tsx';
import { SignPanel } from './sign-panel.tsx';
import { useHand } from './use-session.ts';

const answers: readonly LookedFor[] = ['seen', 'none seen', 'not looked'];
const stages: readonly Stage[] = ['egg', 'young larva', 'larva', 'sealed', 'none'];
const cellKinds = ['open', 'sealed', 'torn', 'emerged'] as const;

interface PanelProps {
  readonly draft: Draft;
  readonly bar: BarDraft;
}

export function BarPanel({ draft, bar, panel }: PanelProps & { readonly panel: Panel }) {
  switch (panel) {
    case 'eggs':
      return <EggsPanel draft={draft} bar={bar} />;
    case 'cells':
      return <CellsPanel draft={draft} bar={bar} />;
    case 'queen':
      return <QueenPanel draft={draft} bar={bar} />;
    case 'sign-note':
      return <SignPanel bar={bar} level="note" />;
    case 'sign-ask':
      return <SignPanel bar={bar} level="ask" />;
    case 'sign-stop':
      return <SignPanel bar={bar} level="stop" />;
    case 'note':
      return <NotePanel draft={draft} bar={bar} />;
    case 'fell':
    case 'fell-brood':
    case 'fell-honey':
    case 'fell-empty comb':
      return <FellPanel draft={draft} bar={bar} />;
    case 'more':
    case 'discard':
      return <MorePanel draft={draft} bar={bar} discarding={panel === 'discard'} />;
  }
}

function EggsPanel({ bar }: PanelProps) {
  const { t } = useText();
  const { tap } = useHand();
  return (
    <>
      <OneOf
        legend={t('visiting.eggs-asked')}
        value={bar.seen.eggs}
        onChoose={(eggs) => tap({ kind: 'eggs', eggs })}
        options={answers.map((value) => ({ value, label: t(`visiting.answer.${value}`) }))}
      />
      <OneOf
        legend={t('visiting.youngest')}
        value={bar.seen.youngest}
        onChoose={(stage) => tap({ kind: 'youngest', stage })}
        options={stages.map((value) => ({ value, label: t(`visiting.stage.${value}`) }))}
      />
      <BackButton />
    </>
  );
}

function CellsPanel({ bar }: PanelProps) {
  const { t } = useText();
  const { tap } = useHand();
  const { seen } = bar;
  return (
    <>
      <div role="group" aria-label={t('visiting.cells-asked')}>
        <h2>{t('visiting.cells-asked')}</h2>
        <div className="visit-grid visit-grid-2">
          {cellKinds.map((which) => (
            <Stepper
              key={which}
              what={t(`visiting.cell.${which}`)}
              value={seen.cells?.[which] ?? 0}
              onStep={(by) => tap({ kind: 'cells', which, by })}
            />
          ))}
        </div>
      </div>
      <OneOf
        legend={t('visiting.cells-asked')}
        quiet
        columns={2}
        value={seen.cellsLooked === 'seen' ? null : seen.cellsLooked}
        onChoose={(looked) => tap({ kind: 'cells looked', looked })}
        options={(['none seen', 'not looked'] as const).map((value) => ({
          value,
          label: t(`visiting.answer.${value}`),
        }))}
      />
      <OneOf
        legend={t('visiting.brushed')}
        columns={2}
        value={seen.brushed === null ? null : seen.brushed ? 'yes' : 'no'}
        onChoose={(value) => tap({ kind: 'brushed', brushed: value === 'yes' })}
        options={(['no', 'yes'] as const).map((value) => ({ value, label: t(`visiting.brushed.${value}`) }))}
      />
    </>
  );
}

function QueenPanel({ bar }: PanelProps) {
  const { t } = useText();
  const { tap } = useHand();
  return (
    <>
      <OneOf
        legend={t('visiting.queen-asked')}
        value={bar.seen.queen}
        onChoose={(queen) => tap({ kind: 'queen', queen })}
        options={answers.map((value) => ({ value, label: t(`visiting.answer.${value}`) }))}
      />
      <BackButton />
    </>
  );
}

function NotePanel({ bar }: PanelProps) {
  const { t } = useText();
  const { tap } = useHand();
  return (
    <>
      <label>
        <span className="visit-label">{t('visiting.note-asked', { place: String(bar.place) })}</span>
        <textarea value={bar.note} maxLength={600} onChange={(event) => tap({ kind: 'note', text: event.target.value })} />
      </label>
      <OneOf
        legend={t('visiting.attached')}
        value={bar.seen.attached ?? null}
        onChoose={(attached) => tap({ kind: 'attached', attached })}
        options={attachments.map((value) => ({ value, label: t(`visiting.attached.${value}`) }))}
      />
      <div className="visit-grid visit-grid-2">
        <button
          type="button"
          aria-pressed={bar.seen.double === true}
          onClick={() => tap({ kind: 'double', double: bar.seen.double !== true })}
        >
          {t('visiting.double')}
        </button>
        <BackButton />
      </div>
    </>
  );
}

function BackButton() {
  const { t } = useText();
  const { tap } = useHand();
  return (
    <button type="button" className="visit-wide" onClick={() => tap({ kind: 'panel', panel: null })}>
      {t('visiting.back')}
    </button>
  );
}
