/** The strip of the visit at the width it has on the screen; drawn anew only when a bar was put down or another is in the hand. */
import { useLayoutEffect, useMemo, useRef, useState } from 'react';
import { Drawn } from '../frame/drawn.tsx';
import { useText } from '../frame/manner.tsx';
import type { BarView } from '../../../colony/view.ts';
import { arrangementOf, placeNamed, placeOf } from './arrangement.ts';
import type { Draft } from './draft.ts';
import { placesRead } from './next-place.ts';
import { bareBar, visitStrip } from './strip-of-visit.ts';
import { readingOf, rowEnd } from './to-entries.ts';
import { useHand } from './use-session.ts';

const least = { width: 320, height: 44 };
const settleMs = 250;

/** `selected`: the place that is looked at, where it is not that of the bar in the hand. */
export function VisitStrip({ draft, selected = null }: { readonly draft: Draft; readonly selected?: number | null }) {
  const { t } = useText();
  const { view, ports } = useHand();
  const box = useRef<HTMLDivElement>(null);
  const [size, setSize] = useState(least);
  useLayoutEffect(() => {
    const measured = box.current;
    if (measured === null) return undefined;
    const measure = () =>
      setSize((before) => {
        const next = {
          width: Math.max(least.width, measured.clientWidth),
          height: Math.max(least.height, measured.clientHeight),
        };
        return next.width === before.width && next.height === before.height ? before : next;
      });
    measure();
    // A tap changes the room of the strip: it is drawn for the new room when the tap has been answered.
    let later: ReturnType<typeof setTimeout> | undefined;
    const watcher = new ResizeObserver(() => {
      clearTimeout(later);
      later = setTimeout(measure, settleMs);
    });
    watcher.observe(measured);
    return () => {
      clearTimeout(later);
      watcher.disconnect();
    };
  }, []);
  const { read, told, bay, closing, visit, hive, hiveBars, moves, gaps, joined, acts } = draft;
  const current = selected ?? (draft.phase === 'bars' && draft.bar !== null ? placeNamed(draft, draft.bar.place) : null);
  const svg = useMemo(() => {
    const of = (row: Draft['read'][number]) => readingOf({ visit, hive }, row.place, row.seen);
    const arranged = { bay, gaps, hiveBars, moves, read, joined, acts };
    const isRead = placesRead({ read }).length;
    const now = arrangementOf(arranged);
    const end = rowEnd({ ...arranged, closing });
    const stretch = bay.follower === 'last' ? { from: now.row.from, to: end } : { from: end, to: now.row.to };
    const shown = read.flatMap((row) =>
      [row.place, ...(row.with ?? [])].flatMap((bar): (readonly [number, BarView])[] => {
        const place = placeOf(now, bar);
        const drawn = ports.drawn(view, of({ ...row, place: bar }));
        // What hangs elsewhere than it was found is drawn by its reading alone.
        return place === null ? [] : [[place, place === bar ? drawn : { ...drawn, place, comb: null, mark: null }]];
      }),
    );
    const hung = [...now.row.at].flatMap(([place, one]): (readonly [number, BarView])[] =>
      typeof one.what === 'string' && one.bare ? [[place, bareBar(place, view)]] : [],
    );
    return visitStrip({
      view,
      trough: ports.trough,
      gaps: now.row.gaps,
      current,
      bay: stretch,
      end,
      ...size,
      read: new Map([...shown, ...hung]),
      told: told === null || placeOf(now, told.place) !== told.place ? null : told,
      label: t('visiting.strip', { read: isRead, left: bay.to - bay.from + 1 - isRead }),
    });
  }, [view, ports, current, read, told, bay, closing, visit, hive, gaps, hiveBars, moves, joined, acts, size, t]);
  return (
    <div className="visit-strip" ref={box}>
      <Drawn svg={svg} />
    </div>
  );
}
