/** The queen: her chances where a model tells them, what the brood and the cells say, with dates, and what a search could have missed. */
import { lazy, Suspense } from 'react';
import type { ColonyView } from '../../../colony/view.ts';
import { formatChance } from '../../../words/format-chance.ts';
import { useText } from '../frame/manner.tsx';
import { dayPart, placesPart, windowPart } from '../frame/parts.ts';
import { gather, Sources } from './sources.tsx';

const QueenChances = lazy(() => import('./queen-chances.tsx').then((file) => ({ default: file.QueenChances })));

export function QueenPart({ view }: { readonly view: ColonyView }) {
  const { t } = useText();
  const { queen, cells, foreseen } = view;
  const lines = [
    t(`looked-eggs.${queen.eggs}`),
    queen.lastLaid === null ? null : t('queen.last-laid', { window: windowPart(queen.lastLaid) }),
    queen.contradictory ? t('queen.contradictory') : null,
    queen.virginDays === null || foreseen !== null ? null : t('queen.virgin-days', { window: windowPart(queen.virginDays) }),
    queen.firstEggs === null ? null : t('queen.first-eggs', { window: windowPart(queen.firstEggs) }),
    queen.nextTelling === null || foreseen !== null ? null : t('queen.next-telling', { day: dayPart(queen.nextTelling) }),
    view.queenMark === null ? null : t('queen.marked', { colour: t(`mark.${view.queenMark}` as 'mark.white') }),
    view.queenSince === null ? null : t('queen.since', { window: windowPart(view.queenSince) }),
  ].filter((line) => line !== null);
  const cites = [...queen.from, ...(cells?.from ?? [])].map((id) => ({ kind: 'entry', id }) as const);
  return (
    <section>
      <h2>{t('queen.title')}</h2>
      {foreseen === null ? (
        <p>{queen.state === 'unknown' ? t('queen.unknown') : t('queen.state', { state: t(`queen-state.${queen.state}`) })}</p>
      ) : (
        <Suspense>
          <QueenChances view={view} foreseen={foreseen} />
        </Suspense>
      )}
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      {cells === null ? null : <Cells cells={cells} />}
      <Missed view={view} />
      {gather(cites).entries.length === 0 ? null : <Sources cites={cites} />}
    </section>
  );
}

function Cells({ cells }: { readonly cells: NonNullable<ColonyView['cells']> }) {
  const { t } = useText();
  const { open, sealed, torn, emerged } = cells.counts;
  return (
    <>
      <h3>{t(`cells.${cells.likelyKind ?? 'any'}`)}</h3>
      <ul>
        <li>
          {t('queen.cell-counts', { open, sealed, torn, emerged })}
          {cells.places.length === 0 ? '' : ` ${t('queen.cell-places', { places: placesPart(cells.places) })}`}
        </li>
        {cells.sealed === null ? null : <li>{t('queen.cells-sealed', { window: windowPart(cells.sealed) })}</li>}
        {cells.leaves === null ? null : <li>{t('queen.swarm-leaves', { window: windowPart(cells.leaves) })}</li>}
        {cells.virginEmerges === null ? null : <li>{t('queen.virgin-emerges', { window: windowPart(cells.virginEmerges) })}</li>}
      </ul>
    </>
  );
}

function Missed({ view }: { readonly view: ColonyView }) {
  const { t, manner } = useText();
  const { search } = view;
  if (search === null) return null;
  const one = search.missAll.find((row) => row.cells === 1);
  const three = search.missAll.find((row) => row.cells === 3);
  return (
    <p className="soft">
      {t('queen.search', { opened: search.barsOpened, bars: search.barsInBay })}{' '}
      {one === undefined || three === undefined
        ? null
        : t('queen.missed', { one: formatChance(one.chance, manner), three: formatChance(three.chance, manner) })}
    </p>
  );
}
