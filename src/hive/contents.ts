/**
 * What a cell can hold, as the eye tells it apart: nine contents. "Emerging" is never asked at the
 * hive: it is the sealed worker brood that is about to emerge, worked out from the dates.
 */
export const contents = ['honey', 'nectar', 'bread', 'empty', 'drone', 'emerging', 'sealed', 'larva', 'egg'] as const;

export type Content = (typeof contents)[number];

/** Shares of a comb (both faces together) or of a face; they sum to 1. */
export type Shares = Readonly<Record<Content, number>>;

export const bareShares: Shares = Object.freeze({
  honey: 0,
  nectar: 0,
  bread: 0,
  empty: 1,
  drone: 0,
  emerging: 0,
  sealed: 0,
  larva: 0,
  egg: 0,
});

export const broodContents = ['egg', 'larva', 'sealed', 'emerging', 'drone'] as const satisfies readonly Content[];
export const foodContents = ['honey', 'nectar', 'bread'] as const satisfies readonly Content[];

/** How a thing is known: read by a person, worked out from what was read, or a typical value. */
export type Ink = 'seen' | 'worked out' | 'guessed';
