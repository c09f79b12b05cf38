/**
 * What a swarm that was seen and the acts of a keeper do to what is believed: mass moves from state to state, and
 * states in which the act makes no sense count for little. A swarm that was noted is taken as one of this colony.
 */
import { assert } from '../../numbers/assert.ts';
import { type FigureBook, value } from '../../figures/book.ts';
import { arrivesAt, type QueenChain } from './chain.ts';
import { type Belief, cellOf, eachCell, emptyBelief } from './filter.ts';
import { type ChainStateName, chainStates, stateIndex } from './states.ts';

export const acts = ['swarmed', 'removed', 'caged', 'introduced', 'cells-cut'] as const;
export type Act = (typeof acts)[number];

/** Where a state goes by an act, with which weight; several targets share the mass. Days in the state start anew unless kept. */
interface Move {
  readonly to: ChainStateName;
  readonly weight: number;
  readonly keepsDays?: boolean;
}

export function afterAct(chain: QueenChain, belief: Belief, act: Act, book: FigureBook): Belief {
  const next = emptyBelief(chain);
  let sum = 0;
  eachCell(chain, belief, (state, daysIn, since, chance) => {
    for (const { to, weight, keepsDays = false } of movesOf(state, act, book)) {
      const target = arrivesAt(chain, stateIndex[to], since);
      const days = keepsDays ? Math.min(daysIn, chain.memory[target]! - 1) : 0;
      next.chances[cellOf(next, target, days, since)]! += chance * weight;
      sum += chance * weight;
    }
  });
  assert(sum > 0, 'an act leaves some state possible');
  for (let cell = 0; cell < next.chances.length; cell += 1) next.chances[cell]! /= sum;
  return next;
}

function movesOf(state: number, act: Act, book: FigureBook): readonly Move[] {
  const { name, queenHere } = chainStates[state]!;
  const slip = value(book, 'queen-act-slip');
  const stays: Move = { to: name, weight: slip, keepsDays: true };
  switch (act) {
    case 'swarmed':
      return swarmMoves(name, stays, book);
    case 'removed':
      return queenHere ? [withoutQueen(name)] : [stays];
    case 'caged':
      return queenHere ? [{ to: 'caged', weight: 1 }] : [{ to: 'introduced', weight: slip }];
    case 'introduced':
      return [{ to: 'introduced', weight: 1 }];
    case 'cells-cut':
      return cutMoves(name, { ...stays, weight: 1 }, slip, book);
  }
}

/** Taken from a colony that has cells, the cells go on; otherwise it is as orphaned as by a loss. */
function withoutQueen(name: ChainStateName): Move {
  switch (name) {
    case 'swarm cells open':
    case 'supersedure cells open':
      return { to: 'emergency cells open', weight: 1, keepsDays: true };
    case 'swarm cells sealed':
    case 'supersedure cells sealed':
      return { to: 'emergency cells sealed', weight: 1, keepsDays: true };
    case 'mother and virgin':
      return { to: 'virgin', weight: 1, keepsDays: true };
    default:
      return { to: 'orphaned', weight: 1 };
  }
}

function swarmMoves(name: ChainStateName, stays: Move, book: FigureBook): readonly Move[] {
  const early = value(book, 'queen-act-swarm-early');
  switch (name) {
    case 'swarm cells sealed':
      return [{ to: 'swarmed', weight: 1 }];
    case 'swarm cells open':
      return [{ to: 'swarmed', weight: early }];
    case 'supersedure cells open':
    case 'supersedure cells sealed':
      return [{ to: 'swarmed', weight: early * early }];
    case 'laying':
    case 'new queen laying':
    case 'failing':
      // Cells that nobody knew of.
      return [{ to: 'swarmed', weight: early }];
    case 'swarmed':
    case 'emergency cells sealed':
    case 'virgin':
      // An after-swarm, on one of the few days on which it can leave.
      return [{ to: 'virgin', weight: early * value(book, 'queen-chain-after-swarm-share') }];
    default:
      return [stays];
  }
}

function cutMoves(name: ChainStateName, stays: Move, slip: number, book: FigureBook): readonly Move[] {
  const missed = value(book, 'queen-cut-missed');
  const left: Move = { ...stays, weight: missed };
  const done = 1 - missed;
  switch (name) {
    case 'swarm cells open':
    case 'swarm cells sealed':
      return [{ to: 'laying', weight: done }, left];
    case 'supersedure cells open':
    case 'supersedure cells sealed':
      return [{ to: 'failing', weight: done }, left];
    case 'emergency cells open':
    case 'emergency cells sealed':
    case 'swarmed':
      return [{ to: 'orphaned', weight: done }, left];
    default:
      // Cups and remains are cut as well; that cells were cut says that there were some.
      return [{ ...stays, weight: Math.sqrt(slip) }];
  }
}
