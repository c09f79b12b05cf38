/** Where a figure comes from and how sure it is, in one line. */
import type { Figure } from '../figures/figure.ts';
import { sources } from '../figures/sources.ts';
import { never } from '../numbers/assert.ts';
import { type Manner, plainManner } from './say.ts';
import { text } from './text.ts';

export function figureSource(figure: Figure, manner: Manner = plainManner): string {
  const { basis } = figure;
  switch (basis.kind) {
    case 'source': {
      const { who, year, title, where } = sources[basis.source];
      const said = text('basis.source', { who, year: String(year), title, where }, manner);
      return `${said}; ${text(`sureness.${basis.sureness}`, {}, manner)}`;
    }
    case 'derived':
      return text('basis.derived', { how: basis.how }, manner);
    case 'common practice':
      return text('basis.common practice', {}, manner);
    case 'our choice':
      return text('basis.our choice', { why: basis.why }, manner);
    default:
      return never(basis);
  }
}
