/**
 * Seasons `from` on shared out among worker threads in blocks, each taking the next when it is done; the outcome is that
 * of living them one after the other, because each season has chance of its own.
 */
import { isMainThread, parentPort, Worker, workerData } from 'node:worker_threads';
import type { Tally } from './tally.ts';
import { liveSeasons, trialPolicies, trialWorld, type WorldName } from './trial.ts';

/** A thread does not take over how its parent reads TypeScript: it is told before it reads this file. */
const startsHere = `import('tsx/esm/api').then(({ register }) => { register(); return import(${JSON.stringify(import.meta.url)}); })`;
const block = 5;
const mark = 'festoon trial';

interface Work {
  readonly from: number;
  readonly to: number;
}

interface Done extends Work {
  readonly tallies: readonly (readonly Tally[])[];
}

export async function seasonsOnWorkers(
  world: WorldName,
  from: number,
  seasons: number,
  workers: number,
  told: (done: number) => void = () => undefined,
): Promise<readonly (readonly Tally[])[]> {
  const all = Array.from<readonly Tally[]>({ length: seasons });
  let next = 0;
  let done = 0;
  const one = (): Promise<void> =>
    new Promise((resolve, reject) => {
      const worker = new Worker(startsHere, { eval: true, workerData: { mark, world } });
      const give = (): void => {
        if (next >= seasons) {
          void worker.terminate().then(() => resolve());
          return;
        }
        const to = Math.min(seasons, next + block);
        worker.postMessage({ from: from + next, to: from + to } satisfies Work);
        next = to;
      };
      worker.on('message', ({ from: first, to, tallies }: Done) => {
        tallies.forEach((season, i) => (all[first - from + i] = season));
        done += to - first;
        told(done);
        give();
      });
      worker.on('error', reject);
      give();
    });
  await Promise.all(Array.from({ length: Math.max(1, Math.min(workers, Math.ceil(seasons / block))) }, one));
  return all;
}

const asked = workerData as { readonly mark?: string; readonly world: WorldName } | null;
if (!isMainThread && asked?.mark === mark) {
  const world = trialWorld(asked.world);
  parentPort!.on('message', ({ from, to }: Work) =>
    parentPort!.postMessage({ from, to, tallies: liveSeasons(world, trialPolicies, from, to) } satisfies Done),
  );
}
