/**
 * The bar in the hand: strip, two rulers, classes, five more facts, and Down. All of it stands on one
 * phone screen; what is asked further opens in the place of the rulers and leaves Down where it is.
 */
import { memo, useEffect, useRef } from 'react';
import { useText } from '../frame/manner.tsx';
import { placeNamed } from './arrangement.ts';
import type { BarDraft, CombClass, Draft, Panel } from './draft.ts';
import { readTogether } from './joined-bars.ts';
import { nextPlace } from './next-place.ts';
import { BarPanel } from './bar-panel.tsx';
import { Facts } from './facts.tsx';
import { OneOf, Ruler } from './parts.tsx';
import type { Trouble } from './session.ts';
import { TroubleLine } from './shell.tsx';
import { Smoke } from './smoke.tsx';
import { downRefused } from './tap.ts';
import { Told } from './told.tsx';
import { useHand } from './use-session.ts';
import { VisitStrip } from './visit-strip.tsx';

const classes: readonly CombClass[] = ['bare', 'building', 'food', 'food and brood', 'brood', 'mostly drone'];

interface DeskProps {
  readonly draft: Draft;
  readonly trouble: Trouble | null;
}

export function BarDesk({ draft, trouble }: DeskProps) {
  const { bar } = draft;
  return bar === null ? null : <Desk draft={draft} bar={bar} trouble={trouble} />;
}

function Desk({ draft, bar, trouble }: DeskProps & { readonly bar: BarDraft }) {
  const { t } = useText();
  const { view } = useHand();
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus({ preventScroll: true }), []);
  return (
    <main className="visit visit-desk" data-panel={draft.panel ?? undefined}>
      <header className="visit-head">
        <h1 ref={heading} tabIndex={-1}>
          {bar.seen.of === 'set'
            ? t('visiting.title-set', { colony: view.name, places: placesHeld(draft, bar.place).join(', ') })
            : t('visiting.title', { colony: view.name, place: String(placeNamed(draft, bar.place)) })}
        </h1>
        <Smoke since={draft.smokeSince} />
      </header>
      <div className="visit-see">
        <VisitStrip draft={draft} />
        {trouble === null ? <Told draft={draft} bar={bar} /> : <TroubleLine trouble={trouble} />}
      </div>
      <div className="visit-read">
        {draft.panel === null ? <Rulers bar={bar} /> : <BarPanel draft={draft} bar={bar} panel={draft.panel} />}
      </div>
      <div className="visit-act">
        <Facts draft={draft} bar={bar} />
        <DownButton draft={draft} bar={bar} />
        <Foot canUndo={draft.past.length > 0} open={draft.panel} />
      </div>
    </main>
  );
}

/** Where all hang that are read with this bar, itself among them. */
function placesHeld(draft: Draft, bar: number): readonly number[] {
  return [bar, ...readTogether(draft, bar)].map((one) => placeNamed(draft, one)).sort((a, b) => a - b);
}

function Rulers({ bar }: { readonly bar: BarDraft }) {
  const { seen } = bar;
  return (
    <>
      <Ruler what="brood" value={seen.brood8} />
      <Ruler what="food" value={seen.food8} />
      <Classes value={seen.combClass} />
    </>
  );
}

const Classes = memo(function Classes({ value }: { readonly value: CombClass | null }) {
  const { t } = useText();
  const { tap } = useHand();
  return (
    <OneOf
      legend={t('visiting.classes')}
      quiet
      value={value}
      onChoose={(combClass) => tap({ kind: 'class', combClass })}
      options={classes.map((each) => ({ value: each, label: t(`visiting.class.${each}`) }))}
    />
  );
});

/** Never disabled: a thumb that finds it dead would not know why. The line above says what is missing. */
function DownButton({ draft, bar }: { readonly draft: Draft; readonly bar: BarDraft }) {
  const { t } = useText();
  const { down } = useHand();
  const next = nextPlace(draft, bar.place);
  const ready = downRefused(bar) === null;
  return (
    <button type="button" className="visit-go" aria-disabled={!ready} onClick={down}>
      {next === null ? t('visiting.down-last') : t('visiting.down', { place: String(placeNamed(draft, next)) })}
    </button>
  );
}

const Foot = memo(function Foot({ canUndo, open }: { readonly canUndo: boolean; readonly open: Panel | null }) {
  const { t } = useText();
  const { undo, notOpened, tap } = useHand();
  const isFell = open?.startsWith('fell') === true;
  const panel = (which: 'fell' | 'more', isOpen: boolean) => tap({ kind: 'panel', panel: isOpen ? null : which });
  return (
    <div className="visit-grid visit-grid-4">
      <button type="button" aria-disabled={!canUndo} onClick={undo}>
        {t('visiting.undo')}
      </button>
      <button type="button" onClick={notOpened}>
        {t('visiting.not-opened')}
      </button>
      <button type="button" aria-expanded={isFell} onClick={() => panel('fell', isFell)}>
        {t('visiting.fell')}
      </button>
      <button type="button" aria-expanded={open === 'more' || open === 'discard'} onClick={() => panel('more', open === 'more')}>
        {t('visiting.more')}
      </button>
    </div>
  );
});
