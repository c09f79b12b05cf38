/**
 * The one place where sentences are made: a key of the catalogue and what stands in its slots become text.
 * A missing slot, a slot too many or a key that is not there is a programmer's mistake and throws.
 */
import type { Chance, Saying } from '../advice/advice.ts';
import { assert } from '../numbers/assert.ts';
import { isTextKey, type TextKey, templateOf } from './catalogue.ts';
import { checkSlots, fill } from './fill.ts';
import { formatChance } from './format-chance.ts';
import { type Manner, plainManner } from './say.ts';
import { pluralOf, type SlotValue, slotText } from './slot.ts';
import { pieces } from './template.ts';

export type { TextKey } from './catalogue.ts';
export type { SlotValue } from './slot.ts';

/** The text of a key. Slots are ready texts, plain numbers, or cited slots of an advice. */
export function text(key: TextKey, slots: Readonly<Record<string, SlotValue>> = {}, manner: Manner = plainManner): string {
  const template = templateOf(key, manner);
  checkSlots(key, template, slots);
  return pieces(template)
    .map((piece) => {
      if (piece.kind === 'plain') return piece.text;
      const value = slots[piece.name];
      assert(value !== undefined, `the slot ${piece.name} of ${key} is given`);
      if (piece.kind === 'slot') return slotText(value, piece.form, manner);
      const { one, number } = pluralOf(value, manner);
      return (one ? piece.one : piece.many).replace('#', number).replace('@', inWords(number, manner));
    })
    .join('');
}

/** A whole number up to ten as a word; every other number as it is. */
function inWords(number: string, manner: Manner): string {
  const key = `count.${number}`;
  return isTextKey(key) ? fill(key, {}, manner) : number;
}

/** The sentence of a saying. */
export function say(saying: Saying, manner: Manner = plainManner): string {
  assert(isTextKey(saying.key), `the text ${saying.key} is in the catalogue`);
  return text(saying.key, saying.slots, manner);
}

/** A chance with what it is a chance of: "first eggs by 2 June: likely, about 7 in 10". */
export function sayChance(chance: Chance, manner: Manner = plainManner): string {
  return fill('chance.of', { what: say(chance.of, manner), chance: formatChance(chance.chance, manner) }, manner);
}
