/**
 * One check: a value that somebody else published, what we are asked for, and how far we may be from it.
 * A check whose expected value comes from the same row as a figure it rests on is marked circular and
 * proves only that nothing was mistyped.
 */
import type { FigureKey } from '../src/figures/list.ts';
import type { Sureness } from '../src/figures/figure.ts';
import type { SourceKey } from '../src/figures/sources.ts';
import type { TextKey } from '../src/words/catalogue.ts';
import type { WorkedName } from './worked.ts';

export interface Check {
  readonly id: string;
  readonly topic: CheckTopic;
  readonly what: string;
  readonly origin: Origin;
  readonly ask: Ask;
  /** A number, a day or a word. */
  readonly expected: number | string;
  readonly unit: string;
  /** Greatest distance allowed, in the unit; days for a day; 0 means exactly (to rounding of the machine). */
  readonly tolerance: number;
  readonly why: string;
  readonly circular: boolean;
  /** Sources that are known to disagree with the figure we chose: the check says why, and fails if they ever agree. */
  readonly differs?: string;
}

export const checkTopics = [
  'cells and bees',
  'wood and comb',
  'brood',
  'queens and swarms',
  'colony balances',
  'food',
  'sums',
  'the trade',
] as const;
export type CheckTopic = (typeof checkTopics)[number];

export type Origin =
  | { readonly kind: 'published'; readonly source: SourceKey; readonly where: string; readonly sureness: Sureness }
  | { readonly kind: 'common practice' }
  /** Worked out apart from this code, by hand or with an arithmetic of its own. */
  | { readonly kind: 'worked apart'; readonly how: string };

export type Ask =
  /** One number or day of a sum's answer; `read` is the field, dotted. */
  | { readonly kind: 'sum'; readonly sum: string; readonly input: Readonly<Record<string, unknown>>; readonly read: string }
  /** A figure's value. */
  | { readonly kind: 'figure'; readonly figure: FigureKey }
  /** Whether the expected value lies in the range that the figure prints: the distance is from the nearer end. */
  | { readonly kind: 'range'; readonly figure: FigureKey }
  /** A calculation that is no sum, named in `worked.ts`. */
  | { readonly kind: 'worked'; readonly name: WorkedName; readonly input: readonly number[] }
  /** Which of the words the program's own sentence uses. */
  | { readonly kind: 'wording'; readonly text: TextKey; readonly words: readonly string[] };
