/** What the handbook shows, at the front door: figures with their sources, signs, contents. */
export { type FigureBook, printed, printedBook, rangeOf, value } from '../figures/book.ts';
export { type Basis, type Figure, type Topic, topics } from '../figures/figure.ts';
export { type FigureKey, figures } from '../figures/list.ts';
export { type Source, type SourceKey, sources } from '../figures/sources.ts';
export { type Sign, signs } from '../colony/signs.ts';
export { type Content, contents } from '../hive/contents.ts';
