/**
 * Whether a hive is opened today: when the chance is large enough that something waits inside which an opening
 * would change, queen cells old enough to be seen, stores that are gone in some days, no eggs for three weeks.
 * Never two openings in a row, never none for long, and not in the days of a virgin if it can wait. Which bars
 * are opened, and in what order hives are taken, is not decided here.
 */
import { type FigureBook, value } from '../../figures/book.ts';
import type { Cloud } from '../../numbers/particle-filter.ts';
import { stateIndex } from '../queen-chain/states.ts';
import type { EngineConstants } from './constants.ts';
import { adultsOfParticle, broodAt, broodDays, cohorts, part, particleSize } from './particle.ts';

export interface ChoiceConstants {
  /** Chance of a reason from which it is opened. */
  readonly chance: number;
  /** Days after the last opening: not before, and always by. */
  readonly soonest: number;
  readonly latest: number;
  /** Days since the first egg in a queen cell from which it is a reason. */
  readonly cellDays: number;
  readonly storesDays: number;
  /** No eggs wait longer: from that chance, and that many days after the last opening. */
  readonly broodlessChance: number;
  readonly broodlessDays: number;
  /** Chance of a virgin, or of a queen just given, from which a look does harm. */
  readonly harm: number;
}

/** Chances, 0 … 1: of each reason, of at least one, and that a look does harm. */
export interface ReasonsToOpen {
  readonly cells: number;
  readonly stores: number;
  readonly eggs: number;
  readonly any: number;
  /** Cells or stores, which a few days make worse. */
  readonly urgent: number;
  readonly harm: number;
}

/** `daysSince`: whole days since the last opening, null when there was none. */
export function opensToday(choice: ChoiceConstants, daysSince: number | null, reasons: ReasonsToOpen): boolean {
  if (daysSince === null || daysSince >= choice.latest) return true;
  if (daysSince < choice.soonest) return false;
  if (reasons.harm >= choice.harm) return reasons.stores > choice.chance;
  const noEggs = daysSince >= choice.broodlessDays && reasons.eggs >= choice.broodlessChance;
  return reasons.urgent > choice.chance || noEggs;
}

/** The reasons on the cloud's day. */
export function reasonsToOpen(c: EngineConstants, cloud: Cloud, choice: ChoiceConstants): ReasonsToOpen {
  const sums = { cells: 0, stores: 0, eggs: 0, any: 0, urgent: 0, harm: 0 };
  for (let particle = 0; particle < cloud.count; particle += 1) {
    const at = particle * particleSize;
    const share = Math.exp(cloud.logShares[particle]!);
    const cells = hasCells(choice, cloud.values, at);
    const stores = storesGo(c, choice, cloud.values, at);
    const eggs = hasNoBrood(cloud.values, at);
    if (cells) sums.cells += share;
    if (stores) sums.stores += share;
    if (eggs) sums.eggs += share;
    if (cells || stores) sums.urgent += share;
    if (cells || stores || eggs) sums.any += share;
    if (harmedByLook(cloud.values, at)) sums.harm += share;
  }
  return sums;
}

/**
 * Swarm cells while the queen is still there: then the colony can be divided in time. Cells of a supersedure, or
 * after a loss, are let be: a look at them changes nothing.
 */
function hasCells(choice: ChoiceConstants, values: Float64Array, at: number): boolean {
  const state = values[at + part.queen]!;
  return (
    (state === stateIndex['swarm cells open'] && values[at + part.queenDays]! >= choice.cellDays) ||
    state === stateIndex['swarm cells sealed']
  );
}

/** Eaten up in some days, should nothing come in: a flow ends on a day that nobody knows. */
function storesGo(c: EngineConstants, choice: ChoiceConstants, values: Float64Array, at: number): boolean {
  const s = c.stores;
  const eaten = adultsOfParticle(values, at) * s.eatKg + values[at + broodAt + c.sealAge]! * s.rearKg;
  return values[at + part.honeyKg]! - choice.storesDays * eaten < s.hungryKg;
}

/** The last egg is older than the time from egg to bee. */
function hasNoBrood(values: Float64Array, at: number): boolean {
  return cohorts(values, at + broodAt, 0, broodDays) < 1;
}

function harmedByLook(values: Float64Array, at: number): boolean {
  const state = values[at + part.queen]!;
  return state === stateIndex.virgin || state === stateIndex['mother and virgin'] || state === stateIndex.introduced;
}

export function choiceConstants(book: FigureBook): ChoiceConstants {
  return {
    chance: value(book, 'engine-open-chance'),
    soonest: value(book, 'engine-open-soonest'),
    latest: value(book, 'engine-open-latest'),
    cellDays: value(book, 'engine-open-cell-days'),
    storesDays: value(book, 'engine-open-stores-days'),
    broodlessChance: value(book, 'engine-open-broodless-chance'),
    broodlessDays: value(book, 'engine-open-broodless-days'),
    harm: value(book, 'queen-state-harm-chance'),
  };
}
