/** The sum "queen-loss". */
import type { FigureBook } from '../figures/book.ts';
import { choiceOf, dayOf, type Given, numberOrNull } from '../figures/read-input.ts';
import { type Answer, fieldIssue, sum } from '../figures/sum.ts';
import { bad, good, type Result } from '../numbers/result.ts';
import { lastLaid, queenLoss, youngestStages } from './queen-loss.ts';

const after = ['emergency-queen-emerges', 'emergency-first-eggs', 'hopeless-after-days'] as const;

export const queenLossSum = sum({
  key: 'queen-loss',
  title: 'A queen lost',
  line: 'when she last laid, when a daughter emerges and lays, and when there is no more hope, from the youngest brood',
  formula:
    'lastLaid = seenOn − greatest age … seenOn − least age of the youngest stage (a larva of known age: seenOn − least age ' +
    'of a larva − larvaAgeDays); virgin and first eggs = lastLaid + the ends of emergency-queen-emerges and emergency-first-eggs; ' +
    'hopelessFrom = lastLaidLatest + hopeless-after-days; with no brood the earliest days are unknown and ' +
    'lastLaidLatest = seenOn − least age of an emerging worker',
  fields: [
    { kind: 'choice', name: 'youngestStage', choices: youngestStages, about: 'youngest worker brood in the nest' },
    {
      kind: 'integer',
      name: 'larvaAgeDays',
      unit: 'days',
      low: 0,
      high: 6,
      without: { kind: 'nothing' },
      about: 'age of the youngest larva since hatching, where it can be told',
    },
    { kind: 'day', name: 'seenOn', about: 'day on which it was seen' },
  ],
  uses: ['worker-egg-age', 'worker-larva-age', 'worker-sealed-age', 'worker-emerging-age', ...after],
  usesFor: (given) => {
    const stage = choiceOf(given, 'youngestStage', youngestStages);
    return [`worker-${stage === 'none' ? 'emerging' : stage}-age`, ...after];
  },
  answer,
});

function answer(given: Given, book: FigureBook): Result<Answer> {
  const stage = choiceOf(given, 'youngestStage', youngestStages);
  const age = numberOrNull(given, 'larvaAgeDays');
  if (age !== null && stage !== 'larva') {
    return bad(fieldIssue('larvaAgeDays', `${age} with youngestStage ${stage}`, 'left out unless youngestStage is larva'));
  }
  const loss = queenLoss(lastLaid(stage, age, dayOf(given, 'seenOn'), book), book);
  return good({
    lastLaidEarliest: loss.lastLaid.earliest,
    lastLaidLatest: loss.lastLaid.latest,
    virginEmergesEarliest: loss.virginEmerges.earliest,
    virginEmergesLatest: loss.virginEmerges.latest,
    firstEggsEarliest: loss.firstEggs.earliest,
    firstEggsLatest: loss.firstEggs.latest,
    hopelessFrom: loss.hopelessFrom,
  });
}
