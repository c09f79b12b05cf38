/**
 * What hands do with the bars beside reading them: one place is chosen, and what can be done there stands below. Each
 * tap is one move in the journal; the last one, or all of them, can be taken back.
 */
import { useState } from 'react';
import { useText } from '../frame/manner.tsx';
import { type Arrangement, arrangementOf, barsHung, placeNamed } from './arrangement.ts';
import type { Draft } from './draft.ts';
import { AtBar, AtGap } from './moves-at.tsx';
import { Hang } from './moves-hang.tsx';
import { Stepper } from './parts.tsx';
import type { Trouble } from './session.ts';
import { Shell } from './shell.tsx';
import { movesUndoable } from './tap-move.ts';
import { useHand } from './use-session.ts';
import { VisitStrip } from './visit-strip.tsx';

interface MovesProps {
  readonly draft: Draft;
  readonly trouble: Trouble | null;
}

export function MovesScreen({ draft, trouble }: MovesProps) {
  const { t } = useText();
  const { view, movesBack, toPhase } = useHand();
  const now = arrangementOf(draft);
  const { from, to } = now.row;
  const [chosen, setChosen] = useState(() => (draft.bar === null ? to : placeNamed(draft, draft.bar.place)));
  // A bar can be hung in just beyond the last one.
  const [least, most] = [Math.max(1, from - 1), Math.min(draft.hiveBars, to + 1)];
  const within = (place: number): number => Math.min(most, Math.max(least, place));
  const place = within(chosen);
  const undoable = movesUndoable(draft);
  const gaps = to - from + 1 - barsHung(now);
  return (
    <Shell
      title={t('visiting.title-moves', { colony: view.name })}
      trouble={trouble}
      foot={
        <>
          <button type="button" aria-disabled={undoable === 0} onClick={() => movesBack('last')}>
            {t('visiting.moves-undo')}
          </button>
          <button type="button" className="visit-go" onClick={() => toPhase(draft.bar === null ? 'row' : 'bars')}>
            {t('visiting.moves-done')}
          </button>
        </>
      }
    >
      <VisitStrip draft={draft} selected={place} />
      <p role="status">{t(`visiting.moves-at.${kindAt(now, place)}`, slotsAt(now, place))}</p>
      <Stepper named what={t('visiting.go-place')} value={place} onStep={(by) => setChosen(within(place + by))} />
      {now.row.at.has(place) ? <AtBar now={now} place={place} /> : <AtGap now={now} place={place} />}
      <Hang draft={draft} now={now} place={place} />
      {gaps > 0 ? <p className="visit-stop">{t('visiting.moves-gaps', { n: gaps })}</p> : null}
      {draft.moves.length > undoable ? <p>{t('visiting.moves-read-since')}</p> : null}
      {draft.moves.length > 1 && draft.moves.length === undoable ? (
        <button type="button" className="visit-wide" onClick={() => movesBack('all')}>
          {t('visiting.moves-as-found', { n: draft.moves.length })}
        </button>
      ) : null}
    </Shell>
  );
}

type KindAt = 'found' | 'moved' | 'bare' | 'hung' | 'gap' | 'beyond';

function kindAt({ row }: Arrangement, place: number): KindAt {
  const hung = row.at.get(place);
  if (place < row.from || place > row.to) return 'beyond';
  if (hung === undefined) return 'gap';
  if (typeof hung.what === 'string') return hung.bare ? 'bare' : 'hung';
  return hung.what === place ? 'found' : 'moved';
}

/** Of a bar that was moved, the place at which it was found too. */
function slotsAt(now: Arrangement, place: number): Readonly<Record<string, string>> {
  const what = now.row.at.get(place)?.what;
  return { place: String(place), ...(kindAt(now, place) === 'moved' ? { was: String(what) } : {}) };
}
