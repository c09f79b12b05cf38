/**
 * Fills a template with texts that are ready: the lowest step, used by the formats themselves, which
 * know days, ranges and units and would otherwise depend on each other in a ring.
 */
import { assert } from '../numbers/assert.ts';
import { type TextKey, templateOf } from './catalogue.ts';
import type { Manner } from './say.ts';
import { pieces, slotNames } from './template.ts';

/** The text of a key with ready strings in its slots. Throws when a slot is missing, left over, or needs a form. */
export function fill(key: TextKey, ready: Readonly<Record<string, string>>, manner: Manner): string {
  const template = templateOf(key, manner);
  checkSlots(key, template, ready);
  return pieces(template)
    .map((piece) => {
      if (piece.kind === 'plain') return piece.text;
      assert(piece.kind === 'slot' && piece.form === null, `${key} is filled with ready texts only`);
      return ready[piece.name] ?? '';
    })
    .join('');
}

/** Every slot of the template is given and nothing else is. */
export function checkSlots(key: string, template: string, given: Readonly<Record<string, unknown>>): void {
  const needed = slotNames(template);
  for (const name of needed) assert(Object.hasOwn(given, name), `the slot ${name} of ${key} is given`);
  for (const name of Object.keys(given)) assert(needed.has(name), `${key} has a slot ${name}`);
}
