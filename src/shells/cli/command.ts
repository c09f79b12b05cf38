/**
 * A command: a record with its name, the key of its line in the catalogue, the options it knows and one
 * function. It writes by the `Out` it is given and returns the exit code: 0 well, 1 something is wrong
 * in the data, 2 it was called wrongly.
 */
import type { ParseArgsConfig } from 'node:util';
import type { TextKey } from '../../words/text.ts';

export type ExitCode = 0 | 1 | 2;

export interface Out {
  readonly print: (line: string) => void;
  readonly complain: (line: string) => void;
}

export interface Call {
  readonly words: readonly string[];
  readonly options: Readonly<Record<string, string | boolean | undefined>>;
  readonly out: Out;
  readonly serve: Serve;
}

export interface ServeOptions {
  readonly host: string;
  readonly port: number;
  readonly dataDir: string;
  readonly staticDir: string;
  readonly cert?: string;
  readonly key?: string;
}

/** Starts the server; handed in by `bin/festoon`, since shells do not import each other. */
export type Serve = (options: ServeOptions) => Promise<{ readonly ok: boolean; readonly line: string }>;

export interface Command {
  readonly name: string;
  /** What follows the name, as in `colony NAME-OR-ID`. */
  readonly usage: string;
  readonly line: TextKey;
  /** The long help, one key a paragraph. */
  readonly help: readonly TextKey[];
  readonly options: NonNullable<ParseArgsConfig['options']>;
  readonly run: (call: Call) => Promise<ExitCode>;
}

/** Options that every command that reads a journal has. */
export const journalOptions = {
  journal: { type: 'string' },
  demo: { type: 'boolean' },
  day: { type: 'string' },
  json: { type: 'boolean' },
} as const;

export function option(call: Call, name: string): string | null {
  const found = call.options[name];
  return typeof found === 'string' ? found : null;
}

export function flag(call: Call, name: string): boolean {
  return call.options[name] === true;
}
