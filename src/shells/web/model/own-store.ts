/** The keeper's own book: loaded apart, because it brings the schemas of all kinds, which the demo does not need. */
import { kindMap } from '../../../journal/read-entry.ts';
import { allKinds } from '../../../apiary/kinds.ts';
import { openSyncedStore, type SyncedStore } from '../store/synced-store.ts';
import type { ServerNews } from './yard-state.ts';

export function openOwnStore(name: string, onServer: (news: ServerNews) => void): Promise<SyncedStore> {
  return openSyncedStore(name, { kinds: kindMap(allKinds), onStatus: onServer });
}
