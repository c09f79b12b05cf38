/**
 * Whether the window is wide enough for two columns; the same width as in frame.css. Paper gets what the screen has:
 * a page drawn anew while its sheets are counted ends in empty ones.
 */
import { useSyncExternalStore } from 'react';

const query = '(min-width: 62rem)';
let onScreen: boolean | null = null;

function subscribe(listener: () => void): () => void {
  const list = matchMedia(query);
  list.addEventListener('change', listener);
  return () => list.removeEventListener('change', listener);
}

function isWide(): boolean {
  if (onScreen === null || !matchMedia('print').matches) onScreen = matchMedia(query).matches;
  return onScreen;
}

export function useWide(): boolean {
  return useSyncExternalStore(subscribe, isWide);
}
