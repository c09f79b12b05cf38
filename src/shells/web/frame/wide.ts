/** Whether the window is wide enough for two columns; the same width as in frame.css. */
import { useSyncExternalStore } from 'react';

const query = '(min-width: 62rem)';

function subscribe(listener: () => void): () => void {
  const list = matchMedia(query);
  list.addEventListener('change', listener);
  return () => list.removeEventListener('change', listener);
}

export function useWide(): boolean {
  return useSyncExternalStore(subscribe, () => matchMedia(query).matches);
}
