/**
 * The ways from one state of the queen to the next with their daily chances, all from the figures: swarming,
 * supersedure, sudden loss, failing, mating and what comes of a colony that is left alone. What a keeper does is
 * not here: see `acts.ts`.
 */
import { type FigureBook, rangeOf, value } from '../../figures/book.ts';
import type { Range } from '../../numbers/range.ts';
import { hazardsOf, lastingBetween, lastingExactly, lastingSkewed, sharedHazards } from './durations.ts';
import type { ChainStateName } from './states.ts';

/** What multiplies a way's chance on a day; 1 for all is a crowded colony at the height of the season. */
export const scales = ['none', 'swarm urge', 'season', 'loss'] as const;
export type Scale = (typeof scales)[number];

/** What is seen from outside when a way is taken. */
export const chainEvents = [
  'none',
  'swarm leaves',
  'after-swarm leaves',
  'queen lost',
  'cells begun',
  'virgin emerges',
  'eggs begin',
] as const;
export type ChainEvent = (typeof chainEvents)[number];

export interface Way {
  readonly from: ChainStateName;
  readonly to: ChainStateName;
  /** By whole days in the state; the last entry holds on. */
  readonly hazardByDaysIn: Float64Array;
  readonly scaledBy: Scale;
  readonly event: ChainEvent;
  /** Seldom taken: a particle cloud proposes it more often and weighs it down. */
  readonly rare: boolean;
}

export function waysOf(book: FigureBook): readonly Way[] {
  return [...layingWays(book), ...swarmWays(book), ...supersedureWays(book), ...lossWays(book), ...matingWays(book)];
}

type Rest = Partial<Pick<Way, 'scaledBy' | 'event' | 'rare'>>;

function way(from: ChainStateName, to: ChainStateName, hazard: number | Float64Array, rest: Rest = {}): Way {
  const hazardByDaysIn = typeof hazard === 'number' ? Float64Array.of(hazard) : hazard;
  return { from, to, hazardByDaysIn, scaledBy: 'none', event: 'none', rare: false, ...rest };
}

const lost: Rest = { scaledBy: 'loss', event: 'queen lost', rare: true };
const inSeason: Rest = { scaledBy: 'season', rare: true };
const begun: Rest = { event: 'cells begun' };

function layingWays(book: FigureBook): readonly Way[] {
  const urge: Rest = { ...begun, scaledBy: 'swarm urge', rare: true };
  const replaced = value(book, 'queen-chain-failing-replaced');
  const failingLost = value(book, 'queen-chain-failing-lost');
  const sealed = hazardsOf(lastingExactly(value(book, 'worker-total-days')));
  return [
    way('laying', 'swarm cells open', value(book, 'queen-chain-swarm-urge'), urge),
    way('laying', 'supersedure cells open', value(book, 'queen-chain-supersedure'), { ...inSeason, ...begun }),
    way('laying', 'failing', value(book, 'queen-chain-fails'), inSeason),
    way('laying', 'orphaned', value(book, 'queen-chain-loss'), lost),
    // Her own first daughters emerge: she is a laying queen like any other.
    way('new queen laying', 'laying', sealed),
    way('new queen laying', 'orphaned', value(book, 'queen-chain-loss'), lost),
    way('failing', 'supersedure cells open', replaced, { ...begun, scaledBy: 'season' }),
    way('failing', 'drone layer', value(book, 'queen-chain-failing-sperm'), { rare: true }),
    way('failing', 'orphaned', failingLost, lost),
    way('drone layer', 'none', failingLost, lost),
  ];
}

/** First egg in a queen cell to its sealing, and on to the virgin. */
function cellDays(book: FigureBook): { readonly open: Float64Array; readonly sealed: Float64Array } {
  return {
    open: hazardsOf(lastingBetween(rangeOf(book, 'queen-sealing-age'))),
    sealed: hazardsOf(lastingBetween(rangeOf(book, 'virgin-emerges-after-sealing'))),
  };
}

function swarmWays(book: FigureBook): readonly Way[] {
  const givenUp = value(book, 'queen-chain-swarm-given-up');
  const leaves = value(book, 'queen-chain-swarm-leaves');
  // The swarm left some days after the first cell was sealed: so much sooner is the virgin out.
  const waited = shifted(rangeOf(book, 'virgin-emerges-after-sealing'), -1 / leaves);
  const fail = value(book, 'queen-chain-cells-fail');
  const again = value(book, 'queen-chain-after-swarm-share');
  const lasting = lastingBetween(waited);
  const [virgin, after, none] = sharedHazards([
    { chance: (1 - fail) * (1 - again), lasting },
    { chance: (1 - fail) * again, lasting },
    { chance: fail, lasting },
  ]);
  return [
    way('swarm cells open', 'swarm cells sealed', cellDays(book).open),
    way('swarm cells open', 'laying', givenUp),
    way('swarm cells sealed', 'swarmed', leaves, { event: 'swarm leaves' }),
    way('swarm cells sealed', 'laying', givenUp),
    way('swarmed', 'virgin', virgin!, { event: 'virgin emerges' }),
    way('swarmed', 'virgin', after!, { event: 'after-swarm leaves' }),
    way('swarmed', 'none', none!, { rare: true }),
  ];
}

function supersedureWays(book: FigureBook): readonly Way[] {
  const stays = value(book, 'queen-chain-mother-stays');
  const lasting = lastingBetween(rangeOf(book, 'virgin-emerges-after-sealing'));
  const [beside, alone] = sharedHazards([
    { chance: stays, lasting },
    { chance: 1 - stays, lasting },
  ]);
  return [
    way('supersedure cells open', 'supersedure cells sealed', cellDays(book).open),
    way('supersedure cells sealed', 'mother and virgin', beside!, { event: 'virgin emerges' }),
    way('supersedure cells sealed', 'virgin', alone!, { event: 'virgin emerges' }),
  ];
}

function lossWays(book: FigureBook): readonly Way[] {
  const share = value(book, 'queen-chain-emergency-share');
  const rescue = Math.round(value(book, 'rescue-window'));
  const [cells, hopeless] = sharedHazards([
    // Cells are begun within two days; what has not begun by the end of the window has nothing left to begin with.
    { chance: share, lasting: [1 / 2, 1 / 2] },
    { chance: 1 - share, lasting: lastingExactly(rescue) },
  ]);
  const emerges = rangeOf(book, 'emergency-queen-emerges');
  const fail = value(book, 'queen-chain-cells-fail');
  const sealedDays = rangeOf(book, 'virgin-emerges-after-sealing');
  const [virgin, none] = sharedHazards([
    { chance: 1 - fail, lasting: lastingBetween(sealedDays) },
    { chance: fail, lasting: lastingBetween(sealedDays) },
  ]);
  // Loss to virgin, less the sealed days and the day or two before cells are begun.
  const open = shifted(emerges, -sealedDays.likely - startWait);
  return [
    way('orphaned', 'emergency cells open', cells!, begun),
    way('orphaned', 'none', hopeless!),
    way('emergency cells open', 'emergency cells sealed', hazardsOf(lastingBetween(open))),
    way('emergency cells sealed', 'virgin', virgin!, { event: 'virgin emerges' }),
    way('emergency cells sealed', 'none', none!, { rare: true }),
    way('none', 'laying workers', hazardsOf(lastingBetween(shifted(rangeOf(book, 'laying-workers-onset'), -rescue)))),
  ];
}

/** Mean days from the loss to the first emergency cell, as in `lossWays`. */
const startWait = (1 + 2) / 2;

function matingWays(book: FigureBook): readonly Way[] {
  const [lays, away, never] = sharedHazards(flights(book));
  const accepted = value(book, 'queen-chain-introduced-accepted');
  const caged = lastingBetween(rangeOf(book, 'introduced-laying-days'));
  const [accepts, refuses] = sharedHazards([
    { chance: accepted, lasting: caged },
    { chance: 1 - accepted, lasting: caged },
  ]);
  return [
    way('virgin', 'new queen laying', lays!, { event: 'eggs begin' }),
    way('virgin', 'none', away!, { event: 'queen lost' }),
    way('virgin', 'drone layer', never!),
    way('mother and virgin', 'new queen laying', lays!, { event: 'eggs begin' }),
    way('mother and virgin', 'failing', added(away!, never!)),
    way('introduced', 'new queen laying', accepts!, { event: 'eggs begin' }),
    way('introduced', 'orphaned', refuses!, { event: 'queen lost' }),
    // Nobody notes when she is let out; a cycle of brood is what she is mostly held for.
    way('caged', 'laying', 1 / value(book, 'worker-total-days'), { event: 'eggs begin' }),
  ];
}

/** What comes of a virgin, by days since she emerged: she lays, is lost, or mates too late. */
function flights(book: FigureBook) {
  const firstEggs = rangeOf(book, 'queen-first-egg-age');
  const ready = rangeOf(book, 'queen-mate-ready-age');
  const gone = value(book, 'queen-chain-virgin-lost');
  const never = value(book, 'queen-chain-never-mates');
  return [
    { chance: 1 - gone - never, lasting: lastingSkewed(firstEggs, value(book, 'queen-chain-first-egg-log-spread')) },
    { chance: gone, lasting: lastingBetween({ low: ready.low, likely: ready.high, high: firstEggs.high }) },
    { chance: never, lasting: lastingBetween(rangeOf(book, 'queen-mating-deadline')) },
  ];
}

function shifted({ low, likely, high }: Range, by: number): Range {
  return { low: low + by, likely: likely + by, high: high + by };
}

function added(a: Float64Array, b: Float64Array): Float64Array {
  return Float64Array.from({ length: Math.max(a.length, b.length) }, (_, day) => (a[day] ?? 0) + (b[day] ?? 0));
}
