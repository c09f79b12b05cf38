/** A bar that lies far from what was foreseen of it, in two short sentences: how far, and what may explain it. */
import type { Surprise } from '../colony/foreseen.ts';
import { formatTenths } from './format-chance.ts';
import { plainNumber } from './format-number.ts';
import { type Manner, plainManner } from './say.ts';
import { text } from './text.ts';

/** Explanations that are read with a comb in the hand. */
const mostSaid = 2;

/** `surprise` is of a single bar, expected and seen in eighths of that part. */
export function farBarLine(part: 'brood' | 'food', surprise: Surprise, manner: Manner = plainManner): string {
  const { place, expected, seen, because } = surprise;
  const [low, high] = [Math.round(expected?.low ?? 0), Math.round(expected?.high ?? 0)];
  const foreseen = low === high ? String(low) : text('visiting.far-ends', { low: String(low), high: String(high) }, manner);
  const causes = because
    .slice(0, mostSaid)
    .map(({ cause, chance }) =>
      text(
        'visiting.far-one',
        { cause: text(`visiting.far-cause.${cause}`, {}, manner), tenths: formatTenths(chance, manner) },
        manner,
      ),
    );
  const what = text(`visiting.what.${part}`, {}, manner);
  const slots = { place: String(place ?? 0), what, seen: plainNumber(seen ?? 0, 1), foreseen };
  return `${text('visiting.far', slots, manner)} ${text('visiting.far-because', { causes: causes.join('; ') }, manner)}`;
}
