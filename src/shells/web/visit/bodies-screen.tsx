/**
 * Combs that are not one comb on one bar: grown together, broken in pieces, built on the follower board; and the bee
 * escape. One place is chosen as in moving; each thing done is one entry, and the last can be taken back.
 */
import { useState } from 'react';
import { useText } from '../frame/manner.tsx';
import { arrangementOf, placeNamed } from './arrangement.ts';
import { BodiesBoard, BodiesEscape } from './bodies-board.tsx';
import { BodiesJoined } from './bodies-joined.tsx';
import { BodiesPiece } from './bodies-piece.tsx';
import type { Draft } from './draft.ts';
import { OneOf, Stepper } from './parts.tsx';
import type { Trouble } from './session.ts';
import { Shell } from './shell.tsx';
import { undoableAct } from './tap-body.ts';
import { useHand } from './use-session.ts';
import { VisitStrip } from './visit-strip.tsx';

interface BodiesProps {
  readonly draft: Draft;
  readonly trouble: Trouble | null;
}

const parts = ['joined', 'piece', 'board', 'escape'] as const;
type Part = (typeof parts)[number];

export function BodiesScreen({ draft, trouble }: BodiesProps) {
  const { t } = useText();
  const { view, bodyBack, toPhase } = useHand();
  const now = arrangementOf(draft);
  const { from, to } = now.row;
  const [part, setPart] = useState<Part>('joined');
  const [chosen, setChosen] = useState(() => (draft.bar === null ? to : placeNamed(draft, draft.bar.place)));
  const place = Math.min(to, Math.max(from, chosen));
  const act = undoableAct(draft);
  const Shown = { joined: BodiesJoined, piece: BodiesPiece, board: BodiesBoard, escape: BodiesEscape }[part];
  return (
    <Shell
      title={t('visiting.title-bodies', { colony: view.name })}
      trouble={trouble}
      foot={
        <>
          <button type="button" aria-disabled={act === null} onClick={bodyBack}>
            {t('visiting.body-back')}
          </button>
          <button type="button" className="visit-go" onClick={() => toPhase(draft.bar === null ? 'row' : 'bars')}>
            {t('visiting.bodies-done')}
          </button>
        </>
      }
    >
      <VisitStrip draft={draft} selected={place} />
      {act === null ? null : <p role="status">{t(`visiting.body-kept.${act.what}`)}</p>}
      <OneOf
        legend={t('visiting.bodies-what')}
        quiet
        columns={2}
        value={part}
        onChoose={setPart}
        options={parts.map((value) => ({ value, label: t(`visiting.bodies.${value}`) }))}
      />
      {part === 'joined' || part === 'piece' ? (
        <Stepper
          named
          what={t('visiting.go-place')}
          value={place}
          onStep={(by) => setChosen(Math.min(to, Math.max(from, place + by)))}
        />
      ) : null}
      <Shown key={`${part} ${place}`} draft={draft} now={now} place={place} />
    </Shell>
  );
}
