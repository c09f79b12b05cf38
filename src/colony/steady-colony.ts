/**
 * A colony in which as many eggs are laid every day and nothing changes: bees and brood of each stage stand still,
 * as sums on paper. Losses of brood fall where a stage ends. What the model of a colony must come to by itself.
 */
import { type FigureBook, value } from '../figures/book.ts';
import { meanLife, type Survival } from './survival.ts';

export interface SteadyColony {
  readonly eggs: number;
  readonly larvae: number;
  readonly sealed: number;
  readonly emergingPerDay: number;
  readonly adults: number;
}

export function steadyColony(eggsPerDay: number, survival: Survival, book: FigureBook): SteadyColony {
  const larvaePerDay = eggsPerDay * value(book, 'survival-egg-to-larva');
  const sealedPerDay = larvaePerDay * value(book, 'survival-larva-to-sealed');
  const emergingPerDay = sealedPerDay * value(book, 'survival-sealed-to-adult');
  const [eggDays, sealedDays] = [value(book, 'worker-egg-days'), value(book, 'worker-sealed-days')];
  return {
    eggs: eggsPerDay * eggDays,
    larvae: larvaePerDay * (value(book, 'worker-total-days') - eggDays - sealedDays),
    sealed: sealedPerDay * sealedDays,
    emergingPerDay,
    adults: emergingPerDay * meanLife(survival),
  };
}
