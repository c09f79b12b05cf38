/** The sum "queen-state": chances of the nine states of a queen from dated notes, when to look next and when not to. */
import { type FigureBook, value } from '../figures/book.ts';
import type { Field } from '../figures/field.ts';
import { choiceOrNull, dayOf, flagOrNull, type Given, numberOrNull, recordOrNull, recordsOf } from '../figures/read-input.ts';
import { type Answer, fieldIssue, sum } from '../figures/sum.ts';
import { addDays, type Day } from '../numbers/day.ts';
import { bad, good, type Result } from '../numbers/result.ts';
import { acts } from './queen-chain/acts.ts';
import type { cellKinds } from './queen-chain/cells-there.ts';
import { reportedChances } from './queen-chain/filter.ts';
import { emptyLook, type QueenLook, stages } from './queen-chain/seen.ts';
import { believedOn, queenModel, type QueenNote } from './queen-chain/story.ts';
import { reportedStates } from './queen-chain/states.ts';
import { lookAhead } from './queen-chain/telling.ts';
import { queenStateFigures } from './queen-chain/uses.ts';
import type { QueenState } from './queen-state.ts';

/** The states as the sum writes them. */
export const stateCodes: Readonly<Record<QueenState, string>> = {
  laying: 'laying',
  'cells open': 'cells-open',
  'cells sealed': 'cells-sealed',
  virgin: 'virgin',
  'new queen laying': 'new-laying',
  failing: 'failing',
  'drone layer': 'drone-layer',
  none: 'none',
  'laying workers': 'laying-workers',
};

const eggNotes = ['seen', 'none-seen', 'not-looked'] as const;
const optional = { without: { kind: 'nothing' } } as const;
const mostCells = 200;
const mostNotes = 400;

const cellField = (name: (typeof cellKinds)[number], about: string): Field => {
  return { kind: 'integer', name, unit: 'cells', low: 0, high: mostCells, ...optional, about };
};

const noteFields: readonly Field[] = [
  { kind: 'day', name: 'date', about: 'day of the look or of the event' },
  { kind: 'choice', name: 'eggs', choices: eggNotes, ...optional, about: 'eggs' },
  { kind: 'choice', name: 'youngestStage', choices: stages, ...optional, about: 'youngest worker brood' },
  {
    kind: 'record',
    name: 'cells',
    of: [
      cellField('open', 'open cells with an egg or a larva'),
      cellField('sealed', 'sealed cells'),
      cellField('torn', 'cells torn down at the side'),
      cellField('emerged', 'cells with an open lid, left by a queen'),
    ],
    ...optional,
    about: 'queen cells; a kind that is left out was not looked for',
  },
  { kind: 'flag', name: 'queenSeen', ...optional, about: 'a queen was seen; no: she was looked for' },
  { kind: 'number', name: 'shareLooked', unit: 'share', low: 0, high: 1, ...optional, about: 'share of the nest looked at' },
  { kind: 'choice', name: 'event', choices: acts, ...optional, about: 'swarm seen, or what the keeper did' },
];

export const queenStateSum = sum({
  key: 'queen-state',
  title: 'The state of the queen',
  line: 'chances of laying, cells, virgin, new queen, failing, drone layer, none and laying workers, and when to look next',
  formula:
    'a chain of states by days with the days in a state and the days since the last fertile egg, from a laying queen ' +
    'queen-state-lead-days before the first note, with queen-state-unknown-share of doubt; each note weighs the states by ' +
    'the chance to see what was seen (of one day: looks before events); notes older than queen-state-memory-days say nothing. ' +
    'nextTellingDay: first harmless day on which a look is expected to lessen the doubt whether she lays, one is to come, she ' +
    'is spent or there is no hope by queen-state-telling-gain nats, and by queen-state-telling-share of the most in ' +
    'queen-state-horizon-days; null when none does. harmfulDays: chance of a virgin, a queen laying for less than ' +
    'new-laying-rest-days, or one in her cage together at least queen-state-harm-chance; why: the likeliest, and each that is ' +
    'likely enough alone. Northern seasons',
  fields: [
    { kind: 'records', name: 'days', of: noteFields, most: mostNotes, about: 'notes, one record a day or more, in any order' },
    { kind: 'day', name: 'on', about: 'day for which the answer is wanted' },
  ],
  uses: queenStateFigures,
  answer,
});

function answer(given: Given, book: FigureBook): Result<Answer> {
  const on = dayOf(given, 'on');
  const records = recordsOf(given, 'days');
  const late = records.findIndex((record) => dayOf(record, 'date') > on);
  if (late >= 0)
    return bad(fieldIssue(`days.${late}.date`, dayOf(records[late]!, 'date'), `a day up to ${on}, the day asked for`));
  const notes = records.map((record) => noteOf(record, book));
  return good(queenStateOn(notes, on, book));
}

export function queenStateOn(notes: readonly QueenNote[], on: Day, book: FigureBook) {
  const model = queenModel(book);
  const oldest = addDays(on, -value(book, 'queen-state-memory-days'));
  const { belief } = believedOn(
    model,
    notes.filter(({ day }) => day >= oldest),
    on,
  );
  const chances = reportedChances(model.chain, belief);
  const { nextTellingDay, harmfulDays } = lookAhead(
    model,
    belief,
    on,
    notes.some(({ day, look }) => day === on && look !== null),
  );
  const whole = chances.reduce((a, b) => a + b, 0);
  const states = reportedStates.map((state, index) => ({ state: stateCodes[state], chance: chances[index]! / whole }));
  return { states, nextTellingDay, harmfulDays };
}

function noteOf(record: Given, book: FigureBook): QueenNote {
  return { day: dayOf(record, 'date'), look: lookOf(record, book), act: choiceOrNull(record, 'event', acts) };
}

/** Null when nothing of it was noted. */
function lookOf(record: Given, book: FigureBook): QueenLook | null {
  const eggs = choiceOrNull(record, 'eggs', eggNotes) ?? 'not-looked';
  const youngest = choiceOrNull(record, 'youngestStage', stages);
  const cells = recordOrNull(record, 'cells');
  const queenSeen = flagOrNull(record, 'queenSeen');
  if (eggs === 'not-looked' && youngest === null && cells === null && queenSeen === null) return null;
  const share = numberOrNull(record, 'shareLooked') ?? value(book, 'queen-look-share-unsaid');
  return {
    ...emptyLook,
    eggs: eggs === 'seen' ? 'seen' : eggs === 'none-seen' ? 'none seen' : 'not looked',
    youngest,
    cells:
      cells === null
        ? null
        : {
            open: numberOrNull(cells, 'open'),
            sealed: numberOrNull(cells, 'sealed'),
            torn: numberOrNull(cells, 'torn'),
            emerged: numberOrNull(cells, 'emerged'),
          },
    queenSeen,
    shareLooked: share,
    cellShare: share,
  };
}

export type QueenStateAnswer = ReturnType<typeof queenStateOn>;
