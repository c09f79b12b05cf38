/** Where the numbers of an advice come from, on tap: figures with their source, and the readings they rest on. */
import { lazy, Suspense, useState } from 'react';
import type { Cite } from '../../../advice/advice.ts';
import type { Id } from '../../../journal/entry.ts';
import { useText } from '../frame/manner.tsx';

const SourceList = lazy(() => import('./source-list.tsx').then((file) => ({ default: file.SourceList })));

export function Sources({ cites }: { readonly cites: readonly Cite[] }) {
  const { t } = useText();
  const [open, setOpen] = useState(false);
  const { figures, entries } = gather(cites);
  if (figures.length === 0 && entries.length === 0) return null;
  return (
    <details onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{t('colony.sources')}</summary>
      {open ? (
        <Suspense fallback={<p>{t('frame.opening')}</p>}>
          <SourceList figures={figures} entries={entries} />
        </Suspense>
      ) : null}
    </details>
  );
}

/** Every figure and every entry once, also those below a number that was worked out. */
export function gather(cites: readonly Cite[]): {
  readonly figures: readonly string[];
  readonly entries: readonly Id[];
} {
  const figures = new Set<string>();
  const entries = new Set<Id>();
  const walk = (cite: Cite): void => {
    if (cite.kind === 'figure') figures.add(cite.key);
    else if (cite.kind === 'entry') entries.add(cite.id);
    else cite.from.forEach(walk);
  };
  cites.forEach(walk);
  return { figures: [...figures], entries: [...entries] };
}
