/** The simulation of devices in small, and that it is awake: faults put in on purpose are found. `npm run devices` runs more. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { memoryCopy } from '../../src/journal/memory-copy.ts';
import { browserCopy } from './browser-copy.ts';
import { madeUpServer } from './made-up-server.ts';
import { type Copy, type DevicesRun, runDevices, type RunOptions } from './run-devices.ts';

async function runs(seeds: number, options: () => RunOptions = () => ({})): Promise<readonly DevicesRun[]> {
  const done: DevicesRun[] = [];
  for (let seed = 1; seed <= seeds; seed += 1) done.push(await runDevices(seed, options()));
  return done;
}

const foundIn = (done: readonly DevicesRun[]): readonly string[] => done.flatMap(({ found }) => found);

test('J68 whatever is lost, doubled, late or set back, no device loses an entry or thinks it safe when it is not', async () => {
  const done = await runs(40);
  assert.deepEqual(foundIn(done), []);
  const sum = (of: (run: DevicesRun) => number): number => done.reduce((all, run) => all + of(run), 0);
  assert.ok(
    sum(({ entries }) => entries) > 1000 && sum(({ setBacks }) => setBacks) > 50 && sum(({ conflicts }) => conflicts) > 10,
  );
});

test('J68 so it is with the database of a browser', async () => {
  assert.deepEqual(foundIn(await runs(4, () => ({ makeCopy: browserCopy }))), []);
});

test('J68 the same seed gives the same run', async () => {
  assert.deepEqual(await runDevices(7), await runDevices(7));
});

test('J69 the simulation is awake: entries settled as soon as they are pushed are found', async () => {
  assert.ok(foundIn(await runs(10, () => ({ settlesAtPush: true }))).length > 0);
});

test('J69 a server whose runs bear no names is found', async () => {
  assert.ok(foundIn(await runs(60, () => ({ server: madeUpServer(true) }))).length > 0);
});

test('J69 a copy that goes on from wherever it was is found, and one that loses what came', async () => {
  const careless = (): Promise<Copy> => {
    const copy = memoryCopy();
    return Promise.resolve({
      ...copy,
      receive: async (entries, place) => copy.receive(entries, place, await copy.place()),
      restart: async (epoch) => copy.restart(epoch, await copy.place()),
    });
  };
  const lossy = (): Promise<Copy> => {
    const copy = memoryCopy();
    return Promise.resolve({ ...copy, receive: (entries, place, from) => copy.receive(entries.slice(1), place, from) });
  };
  assert.ok(foundIn(await runs(60, () => ({ makeCopy: careless }))).length > 0, 'careless');
  assert.ok(foundIn(await runs(5, () => ({ makeCopy: lossy }))).length > 0, 'lossy');
});
