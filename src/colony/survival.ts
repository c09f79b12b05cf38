/**
 * How many workers live to an age, as curves with closed integrals: all for the same days, or two phases of
 * constant loss, in the house and afield. Three sets of losses are named: a kind summer, the average of field
 * studies, tagged bees. Season and winter bees are the model's.
 */
import { type FigureBook, value } from '../figures/book.ts';
import type { FigureKey } from '../figures/list.ts';

export interface Survival {
  /** Share alive at an age in days, 1 at 0. */
  readonly share: (age: number) => number;
  /** Days lived from one age to another, for each bee that emerged; `to` may be infinite. */
  readonly days: (from: number, to: number) => number;
}

export const survivalSets = ['benign', 'average', 'rfid'] as const;
export type SurvivalSet = (typeof survivalSets)[number];

/** Age of the first flights afield, loss a day before, loss a day from then on. */
export const survivalFigures = {
  benign: ['house-bee-days', 'house-bee-loss', 'forager-loss'],
  average: ['field-age-average', 'house-bee-loss', 'forager-loss-average'],
  rfid: ['field-age-average', 'house-bee-loss-tagged', 'forager-loss-tagged'],
} as const satisfies Readonly<Record<SurvivalSet, readonly FigureKey[]>>;

export function survivalOf(set: SurvivalSet, book: FigureBook): Survival {
  const [age, house, field] = survivalFigures[set];
  return twoPhases(value(book, age), value(book, house), value(book, field));
}

/** Every worker lives exactly so long. */
export function allLive(life: number): Survival {
  return {
    share: (age) => (age <= life ? 1 : 0),
    days: (from, to) => Math.max(0, Math.min(to, life) - Math.max(from, 0)),
  };
}

/** l(x) = (1 − h)^min(x, A) · (1 − f)^max(0, x − A). */
export function twoPhases(fieldAge: number, houseLoss: number, fieldLoss: number): Survival {
  const house = -Math.log1p(-houseLoss);
  const field = -Math.log1p(-fieldLoss);
  const share = (age: number): number => Math.exp(-house * Math.min(age, fieldAge) - field * Math.max(0, age - fieldAge));
  // Days lived from an age on: ∫ l = (l(x) − l(A))/h + l(A)/f in the house, l(x)/f afield.
  const rest = (age: number): number => {
    if (age >= fieldAge) return share(age) / field;
    return (share(age) - share(fieldAge)) / house + share(fieldAge) / field;
  };
  return { share, days: (from, to) => Math.max(0, rest(Math.max(0, from)) - (to === Infinity ? 0 : rest(Math.max(0, to)))) };
}

/** Mean life in days. */
export function meanLife(survival: Survival): number {
  return survival.days(0, Infinity);
}
