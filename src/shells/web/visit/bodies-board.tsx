/** Comb on the follower board, read in eighths like any other; and the bee escape, set and taken out. */
import { useState } from 'react';
import { useText } from '../frame/manner.tsx';
import type { BodyProps } from './body-props.ts';
import { Stepper } from './parts.tsx';
import { useHand } from './use-session.ts';

const whole = 8;

function boardPlace({ draft, now }: Pick<BodyProps, 'draft' | 'now'>): number {
  return draft.bay.follower === 'last' ? now.row.to : now.row.from;
}

export function BodiesBoard({ draft, now }: BodyProps) {
  const { t } = useText();
  const { body, view } = useHand();
  const [built8, setBuilt8] = useState(2);
  const [brood8, setBrood8] = useState(0);
  const [food8, setFood8] = useState(0);
  const place = boardPlace({ draft, now });
  const within = (value: number, least: number, most: number) => Math.min(most, Math.max(least, value));
  return (
    <>
      <p>{t(view.board === undefined ? 'visiting.board-about' : 'visiting.board-known', { place: String(place) })}</p>
      <Stepper what={t('visiting.board-built')} value={built8} onStep={(by) => setBuilt8(within(built8 + by, 1, whole))} />
      <Stepper
        what={t('visiting.board-brood')}
        value={brood8}
        onStep={(by) => setBrood8(within(brood8 + by, 0, whole - food8))}
      />
      <Stepper what={t('visiting.board-food')} value={food8} onStep={(by) => setFood8(within(food8 + by, 0, whole - brood8))} />
      <div className="visit-grid visit-grid-2">
        <button type="button" onClick={() => body({ kind: 'board', place, read: { built8, brood8, food8 } })}>
          {t('visiting.board-read')}
        </button>
        <button type="button" onClick={() => body({ kind: 'board', place, read: null })}>
          {t('visiting.board-gone')}
        </button>
      </div>
    </>
  );
}

export function BodiesEscape({ draft, now }: BodyProps) {
  const { t } = useText();
  const { body, view } = useHand();
  const { from, to } = now.row;
  const [after, setAfter] = useState(Math.max(from, to - 1));
  const last = view.events.findLast(({ event }) => event.kind === 'bee escape')?.event;
  const act = draft.acts.findLast(({ what }) => what === 'escape set' || what === 'escape out');
  // What was tapped at this visit is newer than any picture of the colony.
  const isIn = act === undefined ? last?.kind === 'bee escape' && last.what === 'set' : act.what === 'escape set';
  return (
    <>
      <p>{t(isIn ? 'visiting.escape-in' : 'visiting.escape-about')}</p>
      {isIn ? null : (
        <Stepper
          named
          what={t('visiting.escape-after')}
          value={after}
          onStep={(by) => setAfter((old) => Math.min(to, Math.max(from, old + by)))}
        />
      )}
      <button
        type="button"
        className="visit-wide"
        onClick={() => body({ kind: 'bee escape', what: isIn ? 'taken out' : 'set', after })}
      >
        {isIn ? t('visiting.escape-out') : t('visiting.escape-set', { place: String(after) })}
      </button>
    </>
  );
}
