/**
 * What the model of a colony tells, as sentences: chances out of ten with what they are a chance of, ranges
 * in two figures, windows in days. Nothing here decides; the facts come from `colony/foreseen.ts`.
 */
import type { Slot, Unit } from '../advice/advice.ts';
import type { Coming, Foreseen, Look, Surprise } from '../colony/foreseen.ts';
import { type QueenState, queenStates } from '../colony/queen-state.ts';
import { exactly } from '../numbers/range.ts';
import type { TextKey } from './catalogue.ts';
import { formatChance, formatTenths } from './format-chance.ts';
import { formatList } from './format-place.ts';
import { type Manner, plainManner } from './say.ts';
import { text } from './text.ts';

const cite = { kind: 'worked out', from: [] } as const;

/** A chance smaller than this is not worth a line of its own. */
const leastSaid = 0.05;

/** What surprised, and its rival explanations, the most likely first, each with its chance. */
export function surpriseLines(
  surprise: Surprise,
  manner: Manner = plainManner,
): { readonly what: string; readonly because: readonly string[] } {
  return {
    what: surpriseLine(surprise, manner),
    because: surprise.because
      .filter(({ chance }, i) => i === 0 || chance >= leastSaid)
      .map(({ cause, chance }) =>
        text('surprise.one', { cause: text(`cause.${cause}`, {}, manner), tenths: formatTenths(chance, manner) }, manner),
      ),
  };
}

/** Where combs hang now, if they were moved, by place. */
export function movedLines(moved: Foreseen['moved'], manner: Manner = plainManner): readonly string[] {
  const placeOf = (place: number): Slot => ({ kind: 'place', place, cite });
  return moved.map(({ today, last, chance }) =>
    text('surprise.moved-one', { today: placeOf(today), last: placeOf(last), tenths: formatTenths(chance, manner) }, manner),
  );
}

const amounts = ['bees', 'sealed', 'open brood', 'honey', 'comb', 'bar'] as const;
const unitOf: Readonly<Partial<Record<Surprise['what'], Unit>>> = { honey: 'kg', bar: 'of eight' };

function surpriseLine(surprise: Surprise, manner: Manner): string {
  const { what, place, expected, seen } = surprise;
  const amount = amounts.find((one) => one === what);
  if (amount === undefined) return signLine(surprise, manner);
  const unit = unitOf[what] ?? 'cells';
  const slots = {
    seen: { kind: 'number', value: seen ?? 0, unit, cite } as const,
    expected: { kind: 'range', range: expected ?? exactly(0), unit, cite } as const,
  };
  const where: Slot = { kind: 'place', place: place ?? 0, cite };
  return text(`surprise.${amount}`, amount === 'bar' ? { ...slots, place: where } : slots, manner);
}

/** Of a sign the model tells how likely it was, and on which side of what was expected it lies. */
function signLine({ what, seen, z }: Surprise, manner: Manner): string {
  const tenths = formatTenths(Math.min(1, Math.max(0, seen ?? 0)), manner);
  if (what === 'youngest') return text('surprise.youngest', { tenths }, manner);
  return text(`surprise.${what === 'eggs' ? 'eggs' : 'cells'}-${z > 0 ? 'more' : 'less'}`, { tenths }, manner);
}

export type ComingName = Exclude<keyof Coming, 'horizonDays'>;
const comingNames: readonly ComingName[] = ['swarm', 'hemmedIn', 'troughFull', 'starving'];

export interface ComingLine {
  readonly name: ComingName;
  readonly what: string;
  /** "unlikely, about 3 in 10" */
  readonly chance: string;
  /** When, and what would settle it; empty when there is nothing to say. */
  readonly more: string;
}

/** What may come, the most likely first. */
export function comingLines(coming: Coming, manner: Manner = plainManner): readonly ComingLine[] {
  return [...comingNames]
    .sort((a, b) => coming[b].chance - coming[a].chance)
    .map((name) => {
      const { chance, window, settledBy } = coming[name];
      const signs = settledBy.map((sign) => text(`look-sign.${sign}`, {}, manner));
      const more = [
        window === null ? '' : text('coming.when', { window: { kind: 'window', window, cite } }, manner),
        signs.length === 0 ? '' : text('coming.settled', { signs: formatList(signs, manner) }, manner),
      ];
      return {
        name,
        what: text(`coming.${name}`, {}, manner),
        chance: formatChance(chance, manner),
        more: more.filter((line) => line !== '').join(' '),
      };
    });
}

/** Whether a look is worth it, when, and the bars that would answer what is asked. */
export function lookLines(look: Look, day: string, horizonDays: number, manner: Manner = plainManner): readonly string[] {
  const when =
    look.openOn === null
      ? text('look.never', { days: horizonDays }, manner)
      : look.openOn <= day
        ? text('look.today', {}, manner)
        : text('look.from', { day: { kind: 'day', day: look.openOn, cite } }, manner);
  const asked = look.questions.map(({ ask, places }) => {
    const question = text(`look.ask-${ask}`, {}, manner);
    if (places.length === 0) return text('look.answer-any', { ask: question }, manner);
    return text('look.answer', { ask: question, places: { kind: 'places', places, cite } }, manner);
  });
  return [when, text('look.changes', { tenths: formatTenths(look.changesAct, manner, true) }, manner), ...asked];
}

/** The states worth a line, the most likely first, and the chance of all others together. */
export function statesToSay(states: Foreseen['queen']['states']): {
  readonly said: Foreseen['queen']['states'];
  readonly rest: number;
} {
  const said = states.filter(({ chance }, i) => i === 0 || chance >= leastSaid);
  return { said, rest: Math.max(0, 1 - said.reduce((sum, { chance }) => sum + chance, 0)) };
}

/** The short words that stand on the ribbon. */
export function ribbonWords(manner: Manner = plainManner): Readonly<Record<QueenState, string>> {
  return Object.fromEntries(queenStates.map((state) => [state, text(`ribbon.${state}`, {}, manner)])) as Record<
    QueenState,
    string
  >;
}

/** From here on a hint is worth its line on the round. */
const leastHint = 0.15;
const layingStates: readonly QueenState[] = ['laying', 'new queen laying', 'failing'];
const cellStates: readonly QueenState[] = ['cells open', 'cells sealed'];

/** One short line for the round: the chance behind what is asked first; null where it says too little. */
export function hintLine(foreseen: Foreseen, manner: Manner = plainManner): string | null {
  const [first] = foreseen.look.questions;
  if (first === undefined) return null;
  const { coming, queen } = foreseen;
  const together = (states: readonly QueenState[]) =>
    queen.states.filter(({ state }) => states.includes(state)).reduce((sum, { chance }) => sum + chance, 0);
  const chance = {
    cells: together(cellStates),
    eggs: 1 - together(layingStates),
    stores: coming.starving.chance,
    room: coming.hemmedIn.chance,
  }[first.ask];
  if (chance < leastHint) return null;
  const key: TextKey = `hint.${first.ask}`;
  const tenths = formatTenths(Math.min(1, Math.max(0, chance)), manner, true);
  return text(key, first.ask === 'stores' || first.ask === 'room' ? { tenths, days: coming.horizonDays } : { tenths }, manner);
}
