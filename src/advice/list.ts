/** All rules, in one array; their order decides only between needs of the same weight. */
import type { Rule } from './rule.ts';
import { beeEscape } from './rule-bee-escape.ts';
import { combFell } from './rule-comb-fell.ts';
import { giveRoom } from './rule-give-room.ts';
import { layingWorkers } from './rule-laying-workers.ts';
import { leaveShut } from './rule-leave-shut.ts';
import { newSwarm } from './rule-new-swarm.ts';
import { noEggs } from './rule-no-eggs.ts';
import { poorPattern } from './rule-poor-pattern.ts';
import { queenCells } from './rule-queen-cells.ts';
import { askSign, stopSign } from './rule-signs.ts';
import { storesLow } from './rule-stores-low.ts';
import { temper } from './rule-temper.ts';
import { autumnOrder } from './rule-autumn-order.ts';
import { bareBars } from './rule-bare-bars.ts';
import { crossedComb } from './rule-crossed-comb.ts';
import { honeyBarrier } from './rule-honey-barrier.ts';
import { robbers } from './rule-robbers.ts';
import { springLook } from './rule-spring-look.ts';
import { afterChange } from './rule-after-change.ts';
import { weakColony } from './rule-weak-colony.ts';
import { splitReady } from './rule-split-ready.ts';
import { youngColony } from './rule-young-colony.ts';
import { markQueen, oldQueen } from './rule-queen-years.ts';
import { visitDue } from './rule-visit-due.ts';
import { worthALook } from './rule-worth-a-look.ts';

export const rules: readonly Rule[] = [
  stopSign,
  storesLow,
  leaveShut,
  queenCells,
  layingWorkers,
  askSign,
  robbers,
  honeyBarrier,
  giveRoom,
  noEggs,
  combFell,
  beeEscape,
  afterChange,
  newSwarm,
  crossedComb,
  bareBars,
  autumnOrder,
  springLook,
  weakColony,
  youngColony,
  splitReady,
  visitDue,
  worthALook,
  temper,
  poorPattern,
  oldQueen,
  markQueen,
];
