/**
 * Templates of the catalogue: whole sentences with `{slot}`, `{slot:form}` and plurals `{slot|one bar|# bars}`,
 * where `#` is the number itself and `@` the number in words up to ten. Taking a template apart is here;
 * what a value looks like is in `text.ts`.
 */
import { assert } from '../numbers/assert.ts';

export type Piece =
  | { readonly kind: 'plain'; readonly text: string }
  | { readonly kind: 'slot'; readonly name: string; readonly form: string | null }
  | { readonly kind: 'plural'; readonly name: string; readonly one: string; readonly many: string };

const hole = /\{([^{}]*)\}/g;
const slotShape = /^([a-z][A-Za-z0-9]*)(?::([a-z]+))?$/;
const pluralShape = /^([a-z][A-Za-z0-9]*)\|([^|]*)\|([^|]*)$/;

/** The pieces of a template in order. Throws on a hole that is no slot and no plural. */
export function pieces(template: string): readonly Piece[] {
  const found: Piece[] = [];
  let from = 0;
  for (const match of template.matchAll(hole)) {
    if (match.index > from) found.push({ kind: 'plain', text: template.slice(from, match.index) });
    found.push(holeOf(match[1] ?? '', template));
    from = match.index + match[0].length;
  }
  if (from < template.length) found.push({ kind: 'plain', text: template.slice(from) });
  return found;
}

/** The names of the slots that a template needs. */
export function slotNames(template: string): ReadonlySet<string> {
  return new Set(pieces(template).flatMap((piece) => (piece.kind === 'plain' ? [] : [piece.name])));
}

function holeOf(inside: string, template: string): Piece {
  const plural = pluralShape.exec(inside);
  if (plural !== null) return { kind: 'plural', name: plural[1] ?? '', one: plural[2] ?? '', many: plural[3] ?? '' };
  const slot = slotShape.exec(inside);
  assert(slot !== null, `a slot or a plural in braces, not {${inside}} in “${template}”`);
  return { kind: 'slot', name: slot[1] ?? '', form: slot[2] ?? null };
}
