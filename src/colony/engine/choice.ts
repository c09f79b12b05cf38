/**
 * Whether a hive is opened today. For swarm cells: when it is likely enough that some hang inside which a look would
 * find; within some days after a look only for sealed ones, because what was too young to be seen then is not sealed
 * sooner. For food: when what was seen last, less what the bees may have eaten since, would be gone in some
 * days. Also when there are no eggs for three weeks; never for long; not in the days of a virgin if it can wait.
 * Which bars are opened, and in what order hives are taken, is not decided here.
 */
import { type FigureBook, value } from '../../figures/book.ts';
import type { Cloud } from '../../numbers/particle-filter.ts';
import { stateIndex } from '../queen-chain/states.ts';
import type { OpenFor } from '../foreseen.ts';
import type { EngineConstants } from './constants.ts';
import { adultsOfParticle, broodAt, broodDays, cohorts, part, particleSize } from './particle.ts';

export interface ChoiceConstants {
  /** Chance of cells from which a colony is opened of whose looks nothing is known. */
  readonly chance: number;
  /** Each look in vain asks for so much more of it; looks and cut cells count for so many days. */
  readonly vainShare: number;
  /** Cells that were cut ask for less of it: divided by one and this for each time. */
  readonly cutShare: number;
  readonly looksDays: number;
  /** Days after the last opening: not before, and always by. */
  readonly soonest: number;
  readonly latest: number;
  /** Days for which a look is good: until then sealed cells alone count. */
  readonly clearDays: number;
  /** Days since the first egg in a queen cell from which it can be found. */
  readonly cellDays: number;
  /** Days in which food may be gone; what a grown bee may eat; the chance from which it is opened for that. */
  readonly storesDays: number;
  readonly eatKg: number;
  readonly storesChance: number;
  /** Days after the last opening before which it is not opened for that. */
  readonly storesSoonest: number;
  /** No eggs wait longer: from that chance, and that many days after the last opening. */
  readonly broodlessChance: number;
  readonly broodlessDays: number;
  /** Chance of a virgin, or of a queen just given, from which a look does harm. */
  readonly harm: number;
}

/** Openings so far. */
export interface LooksBefore {
  /** Day numbers, ascending. */
  readonly days: readonly number[];
  /** Honey as it was read at the last of them; null where none was. */
  readonly honeyKg: number | null;
}

/** Chances, 0 … 1: of each reason, of at least one, and that a look does harm. */
export interface ReasonsToOpen {
  readonly cells: number;
  /** Of these the sealed ones: the swarm leaves within days. */
  readonly sealed: number;
  readonly stores: number;
  readonly eggs: number;
  readonly any: number;
  readonly harm: number;
  /** Chance of cells from which this colony is opened today. */
  readonly cellsFrom: number;
}

/** `daysSince`: whole days since the last opening, null when there was none. */
export function opensToday(choice: ChoiceConstants, daysSince: number | null, reasons: ReasonsToOpen): boolean {
  return opensFor(choice, daysSince, reasons) !== null;
}

/** Why it is opened today, null when it is not; 'long' where nothing is likely but nobody looked for long. */
export function opensFor(choice: ChoiceConstants, daysSince: number | null, reasons: ReasonsToOpen): OpenFor | null {
  if (daysSince !== null && daysSince < choice.soonest) return null;
  const since = daysSince ?? Infinity;
  if (since >= choice.storesSoonest && reasons.stores >= choice.storesChance) return 'stores';
  const harms = reasons.harm >= choice.harm;
  const cells = since < choice.clearDays ? reasons.sealed : reasons.cells;
  if (!harms && cells > reasons.cellsFrom) return 'cells';
  if (!harms && since >= choice.broodlessDays && reasons.eggs >= choice.broodlessChance) return 'eggs';
  return since >= choice.latest ? 'long' : null;
}

/** The reasons on the cloud's day. */
export function reasonsToOpen(c: EngineConstants, cloud: Cloud, choice: ChoiceConstants, looks: LooksBefore): ReasonsToOpen {
  const sums = { cells: 0, sealed: 0, stores: 0, eggs: 0, any: 0, harm: 0 };
  const seen = seenStores(c, cloud.day, looks);
  for (let particle = 0; particle < cloud.count; particle += 1) {
    const at = particle * particleSize;
    const share = Math.exp(cloud.logShares[particle]!);
    const cells = hasCells(choice, cloud.values, at);
    const stores = storesGo(c, choice, seen, cloud.values, at);
    const eggs = hasNoBrood(cloud.values, at);
    if (cells) sums.cells += share;
    if (hasSealedCells(cloud.values, at)) sums.sealed += share;
    if (stores) sums.stores += share;
    if (eggs) sums.eggs += share;
    if (cells || stores || eggs) sums.any += share;
    if (harmedByLook(cloud.values, at)) sums.harm += share;
  }
  return { ...sums, cellsFrom: cellsFrom(c, choice, cloud.day, looks) };
}

/**
 * What cells a colony had this season tells more of it than the model knows: after looks in vain more chance is asked
 * for, after cells were cut less.
 */
function cellsFrom(c: EngineConstants, choice: ChoiceConstants, day: number, looks: LooksBefore): number {
  const cuts = new Set<number>();
  for (const [on, told] of c.ground.told) if (on <= day && told.some(({ kind }) => kind === 'cells cut')) cuts.add(on);
  const counts = (on: number): boolean => day - on <= choice.looksDays;
  const vain = looks.days.filter((on) => counts(on) && !cuts.has(on)).length;
  return (choice.chance * (1 + choice.vainShare * vain)) / (1 + choice.cutShare * [...cuts].filter(counts).length);
}

/**
 * Swarm cells while the queen is still there: then the colony can be divided in time. Cells of a supersedure, or
 * after a loss, are let be: a look at them changes nothing.
 */
function hasCells(choice: ChoiceConstants, values: Float64Array, at: number): boolean {
  const state = values[at + part.queen]!;
  const open = state === stateIndex['swarm cells open'] && values[at + part.queenDays]! >= choice.cellDays;
  return open || hasSealedCells(values, at);
}

function hasSealedCells(values: Float64Array, at: number): boolean {
  return values[at + part.queen] === stateIndex['swarm cells sealed'];
}

/** Honey as it was read last and what was fed since; then the days since. */
interface SeenStores {
  readonly kg: number;
  readonly days: number;
}

function seenStores(c: EngineConstants, day: number, { days, honeyKg }: LooksBefore): SeenStores | null {
  const last = days.at(-1);
  if (last === undefined || honeyKg === null) return null;
  let kg = honeyKg;
  for (const [on, told] of c.ground.told) {
    if (on < last || on > day) continue;
    for (const what of told) if (what.kind === 'fed') kg += what.kg;
  }
  return { kg, days: day - last };
}

/**
 * Eaten up in some days, should nothing have come in since the last look and nothing come in: a flow ends on a day
 * that nobody knows. Bees eat by a careful reckoning; where the model has less honey than that, the model is taken.
 */
function storesGo(
  c: EngineConstants,
  choice: ChoiceConstants,
  seen: SeenStores | null,
  values: Float64Array,
  at: number,
): boolean {
  const s = c.stores;
  const eaten = adultsOfParticle(values, at) * choice.eatKg + values[at + broodAt + c.sealAge]! * s.rearKg;
  const model = values[at + part.honeyKg]!;
  const kg = seen === null ? model : Math.min(model, seen.kg - seen.days * eaten);
  return kg - choice.storesDays * eaten < s.hungryKg;
}

/** The last egg is older than the time from egg to bee. */
function hasNoBrood(values: Float64Array, at: number): boolean {
  return cohorts(values, at + broodAt, 0, broodDays) < 1;
}

function harmedByLook(values: Float64Array, at: number): boolean {
  const state = values[at + part.queen]!;
  return state === stateIndex.virgin || state === stateIndex['mother and virgin'] || state === stateIndex.introduced;
}

const mgInKg = 1e6;

export function choiceConstants(book: FigureBook): ChoiceConstants {
  return {
    chance: value(book, 'engine-open-chance'),
    vainShare: value(book, 'engine-open-vain-share'),
    cutShare: value(book, 'engine-open-cut-share'),
    looksDays: value(book, 'engine-open-looks-days'),
    soonest: value(book, 'engine-open-soonest'),
    latest: value(book, 'engine-open-latest'),
    clearDays: value(book, 'engine-open-clear-days'),
    cellDays: value(book, 'engine-open-cell-days'),
    storesDays: value(book, 'engine-open-stores-days'),
    eatKg: value(book, 'engine-open-bee-eats') / mgInKg,
    storesChance: value(book, 'engine-open-stores-chance'),
    storesSoonest: value(book, 'engine-open-stores-soonest'),
    broodlessChance: value(book, 'engine-open-broodless-chance'),
    broodlessDays: value(book, 'engine-open-broodless-days'),
    harm: value(book, 'queen-state-harm-chance'),
  };
}
