/** The one suite of stores, run on the store in memory. */
import { memoryCopy } from './memory-copy.ts';
import { memoryStore } from './memory-store.ts';
import { storeContract } from './store.contract.ts';

storeContract('memory', () => Promise.resolve(memoryStore()));
storeContract('memory with outbox', () => Promise.resolve(memoryCopy()));
