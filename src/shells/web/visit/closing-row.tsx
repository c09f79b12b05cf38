/** The end of the row: bars hung in or taken out, the follower board, and the bars counted against the trough. */
import { useText } from '../frame/manner.tsx';
import { dayOf } from '../../../journal/entry.ts';
import type { Draft } from './draft.ts';
import { FarLine } from './far-line.tsx';
import { placesRead } from './next-place.ts';
import { Stepper } from './parts.tsx';
import { notOpened } from './sentence.ts';
import type { Trouble } from './session.ts';
import { Shell } from './shell.tsx';
import { barsExpected, rowEnd } from './to-entries.ts';
import { useHand } from './use-session.ts';
import { VisitStrip } from './visit-strip.tsx';

interface ClosingProps {
  readonly draft: Draft;
  readonly trouble: Trouble | null;
}

export function ClosingRow({ draft, trouble }: ClosingProps) {
  const { t } = useText();
  const { view, ports, tap, toPhase } = useHand();
  const { closing, bay } = draft;
  const expected = barsExpected(draft);
  const left = notOpened(draft).length;
  const end = String(rowEnd(draft));
  const count = (by: 1 | -1) =>
    tap({
      kind: 'count',
      what: 'barsCounted',
      value: Math.min(draft.hiveBars, Math.max(0, (closing.barsCounted ?? expected) + by)),
    });
  const differs = closing.barsCounted !== null && closing.barsCounted !== expected;
  return (
    <Shell
      title={t('visiting.title-row', { colony: view.name })}
      trouble={trouble}
      foot={
        <>
          <button type="button" onClick={() => toPhase('bars')}>
            {t('visiting.to-bars')}
          </button>
          <button
            type="button"
            className="visit-go"
            onClick={() => toPhase(draft.visitKind === 'closing for winter' ? 'winter' : 'colony')}
          >
            {t('visiting.next')}
          </button>
        </>
      }
    >
      <VisitStrip draft={draft} />
      {dayOf(draft.began) === ports.today ? null : (
        <p className="visit-stop">{t('visiting.stale', { day: daySlot(dayOf(draft.began)) })}</p>
      )}
      {differs ? (
        <p className="visit-stop" role="alert">
          {t('visiting.row-differs', { counted: closing.barsCounted ?? 0, expected })}
        </p>
      ) : (
        <p role="status">
          {left === 0
            ? t('visiting.row-all', { read: placesRead(draft).length })
            : t('visiting.row-left', { read: placesRead(draft).length, left })}
        </p>
      )}
      <FarLine told={draft.told} />
      <button type="button" className="visit-wide" onClick={() => toPhase('moves')}>
        {t('visiting.to-moves')}
      </button>
      <h2>{t('visiting.row')}</h2>
      <Stepper what={t('visiting.row-given')} value={closing.given} onStep={(by) => tap({ kind: 'row', what: 'given', by })} />
      <Stepper what={t('visiting.row-taken')} value={closing.taken} onStep={(by) => tap({ kind: 'row', what: 'taken', by })} />
      {bay.follower === 'last' ? (
        <Stepper
          what={t('visiting.row-follower')}
          value={closing.follower}
          onStep={(by) => tap({ kind: 'row', what: 'follower', by })}
        />
      ) : null}
      <p>{t(bay.follower === 'last' ? 'visiting.row-end' : 'visiting.row-end-first', { place: end })}</p>
      <h2>{t('visiting.row-count')}</h2>
      <div className="visit-grid visit-grid-2">
        <button
          type="button"
          aria-pressed={closing.barsCounted === expected}
          onClick={() => tap({ kind: 'count', what: 'barsCounted', value: expected })}
        >
          {t('visiting.row-as-said', { n: expected })}
        </button>
        <Stepper what={t('visiting.row-counted')} value={closing.barsCounted} onStep={count} />
      </div>
      <WidthLine draft={draft} />
    </Shell>
  );
}

/** Said only where the trough was measured: strips of wood of today are counted with the rest. */
function WidthLine({ draft }: { readonly draft: Draft }) {
  const { t } = useText();
  const { widths } = useHand().ports;
  if (widths === null || widths.lengthMm === null) return null;
  const today = draft.moves.reduce((sum, { move }) => (move.do === 'spacer' ? sum + move.widthMm : sum), 0);
  const sum = Math.round(widths.sumMm + today);
  const length = Math.round(widths.lengthMm);
  return (
    <p className={sum > length ? 'visit-stop' : undefined}>
      {t(sum > length ? 'visiting.row-too-wide' : 'visiting.row-wide', { sum: String(sum), length: String(length) })}
    </p>
  );
}

function daySlot(day: string) {
  return { kind: 'day', day, cite: { kind: 'worked out', from: [] } } as const;
}
