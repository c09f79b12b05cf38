/**
 * The challenger: a forecast that knows no bees, against which the model of the colony must earn its keep.
 * The logarithm of a count is a level of the colony's own, plus an Ornstein–Uhlenbeck wander about it, plus noise
 * of counting; all normal, so R. E. Kalman's filter (1960) is exact. Seven numbers for each thing counted.
 */
import { type FigureBook, value } from '../../figures/book.ts';

export interface ChallengerNumbers {
  /** Logarithm of the level of an average colony, and how colonies differ. */
  readonly level: number;
  readonly levelSpread: number;
  /** Days in which all but 1/e of a gap to the level closes. */
  readonly returnDays: number;
  /** Spread of the wander in the long run. */
  readonly wander: number;
  /** Where a split begins, above the level, and how splits differ. */
  readonly start: number;
  readonly startSpread: number;
  readonly noise: number;
}

/** Means and covariances of level and wander on a day. */
export interface ChallengerState {
  readonly day: number;
  readonly level: number;
  readonly wander: number;
  readonly levelLevel: number;
  readonly levelWander: number;
  readonly wanderWander: number;
}

export interface NormalForecast {
  readonly mean: number;
  readonly sd: number;
}

export function challengerNumbers(book: FigureBook, what: 'adults' | 'capped'): ChallengerNumbers {
  return {
    level: Math.log(value(book, `challenger-${what}-level`)),
    levelSpread: value(book, `challenger-${what}-level-spread`),
    returnDays: value(book, `challenger-${what}-return`),
    wander: value(book, `challenger-${what}-wander`),
    start: value(book, `challenger-${what}-start`),
    startSpread: value(book, `challenger-${what}-start-spread`),
    noise: value(book, `challenger-${what}-noise`),
  };
}

export function challengerBegins(numbers: ChallengerNumbers, day: number, isSplit: boolean): ChallengerState {
  return {
    day,
    level: numbers.level,
    wander: isSplit ? numbers.start : 0,
    levelLevel: numbers.levelSpread ** 2,
    levelWander: 0,
    wanderWander: (isSplit ? numbers.startSpread : numbers.wander) ** 2,
  };
}

export function challengerOn(numbers: ChallengerNumbers, state: ChallengerState, day: number): ChallengerState {
  const kept = Math.exp(-(day - state.day) / numbers.returnDays);
  return {
    ...state,
    day,
    wander: kept * state.wander,
    levelWander: kept * state.levelWander,
    wanderWander: kept ** 2 * state.wanderWander + (1 - kept ** 2) * numbers.wander ** 2,
  };
}

/** The logarithm of a count on the state's day, were somebody to count. */
export function challengerForesees(numbers: ChallengerNumbers, state: ChallengerState): NormalForecast {
  const variance = state.levelLevel + 2 * state.levelWander + state.wanderWander + numbers.noise ** 2;
  return { mean: state.level + state.wander, sd: Math.sqrt(variance) };
}

/** Corrects the state by the logarithm of a count on its day. */
export function challengerSees(numbers: ChallengerNumbers, state: ChallengerState, logCount: number): ChallengerState {
  const { mean, sd } = challengerForesees(numbers, state);
  const levelBoth = state.levelLevel + state.levelWander;
  const wanderBoth = state.levelWander + state.wanderWander;
  const gap = (logCount - mean) / sd ** 2;
  return {
    ...state,
    level: state.level + levelBoth * gap,
    wander: state.wander + wanderBoth * gap,
    levelLevel: state.levelLevel - levelBoth ** 2 / sd ** 2,
    levelWander: state.levelWander - (levelBoth * wanderBoth) / sd ** 2,
    wanderWander: state.wanderWander - wanderBoth ** 2 / sd ** 2,
  };
}
