/** Chances in words and out of ten, never in percent: "likely, about 7 in 10". */
import { assert } from '../numbers/assert.ts';
import type { TextKey } from './catalogue.ts';
import { fill } from './fill.ts';
import type { Manner } from './say.ts';

/** `chance` is 0…1. */
export function formatChance(chance: number, manner: Manner): string {
  assert(chance >= 0 && chance <= 1, `a chance from 0 to 1, not ${chance}`);
  const tenths = Math.round(chance * 10);
  const word = fill(`chance.word.${tenths}` as TextKey, {}, manner);
  return fill('chance.said', { word, tenths: sayTenths(tenths, manner) }, manner);
}

function sayTenths(tenths: number, manner: Manner): string {
  if (tenths === 0) return fill('chance.none', {}, manner);
  if (tenths === 10) return fill('chance.all', {}, manner);
  return fill('chance.about', { n: String(tenths) }, manner);
}
