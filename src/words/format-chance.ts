/** Chances in words and out of ten, never in percent: "likely, about 7 in 10". */
import { assert } from '../numbers/assert.ts';
import type { TextKey } from './catalogue.ts';
import { fill } from './fill.ts';
import type { Manner } from './say.ts';

/** `chance` is 0…1. */
export function formatChance(chance: number, manner: Manner): string {
  const tenths = tenthsOf(chance);
  const word = fill(`chance.word.${tenths}` as TextKey, {}, manner);
  return fill('chance.said', { word, tenths: formatTenths(chance, manner) }, manner);
}

/** Out of ten alone, where what it is a chance of stands beside it: "about 7 in 10". `first`: it begins a sentence. */
export function formatTenths(chance: number, manner: Manner, first = false): string {
  const tenths = tenthsOf(chance);
  if (tenths === 0) return fill(first ? 'chance.none-first' : 'chance.none', {}, manner);
  if (tenths === 10) return fill(first ? 'chance.all-first' : 'chance.all', {}, manner);
  return fill(first ? 'chance.about-first' : 'chance.about', { n: String(tenths) }, manner);
}

/** Chances that were added up may miss 0 and 1 by the last digits of the sum; anything more is a mistake. */
const lastDigits = 1e-9;

function tenthsOf(chance: number): number {
  assert(chance >= -lastDigits && chance <= 1 + lastDigits, `a chance from 0 to 1, not ${chance}`);
  return Math.abs(Math.round(chance * 10));
}
