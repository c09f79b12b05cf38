/**
 * A sum: one calculator, offered on a screen and as a command. A sum declares its fields once; reading the
 * input, filling in what was left out and saying what was assumed is done here for all of them.
 * The arithmetic itself is a plain function in the room that owns the thing.
 */
import { good, type Issue, type Result } from '../numbers/result.ts';
import type { FigureBook } from './book.ts';
import type { Field } from './field.ts';
import type { FigureKey } from './list.ts';
import { type Given, readInput } from './read-input.ts';

export interface Sum {
  readonly key: string;
  readonly title: string;
  /** One line for a list of sums. */
  readonly line: string;
  readonly formula: string;
  readonly fields: readonly Field[];
  /** Every figure it may rest on, those that stand in for fields left out included. */
  readonly sources: readonly FigureKey[];
  /** The answer with `assumed` and `sources`, or what is wrong with the input. */
  readonly run: (input: unknown, book: FigureBook) => Result<Answer>;
}

export type Answer = Readonly<Record<string, unknown>>;

export type { Field } from './field.ts';

interface SumParts extends Omit<Sum, 'run' | 'sources'> {
  /** Figures used besides those that stand in for fields. */
  readonly uses?: readonly FigureKey[];
  /** Those of them that this input needs; all when left out. */
  readonly usesFor?: (given: Given) => readonly FigureKey[];
  readonly answer: (given: Given, book: FigureBook) => Result<Answer>;
}

/** Puts reading, assumptions and sources around the arithmetic. */
export function sum({ uses = [], usesFor = () => uses, answer, ...parts }: SumParts): Sum {
  const standIns = parts.fields.flatMap((field) => (field.without?.kind === 'figure' ? [field.without.figure] : []));
  return {
    ...parts,
    sources: [...new Set([...uses, ...standIns])],
    run: (input, book) => {
      const read = readInput(parts.fields, input, book);
      if (!read.ok) return read;
      const result = answer(read.value, book);
      if (!result.ok) return result;
      const sources = [...new Set([...usesFor(read.value), ...read.value.figures])];
      return good({ ...result.value, assumed: read.value.assumed, sources });
    },
  };
}

/** A fault that only shows when fields are read together. */
export function fieldIssue(path: string, found: string, expected: string): Issue {
  return { code: 'out-of-range', path, found, expected };
}
