/** The keeper's figures: the printed ones with their own on top, as the sums and the handbook need them. Loaded with those screens only. */
import { type FigureBook, type FigureKey, figures } from '../../../apiary/handbook.ts';
import type { Aside } from './shown.ts';

export function bookOf(overrides: Aside['overrides']): FigureBook {
  const known = new Set<string>(figures.map((figure) => figure.key));
  return {
    overrides: new Map(
      overrides
        .filter((one) => known.has(one.key))
        .map((one) => {
          const key = one.key as FigureKey;
          return [key, { ...one, key }] as const;
        }),
    ),
  };
}
