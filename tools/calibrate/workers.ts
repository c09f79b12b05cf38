/**
 * Replicates shared out among worker threads, each taking the next when it is done; the outcome is that of doing
 * them one after the other, because each has chance of its own.
 */
import { isMainThread, parentPort, Worker, workerData } from 'node:worker_threads';
import { type Effort, type Placed, replicate } from './replicate.ts';

/** A thread does not take over how its parent reads TypeScript: it is told before it reads this file. */
const startsHere = `import('tsx/esm/api').then(({ register }) => { register(); return import(${JSON.stringify(import.meta.url)}); })`;

export async function replicatesOnWorkers(effort: Effort, replicates: number, workers: number): Promise<readonly Placed[]> {
  const placed = Array.from<Placed>({ length: replicates });
  let next = 0;
  const one = (): Promise<void> =>
    new Promise((resolve, reject) => {
      const worker = new Worker(startsHere, { eval: true, workerData: { calibrate: effort } });
      const give = (): void => {
        if (next < replicates) worker.postMessage(next++);
        else void worker.terminate().then(() => resolve());
      };
      worker.on('message', ({ index, found }: { readonly index: number; readonly found: Placed }) => {
        placed[index] = found;
        give();
      });
      worker.on('error', reject);
      give();
    });
  await Promise.all(Array.from({ length: Math.min(workers, replicates) }, one));
  return placed;
}

const asked = (workerData as { readonly calibrate?: Effort } | null)?.calibrate;
if (!isMainThread && asked !== undefined) {
  parentPort!.on('message', (index: number) => parentPort!.postMessage({ index, found: replicate(asked, index) }));
}
