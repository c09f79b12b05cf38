/** How safe the journal is on this device: whether the browser promised to keep it, and how much room there is. */

export interface Keeping {
  /** null: the browser does not say. */
  readonly persisted: boolean | null;
  readonly usedBytes: number | null;
  readonly roomBytes: number | null;
}

export async function keepingNow(): Promise<Keeping> {
  const storage = storageOf();
  if (storage === null) return { persisted: null, usedBytes: null, roomBytes: null };
  const persisted = await storage.persisted().catch(() => null);
  const estimate = await storage.estimate().catch(() => null);
  return { persisted, usedBytes: estimate?.usage ?? null, roomBytes: estimate?.quota ?? null };
}

/** Asked when there is something to keep; the browser may say no, and Settings then shows so. */
export function askPersistence(): void {
  void storageOf()
    ?.persist()
    .catch(() => false);
}

/** Missing on plain http from another host. */
function storageOf(): StorageManager | null {
  return 'storage' in navigator && typeof navigator.storage.persist === 'function' ? navigator.storage : null;
}
