/** The keeper's own book: loaded apart, because it brings the schemas of all kinds, which the demo does not need. */
import * as z from 'zod/mini';
import { kindMap } from '../../../journal/read-entry.ts';
import { allKinds } from '../../../apiary/kinds.ts';
import { openSyncedStore, type SyncedStore } from '../store/synced-store.ts';
import type { ServerNews } from './yard-state.ts';

// The server's content policy forbids code made from text, which zod would otherwise try.
z.config({ jitless: true });

export function openOwnStore(name: string, onServer: (news: ServerNews) => void): Promise<SyncedStore> {
  return openSyncedStore(name, { kinds: kindMap(allKinds), onStatus: onServer });
}
