/** The strip of the visit at the width it has on the screen; drawn anew only when a bar was put down or another is in the hand. */
import { useLayoutEffect, useMemo, useRef, useState } from 'react';
import { Drawn } from '../frame/drawn.tsx';
import { useText } from '../frame/manner.tsx';
import type { Draft } from './draft.ts';
import { visitStrip } from './strip-of-visit.ts';
import { readingOf, rowEnd } from './to-entries.ts';
import { useHand } from './use-session.ts';

const least = { width: 320, height: 44 };
const settleMs = 250;

export function VisitStrip({ draft }: { readonly draft: Draft }) {
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
  const { read, told, bay, closing, visit, hive } = draft;
  const current = draft.phase === 'bars' ? (draft.bar?.place ?? null) : null;
  const svg = useMemo(() => {
    const of = (row: Draft['read'][number]) => readingOf({ visit, hive }, row.place, row.seen);
    const end = rowEnd({ bay, closing });
    const stretch = bay.follower === 'last' ? { from: bay.from, to: end } : { from: end, to: bay.to };
    return visitStrip({
      view,
      trough: ports.trough,
      current,
      bay: stretch,
      end,
      ...size,
      read: new Map(read.map((row) => [row.place, ports.drawn(view, of(row))])),
      told,
      label: t('visiting.strip', { read: read.length, left: bay.to - bay.from + 1 - read.length }),
    });
  }, [view, ports, current, read, told, bay, closing, visit, hive, size, t]);
  return (
    <div className="visit-strip" ref={box}>
      <Drawn svg={svg} />
    </div>
  );
}
