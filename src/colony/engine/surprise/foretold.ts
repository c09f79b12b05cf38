/**
 * What was foreseen of each thing that was looked at, before it was seen, and how far off it turned out: counts by
 * the logarithm, in standard deviations of what might have been counted; eggs, stages and cells by the chance of
 * what was seen or rarer, put as standard deviations.
 */
import { normalQuantile } from '../../../numbers/normal.ts';
import { type Cloud, foresee, meanOf } from '../../../numbers/particle-filter.ts';
import type { Range } from '../../../numbers/range.ts';
import { newStream, setStream } from '../../../numbers/streams.ts';
import type { Surprise } from '../../foreseen.ts';
import { cellKinds } from '../../queen-chain/cells-there.ts';
import { type Stage, stages } from '../../queen-chain/seen.ts';
import { drawnForesight, quantile } from '../foresight.ts';
import { particleSize } from '../particle.ts';
import type { EngineSetup, Seen } from '../run.ts';
import type { SeenKind } from '../seen/list.ts';
import { broodLooked, drawnCells } from '../seen/looks.ts';
import { tails } from '../tell/told-range.ts';

export interface Foretold extends Pick<Surprise, 'what' | 'expected' | 'seen' | 'z'> {
  readonly kind: SeenKind;
}

/** `cloud` stands on the visit's day and has not seen it. Kinds of which a surprise says nothing are left out. */
export function foretoldOf(setup: EngineSetup, cloud: Cloud, seen: Seen, seed: number): readonly Foretold[] {
  const counts = counted.flatMap(([kind, what]) => countForetold(setup, cloud, seen, kind, what, seed) ?? []);
  return [...counts, ...broodForetold(setup, cloud, seen), ...cellsForetold(setup, cloud, seen, seed)];
}

type CountName = 'bees' | 'bars' | 'sealed' | 'open' | 'honeyKg' | 'built';

const counted: readonly (readonly [CountName, Surprise['what']])[] = [
  ['bees', 'bees'],
  ['bars', 'bees'],
  ['sealed', 'sealed'],
  ['open', 'open brood'],
  ['honeyKg', 'honey'],
  ['built', 'comb'],
];
const drawsEach = 2;
/** Share outside the range told, at each end. */
const tail = tails.wide;
/** A chance is not told as smaller than this. */
const leastChance = 1e-6;

function countForetold(
  setup: EngineSetup,
  cloud: Cloud,
  seen: Seen,
  kind: CountName,
  what: Surprise['what'],
  seed: number,
): Foretold | null {
  const like = seen[kind];
  if (like === undefined) return null;
  const { counts } = setup.constants;
  const least = kind === 'built' ? 1 : counts.least[kind];
  const noise = kind === 'built' ? counts.builtNoise : counts.noise[kind];
  const count = 'count' in like ? like.count : like.cells;
  const { values, shares } = foresee(setup, cloud, kind, drawsEach, seed, like);
  const drawn = values.map((one) => Math.max(least, one));
  const mean = drawn.reduce((sum, one, i) => sum + shares[i]! * Math.log(one), 0);
  const variance = drawn.reduce((sum, one, i) => sum + shares[i]! * (Math.log(one) - mean) ** 2, 0);
  const z = (Math.log(Math.max(least, count)) - mean) / Math.sqrt(Math.max(variance, noise ** 2));
  const foresight = drawnForesight(drawn, shares);
  const expected: Range = {
    low: Math.exp(quantile(foresight, tail)),
    likely: Math.exp(quantile(foresight, 1 / 2)),
    high: Math.exp(quantile(foresight, 1 - tail)),
  };
  // A full box says "at least": fewer than foreseen it does not say.
  return { kind, what, expected, seen: count, z: like.atLeast === true ? Math.max(0, z) : z };
}

/** Eggs seen or not; where the youngest stage is the odder of the two, that. */
function broodForetold(setup: EngineSetup, cloud: Cloud, seen: Seen): readonly Foretold[] {
  const look = seen.brood;
  if (look === undefined) return [];
  const chance = (eggs: 'seen' | 'none seen' | 'not looked', youngest: Stage | null): number =>
    meanOf(cloud, particleSize, (values, at) =>
      Math.exp(broodLooked.density(setup.constants, values, at, { ...look, eggs, youngest })),
    );
  const eggs = look.eggs === 'not looked' ? null : rare(chance(look.eggs, null), look.eggs === 'seen');
  const place = look.youngest === null ? -1 : stages.indexOf(look.youngest);
  const asOld = stages.slice(place).reduce((sum, stage) => sum + chance('not looked', stage), 0);
  const youngest = place <= 0 ? null : rare(asOld, false);
  const told = (what: 'eggs' | 'youngest', found: Rare): Foretold => ({ kind: 'brood', what, expected: null, ...found });
  if (youngest !== null && Math.abs(youngest.z) > Math.abs(eggs?.z ?? 0)) return [told('youngest', youngest)];
  return eggs === null ? [] : [told('eggs', eggs)];
}

/** Queen cells of the kinds that were looked for, together: so many or more, or so few or fewer. */
function cellsForetold({ constants }: EngineSetup, cloud: Cloud, seen: Seen, seed: number): readonly Foretold[] {
  const look = seen.cells;
  if (look === undefined) return [];
  const counts = cellKinds.map((kind) => look.cells[kind]);
  const found = counts.reduce<number>((sum, count) => sum + (count ?? 0), 0);
  const stream = newStream(seed, purpose, 0, cloud.day);
  let [more, fewer] = [0, 0];
  for (let particle = 0; particle < cloud.count; particle += 1) {
    setStream(stream, seed, purpose, particle, cloud.day);
    const drawn = drawnCells(constants, cloud.values, particle * particleSize, look.share, stream);
    const all = drawn.reduce((sum, count, kind) => sum + (counts[kind] === null ? 0 : count), 0);
    const share = Math.exp(cloud.logShares[particle]!);
    if (all >= found) more += share;
    if (all <= found) fewer += share;
  }
  return [{ kind: 'cells', what: 'cells', expected: null, ...(more < fewer ? rare(more, true) : rare(fewer, false)) }];
}

/** A stream of chance beside those of the filter and of the causes. */
const purpose = 15;

interface Rare {
  readonly seen: number;
  readonly z: number;
}

/** What is as likely as not surprises nobody. */
function rare(chance: number, more: boolean): Rare {
  const size = chance >= 1 / 2 ? 0 : -normalQuantile(Math.max(leastChance, chance));
  return { seen: chance, z: more ? size : -size };
}
