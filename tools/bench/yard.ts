/**
 * Thirty colonies over two years lived through from scratch, on so many worker threads: each takes the next colony
 * when it is done, as the program's two workers do. The clock runs from when all have read the journal.
 */
import { isMainThread, parentPort, Worker, workerData } from 'node:worker_threads';
import { readJournal } from '../../src/apiary.ts';
import { foreseeColony } from '../../src/apiary/foresee.ts';
import { randomYard } from '../world/yards.ts';

const size = { hives: 30, years: 2, visitsPerYear: 20, checked: false } as const;

/** A thread does not take over how its parent reads TypeScript: it is told before it reads this file. */
const startsHere = `import('tsx/esm/api').then(({ register }) => { register(); return import(${JSON.stringify(import.meta.url)}); })`;

export async function yardFromScratch(workers: number): Promise<{ readonly colonies: number; readonly ms: number }> {
  const threads = Array.from({ length: workers }, () => new Worker(startsHere, { eval: true, workerData: 'yard' }));
  const counts = await Promise.all(threads.map((one) => told(one)));
  const colonies = counts[0]!;
  let next = 0;
  const before = performance.now();
  await Promise.all(
    threads.map(async (one) => {
      while (next < colonies) {
        one.postMessage(next++);
        await told(one);
      }
    }),
  );
  const ms = performance.now() - before;
  await Promise.all(threads.map((one) => one.terminate()));
  return { colonies, ms };
}

function told(worker: Worker): Promise<number> {
  return new Promise((resolve) => worker.once('message', resolve));
}

if (!isMainThread && workerData === 'yard') {
  const apiary = readJournal(randomYard(1, size));
  const last = [...apiary.state.visits.values()]
    .map((one) => one.day)
    .sort()
    .at(-1)!;
  const colonies = [...apiary.state.colonies.values()].filter((one) => one.ended === null);
  parentPort!.on('message', (index: number) => {
    foreseeColony(apiary, colonies[index]!.id, last);
    parentPort!.postMessage(index);
  });
  parentPort!.postMessage(colonies.length);
}
