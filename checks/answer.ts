/** What the program answers to a check, and how that compares with what was published. */
import { runSum } from '../src/apiary/sums.ts';
import { printed, printedBook, rangeOf } from '../src/figures/book.ts';
import { daysBetween, isDay } from '../src/numbers/day.ts';
import { templateOf } from '../src/words/catalogue.ts';
import { plainManner } from '../src/words/say.ts';
import type { Ask, Check } from './check.ts';
import { worked } from './worked.ts';

export interface Verdict {
  readonly ours: number | string | null;
  /** In the unit of the check; null for words, and where there is no answer. */
  readonly error: number | null;
  /** Size of the error as a share of the tolerance; null where the tolerance is 0. */
  readonly share: number | null;
  readonly within: boolean;
  /** It stands as it should: within its tolerance, or still differing where it is said to differ. */
  readonly passes: boolean;
}

/** Room for the rounding of the machine where a value must be met exactly. */
const rounding = 1e-9;

export function verdictOf(check: Check): Verdict {
  const ours = answerTo(check.ask);
  if (ours === null) return { ours, error: null, share: null, within: false, passes: false };
  const error = errorOf(check, ours);
  const within = error === null ? ours === check.expected : Math.abs(error) <= check.tolerance + rounding * scaleOf(check);
  const share = error === null || check.tolerance === 0 ? null : Math.abs(error) / check.tolerance;
  return { ours, error, share, within, passes: check.differs === undefined ? within : !within };
}

/** Null when the program has no answer. */
export function answerTo(ask: Ask): number | string | null {
  switch (ask.kind) {
    case 'sum': {
      const result = runSum(ask.sum, ask.input, printedBook);
      return result.ok ? read(result.value, ask.read) : null;
    }
    case 'figure':
    case 'range':
      return printed(ask.figure).value;
    case 'worked':
      return worked[ask.name](ask.input);
    case 'wording': {
      const said = templateOf(ask.text, plainManner).toLowerCase();
      return ask.words.filter((word) => said.includes(word)).join(' and ') || null;
    }
  }
}

function errorOf(check: Check, ours: number | string): number | null {
  const { ask, expected } = check;
  if (ask.kind === 'range' && typeof expected === 'number') {
    const { low, high } = rangeOf(printedBook, ask.figure);
    return expected < low ? low - expected : Math.min(0, high - expected);
  }
  if (typeof ours === 'number' && typeof expected === 'number') return ours - expected;
  if (isDay(ours) && isDay(expected)) return daysBetween(expected, ours);
  return null;
}

function scaleOf(check: Check): number {
  return typeof check.expected === 'number' ? Math.max(1, Math.abs(check.expected)) : 1;
}

function read(answer: Readonly<Record<string, unknown>>, path: string): number | string | null {
  const found = path
    .split('.')
    .reduce<unknown>(
      (inside, name) => (typeof inside === 'object' && inside !== null ? (inside as Record<string, unknown>)[name] : undefined),
      answer,
    );
  return typeof found === 'number' || typeof found === 'string' ? found : null;
}
