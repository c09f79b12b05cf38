/** The nest as it should look today or on another day: seven bars large, one of them in hand, with its face and what it holds. */
import { useState } from 'react';
import type { BarView, ColonyView } from '../../../colony/view.ts';
import { layerOrder } from '../../../sheets/strip.ts';
import { Drawn } from '../frame/drawn.tsx';
import { useDrawings } from '../frame/drawings.ts';
import { useText } from '../frame/manner.tsx';
import { dayPart } from '../frame/parts.ts';
import { OtherDay, useOtherDay } from './other-day.tsx';

export function BarsToday({ view: today }: { readonly view: ColonyView }) {
  const { t } = useText();
  const other = useOtherDay(today);
  const { view } = other;
  const { lensStrip } = useDrawings();
  const middle = view.bars.filter((bar) => bar.kind !== 'bare');
  const [place, setPlace] = useState(middle[Math.floor(middle.length / 2)]?.place ?? view.bay.from);
  const bar = view.bars.find((one) => one.place === place);
  return (
    <section>
      <h2>{t('bars.title', { day: dayPart(view.day) })}</h2>
      <OtherDay day={other} />
      <div onClick={(event) => setPlace(placeUnder(event.target) ?? place)}>
        <Drawn svg={lensStrip(view, place)} className="drawn lens" />
      </div>
      <div className="stepper" role="group" aria-label={t('bars.choose')}>
        <button type="button" disabled={place <= view.bay.from} onClick={() => setPlace(place - 1)}>
          {t('bars.back')}
        </button>
        <p role="status">
          <b>{t('bars.place', { n: place })}</b>
        </p>
        <button type="button" disabled={place >= view.bay.to} onClick={() => setPlace(place + 1)}>
          {t('bars.on')}
        </button>
      </div>
      {bar === undefined ? <p>{t('bars.none')}</p> : <OneBar view={view} bar={bar} />}
      <Awkward view={view} place={place} />
    </section>
  );
}

function OneBar({ view, bar }: { readonly view: ColonyView; readonly bar: BarView }) {
  const { t } = useText();
  const { face } = useDrawings();
  const read =
    bar.readOn === null
      ? t('bars.never-read')
      : t(bar.ink === 'seen' ? 'bars.read-on' : 'bars.worked-from', { day: dayPart(bar.readOn) });
  if (bar.kind === 'bare') return <p>{t('bars.bare')}</p>;
  if (bar.shares === null)
    return (
      <p>
        {t('bars.unknown')} {read}
      </p>
    );
  const { shares } = bar;
  const held = layerOrder.filter((content) => Math.round(shares[content] * 100) >= 1).sort((a, b) => shares[b] - shares[a]);
  return (
    <div className="one-bar">
      <Drawn svg={face(view, bar)} />
      <div>
        <p>
          {read}
          {bar.mark === null ? '' : ` ${t('bars.mark', { mark: bar.mark })}`}
        </p>
        <ul className="shares">
          {held.map((content) => (
            <li key={content}>
              <span>{t(`content.${content}`)}</span> {t('bars.percent', { percent: Math.round(shares[content] * 100) })}
            </li>
          ))}
        </ul>
        {bar.cells === null ? null : (
          <p>
            {Object.values(bar.cells).some((count) => count > 0) ? t('queen.cell-counts', { ...bar.cells }) : t('queen.no-cells')}
          </p>
        )}
        {bar.attached === undefined ? null : <p>{t(`bars.attached.${bar.attached}`)}</p>}
        {bar.queenSeen ? <p>{t('bars.queen-seen')}</p> : null}
        {bar.bees === null ? null : <p>{t('bars.bees', { eighths: Math.round(bar.bees * 8) })}</p>}
        <p className="soft small">{t(bar.ink === 'guessed' ? 'bars.drawn-guess' : 'bars.drawn')}</p>
      </div>
    </div>
  );
}

/** What is not one comb on one bar: what has grown together here, two on the bar, and comb on the follower board. */
function Awkward({ view, place }: { readonly view: ColonyView; readonly place: number }) {
  const { t } = useText();
  const set = (view.joined ?? []).find(({ places }) => places.includes(place));
  const bar = view.bars.find((one) => one.place === place);
  const { board } = view;
  return (
    <>
      {set === undefined ? null : (
        <p className="awkward">
          {t('bars.joined', { places: set.places.join(', ') })} {t(`bars.joined.${set.how}`)}
        </p>
      )}
      {bar === undefined || bar.built <= 1 ? null : <p className="awkward">{t('bars.double')}</p>}
      {board === undefined ? null : (
        <p className="awkward">
          {t('bars.board', { eighths: Math.round(board.built * eighthsInWhole) })}
          {board.readOn === null ? '' : ` ${t('bars.read-on', { day: dayPart(board.readOn) })}`}
        </p>
      )}
    </>
  );
}

const eighthsInWhole = 8;

/** The sheets write the place into what they draw, so that a tap on a comb finds it. */
function placeUnder(target: EventTarget): number | null {
  const found = target instanceof Element ? target.closest('[data-place]')?.getAttribute('data-place') : null;
  return found === null || found === undefined ? null : Number(found);
}
