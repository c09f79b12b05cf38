/**
 * One yard on several devices, by seed: they write, correct what others wrote, and exchange over a bad line with a server
 * that is opened anew and set back, with two windows at once and clocks that are wrong. What must hold is looked at after
 * every step; in the end all hold the same, and fold it to the same.
 */
import { correctEntries } from '../../src/journal/correct.ts';
import type { Entry } from '../../src/journal/entry.ts';
import { foldJournal } from '../../src/journal/fold.ts';
import { memoryCopy } from '../../src/journal/memory-copy.ts';
import { kindMap } from '../../src/journal/read-entry.ts';
import { emptyJars, filled, jarKinds } from '../../src/journal/sample.contract.ts';
import { readAll } from '../../src/journal/store.contract.ts';
import type { JournalStore } from '../../src/journal/store.ts';
import { syncOnce } from '../../src/journal/sync.ts';
import type { LocalCopy, Remote } from '../../src/journal/sync-ports.ts';
import { chanceOf, type Chance } from '../world/chance.ts';
import { badLine, type Line } from './bad-line.ts';
import { madeUpServer, type MadeUpServer } from './made-up-server.ts';

export type Copy = JournalStore & LocalCopy;

export interface RunOptions {
  readonly makeCopy?: () => Promise<Copy>;
  readonly server?: MadeUpServer;
  /** Takes entries off the waiting list as soon as they are pushed: a fault put in on purpose. */
  readonly settlesAtPush?: boolean;
}

export interface DevicesRun {
  readonly seed: number;
  readonly steps: number;
  readonly entries: number;
  readonly setBacks: number;
  readonly conflicts: number;
  /** What did not hold, in words, with the step; empty when all did. */
  readonly found: readonly string[];
}

interface World {
  readonly luck: Chance;
  readonly server: MadeUpServer;
  readonly line: Line;
  readonly devices: readonly Device[];
  readonly written: Map<string, Entry>;
  readonly settlesAtPush: boolean;
  setBacks: number;
}

interface Device {
  readonly name: string;
  readonly copy: Copy;
  /** What this device holds, kept beside it: nothing of it may ever go. */
  readonly held: Set<string>;
  /** Exchanges under way, one a window. */
  windows: number;
}

const mostSteps = 220;
const mostWindows = 2;

export async function runDevices(seed: number, options: RunOptions = {}): Promise<DevicesRun> {
  const luck = chanceOf(seed, 'devices');
  const make = options.makeCopy ?? (() => Promise.resolve(memoryCopy()));
  const names = ['phone', 'second phone', 'laptop'].slice(0, luck.whole(2, 3));
  const devices: Device[] = [];
  for (const name of names) devices.push({ name, copy: await make(), held: new Set(), windows: 0 });
  const world: World = {
    luck,
    server: options.server ?? madeUpServer(),
    line: badLine(luck),
    devices,
    written: new Map(),
    settlesAtPush: options.settlesAtPush ?? false,
    setBacks: 0,
  };
  const found: string[] = [];
  let steps = 0;
  for (; steps < mostSteps && found.length === 0; steps += 1) {
    await step(world);
    await settled();
    found.push(...(await broken(world)).map((what) => `step ${steps}: ${what}`));
  }
  if (found.length === 0) found.push(...(await ended(world)));
  const conflicts = correctEntries([...world.written.values()], kindMap(jarKinds)).conflicts.length;
  for (const { copy } of devices) await copy.close();
  return { seed, steps, entries: world.written.size, setBacks: world.setBacks, conflicts, found };
}

async function step(world: World): Promise<void> {
  const { luck, line, server, devices } = world;
  const device = devices[luck.whole(0, devices.length - 1)]!;
  const dice = luck.unit();
  if (dice < 0.2) await write(world, device);
  else if (dice < 0.4) exchange(world, device);
  else if (dice < 0.43) server.copy();
  else if (dice < 0.45) world.setBacks += server.setBack(luck.whole(0, 9)) ? 1 : 0;
  else if (dice < 0.47) server.openAnew();
  else if (line.waiting() > 0) line.deliver();
}

/** Entries of a hand whose clock may be wrong; one in four changes what is already there. */
async function write(world: World, device: Device): Promise<void> {
  const { luck, written } = world;
  const entries = Array.from({ length: luck.whole(1, 3) }, () => entryOf(world, device, written.size));
  const fresh = entries.filter((entry) => !written.has(entry.id));
  for (const entry of fresh) written.set(entry.id, entry);
  await device.copy.append(fresh);
  for (const entry of fresh) device.held.add(entry.id);
}

function entryOf(world: World, device: Device, n: number): Entry {
  const { luck, written } = world;
  const id = luck.whole(1, 1_000_000);
  const day = `2014-05-${String(luck.whole(1, 28)).padStart(2, '0')}`;
  const noted = `2014-05-${String(luck.whole(1, 28)).padStart(2, '0')}T${String(luck.whole(0, 23)).padStart(2, '0')}:00:00Z`;
  const entry = { ...filled(id, luck.pick(['a', 'b']), luck.whole(1, 500), day), noted, body: { jar: 'a', grams: n + 1 } };
  const seen = [...device.held].flatMap((one) => written.get(one) ?? []).filter(({ kind }) => kind === 'fill');
  if (seen.length === 0 || !luck.happens(0.25)) return entry;
  const target = seen[luck.whole(0, seen.length - 1)]!;
  const knew = [...device.held].filter((one) => written.get(one)?.corrects === target.id);
  const change = luck.happens(0.3)
    ? ({ kind: 'void', body: { why: 'no', knew } } as const)
    : ({ kind: 'correction', body: { body: { jar: 'a', grams: n + 1000 }, why: 'yes', knew } } as const);
  return { ...entry, ...change, version: 1, corrects: target.id };
}

/** Runs beside the others until the line has delivered all its questions. */
function exchange({ luck, server, line, settlesAtPush }: World, device: Device): void {
  if (device.windows >= mostWindows) return;
  const over = line.over(server.remote);
  const remote = settlesAtPush ? settling(over, device.copy) : over;
  device.windows += 1;
  const sizes = { pushSize: luck.whole(1, 4), pullSize: luck.whole(1, 5) };
  void syncOnce(device.copy, remote, sizes).finally(() => {
    device.windows -= 1;
  });
}

function settling(remote: Remote, copy: Copy): Remote {
  return {
    ...remote,
    push: async (entries) => {
      const answer = await remote.push(entries);
      if (answer.ok) await copy.settle(entries.map(({ id }) => id));
      return answer;
    },
  };
}

/** What does not hold now. */
async function broken({ devices, server, written }: World): Promise<readonly string[]> {
  const found: string[] = [];
  const ids = server.ids();
  if (new Set(ids).size !== ids.length) found.push('the server holds an entry twice');
  for (const id of ids) if (!written.has(id)) found.push(`the server holds ${id}, which nobody wrote`);
  for (const { name, copy, held } of devices) {
    const now = (await readAll(copy, 1000)).map(({ entry }) => entry.id);
    const there = new Set(now);
    if (there.size !== now.length) found.push(`${name} holds an entry twice`);
    for (const id of held) if (!there.has(id)) found.push(`${name} has lost ${id}`);
    for (const id of there) held.add(id);
    const waiting = new Set((await copy.waiting(null, 10_000)).map(({ id }) => id));
    for (const id of waiting) if (!there.has(id)) found.push(`${name} offers ${id}, which it does not hold`);
    const place = await copy.place();
    // Where its place is still true, the server has all that it offers no more.
    if (place === null || !server.proves(place)) continue;
    for (const id of there) if (!waiting.has(id) && !server.has(id)) found.push(`${name} thinks ${id} safe, and it is not there`);
  }
  return found;
}

/** The line is good again, and each device exchanges until nothing waits, in one order or the other. */
async function ended(world: World): Promise<readonly string[]> {
  const { devices, line, luck, server, written } = world;
  line.heal();
  while (line.waiting() > 0) {
    line.deliver();
    await settled();
  }
  const order = luck.happens(0.5) ? devices : devices.toReversed();
  const found: string[] = [];
  for (const round of [1, 2]) {
    for (const { name, copy } of order) {
      const done = await syncOnce(copy, server.remote);
      if (done.stopped !== null || done.pending > 0) found.push(`round ${round}: ${name} still has ${done.pending} waiting`);
    }
  }
  const all = [...written.keys()].sort();
  if (server.ids().toSorted().join() !== all.join()) found.push('the server does not hold all that was written');
  const told = new Set<string>();
  for (const { name, copy } of devices) {
    const rows = (await readAll(copy, 1000)).map(({ entry }) => entry);
    if (
      rows
        .map(({ id }) => id)
        .sort()
        .join() !== all.join()
    )
      found.push(`${name} does not hold all that was written`);
    told.add(foldedText(rows));
  }
  if (told.size > 1) found.push('devices with the same entries tell different things');
  return found;
}

function foldedText(entries: readonly Entry[]): string {
  const { draft, struck, conflicts, faults } = foldJournal(entries, jarKinds, emptyJars);
  return JSON.stringify([
    [...draft.grams],
    draft.told,
    [...struck].sort(),
    conflicts.map(({ target }) => target).sort(),
    faults.length,
  ]);
}

/** All that was set in motion has come to rest. */
function settled(): Promise<void> {
  return new Promise((resolve) => setImmediate(resolve));
}
