/** All that can befall a colony unnoticed, in one array; the order decides only between explanations that are equally likely. */
import type { CauseRule } from './cause.ts';
import { broodDying } from './cause-brood-dying.ts';
import { combsMoved } from './cause-combs-moved.ts';
import { flowEnded } from './cause-flow-ended.ts';
import { flowStarted } from './cause-flow-started.ts';
import { otherHand } from './cause-other-hand.ts';
import { queenLost } from './cause-queen-lost.ts';
import { robbed } from './cause-robbed.ts';
import { superseded } from './cause-superseded.ts';
import { swarmed } from './cause-swarmed.ts';

export const causeRules: readonly CauseRule[] = [
  swarmed,
  queenLost,
  superseded,
  robbed,
  flowStarted,
  flowEnded,
  otherHand,
  combsMoved,
  broodDying,
];
