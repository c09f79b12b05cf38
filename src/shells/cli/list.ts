/** All commands, in the order of the overview. */
import type { Command } from './command.ts';
import { calcCommand } from './command-calc.ts';
import { checkCommand } from './command-check.ts';
import { colonyCommand } from './command-colony.ts';
import { exportCommand } from './command-export.ts';
import { figuresCommand } from './command-figures.ts';
import { importCommand } from './command-import.ts';
import { roundCommand } from './command-round.ts';
import { demoCommand, serveCommand } from './command-serve.ts';
import { tableCommand } from './command-table.ts';
import { visitCommand } from './command-visit.ts';

export const commands: readonly Command[] = [
  serveCommand,
  demoCommand,
  roundCommand,
  colonyCommand,
  visitCommand,
  exportCommand,
  tableCommand,
  importCommand,
  checkCommand,
  calcCommand,
  figuresCommand,
];
