/** The browser's own copy of the journal, on a database of a browser as far as one can be had without a browser. */
import 'fake-indexeddb/auto';
import { openBrowserStore } from '../../src/shells/web/store/idb-store.ts';
import type { Copy } from './run-devices.ts';

let books = 0;

export async function browserCopy(): Promise<Copy> {
  books += 1;
  return (await openBrowserStore(`devices-${books}`)).journal;
}
