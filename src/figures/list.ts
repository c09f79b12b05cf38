/** All figures, in one array: the handbook's order. */
import { nestAdvisingFigures } from './advising-nest.ts';
import { advisingFigures } from './advising.ts';
import { cellsFigures } from './cells.ts';
import { combFigures } from './comb.ts';
import { developmentFigures } from './development.ts';
import { engineFigures } from './engine.ts';
import { engineLifeFigures } from './engine-life.ts';
import { engineTellingFigures } from './engine-telling.ts';
import { engineOutsideFigures } from './engine-outside.ts';
import { engineOpenFigures } from './engine-open.ts';
import { engineSurpriseFigures } from './engine-surprise.ts';
import { estimateFigures } from './estimate.ts';
import { foodFigures } from './food.ts';
import { layingFigures } from './laying.ts';
import { mortalityFigures } from './mortality.ts';
import { queenChainFigures } from './queen-chain.ts';
import { queensFigures } from './queens.ts';
import { swarmsFigures } from './swarms.ts';
import { visitingFigures } from './visiting.ts';
import { warmthFigures } from './warmth.ts';

export const figures = [
  ...developmentFigures,
  ...mortalityFigures,
  ...layingFigures,
  ...queensFigures,
  ...swarmsFigures,
  ...combFigures,
  ...cellsFigures,
  ...foodFigures,
  ...warmthFigures,
  ...estimateFigures,
  ...advisingFigures,
  ...nestAdvisingFigures,
  ...visitingFigures,
  ...engineFigures,
  ...engineLifeFigures,
  ...engineTellingFigures,
  ...engineOpenFigures,
  ...engineOutsideFigures,
  ...engineSurpriseFigures,
  ...queenChainFigures,
] as const;

export type FigureKey = (typeof figures)[number]['key'];
