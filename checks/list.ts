/** All checks, in one array. */
import type { Check } from './check.ts';
import { balanceChecks } from './data/balance.ts';
import { broodChecks } from './data/brood.ts';
import { cellChecks } from './data/cells.ts';
import { foodChecks } from './data/food.ts';
import { queenChecks } from './data/queens.ts';
import { sumChecks } from './data/sums.ts';
import { tradeChecks } from './data/trade.ts';
import { turnoverChecks } from './data/turnover.ts';
import { woodChecks } from './data/wood.ts';

export const checks: readonly Check[] = [
  ...cellChecks,
  ...woodChecks,
  ...broodChecks,
  ...queenChecks,
  ...turnoverChecks,
  ...balanceChecks,
  ...foodChecks,
  ...sumChecks,
  ...tradeChecks,
];
