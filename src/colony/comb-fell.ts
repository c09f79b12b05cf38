/** What may be said of a comb that fell. */

/** What hung on it, mostly. */
export const fallenCombs = ['brood', 'honey', 'empty comb'] as const;
export type FallenComb = (typeof fallenCombs)[number];

export const doneWithFallen = ['hung up again', 'taken out', 'left inside'] as const;
export type DoneWithFallen = (typeof doneWithFallen)[number];
