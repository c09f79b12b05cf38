/** The English catalogue: every text of the program by its key. */
import { adviceNest } from './advice-nest.ts';
import { advice } from './advice.ts';
import { commands } from './commands.ts';
import { figures } from './figures.ts';
import { issues } from './issues.ts';
import { screens } from './screens.ts';
import { terms } from './terms.ts';
import { visit } from './visit.ts';

export const english = { ...terms, ...advice, ...adviceNest, ...issues, ...figures, ...screens, ...commands, ...visit } as const;

/** The parts by name, so that a test can say which part holds a key twice. */
export const englishParts: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  terms,
  advice,
  'advice of the nest': adviceNest,
  issues,
  figures,
  screens,
  commands,
  visit,
};
