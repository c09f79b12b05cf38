/**
 * `npm run -s score -- --file COUNTS.csv [--start STARTS.csv] [--seed N] [--json]`: how well the next count of
 * each colony is foreseen from its earlier ones. All parameters are those of the figures; nothing is fitted.
 * With `--json` nothing but JSON is printed. Bad input: one line a fault on the error output, exit code 2.
 */
import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { printedBook } from '../../src/figures/book.ts';
import { bad, good, issueLine, type Result } from '../../src/numbers/result.ts';
import { newStream, nextWord } from '../../src/numbers/streams.ts';
import { casesOf } from './intervals.ts';
import { readCounts } from './read-counts.ts';
import { reportOf } from './report.ts';
import { reportTable } from './table.ts';

interface Order {
  readonly file: string;
  readonly start: string | null;
  readonly seed: number;
  readonly particles: number;
  readonly json: boolean;
}

const usage = 'npm run -s score -- --file COUNTS.csv [--start STARTS.csv] [--seed N] [--particles N] [--json]';
const usual = { seed: 1, particles: 2000 };

export function score(args: readonly string[]): { readonly code: number; readonly out: string; readonly complaint: string } {
  const order = readOrder(args);
  if (!order.ok) return refused([...order.issues.map(issueLine), usage]);
  const { file, start, seed, particles, json } = order.value;
  const [counts, starts] = [readText(file), start === null ? good(null) : readText(start)];
  if (!counts.ok) return refused(counts.issues.map(issueLine));
  if (!starts.ok) return refused(starts.issues.map(issueLine));
  const colonies = readCounts(counts.value, starts.value);
  if (!colonies.ok) return refused(colonies.issues.map(issueLine));
  const report = reportOf(
    casesOf(colonies.value, { particles, seed, book: printedBook }, (name) => seedOf(seed, name)),
    seed,
  );
  return { code: 0, out: json ? JSON.stringify(report, null, 1) : reportTable(report), complaint: '' };
}

/** A colony's luck hangs on its name, not on who stands beside it in the file. */
function seedOf(seed: number, colony: string): number {
  let word = seed;
  for (const sign of colony) word = nextWord(newStream(word, sign.codePointAt(0)!, 0, 0)) | 0;
  return word;
}

function readOrder(args: readonly string[]): Result<Order> {
  const text = { type: 'string' } as const;
  const options = { file: text, start: text, seed: text, particles: text, json: { type: 'boolean' } } as const;
  try {
    const { values } = parseArgs({ args: [...args], options, strict: true, allowPositionals: false });
    const whole = (name: 'seed' | 'particles', least: number): number => {
      const given = values[name] ?? String(usual[name]);
      if (!/^\d{1,9}$/.test(given) || Number(given) < least)
        throw new Error(`--${name} is a whole number from ${least} on, not ${given}`);
      return Number(given);
    };
    if (values.file === undefined) throw new Error('--file is missing');
    return good({
      file: values.file,
      start: values.start ?? null,
      seed: whole('seed', 0),
      particles: whole('particles', 1),
      json: values.json ?? false,
    });
  } catch (thrown) {
    return bad({ code: 'bad-order', path: 'command', found: (thrown as Error).message, expected: 'see below' });
  }
}

function readText(path: string): Result<string> {
  try {
    return good(readFileSync(path, 'utf8'));
  } catch {
    return bad({ code: 'no-file', path, found: 'no file that can be read', expected: 'a table of comma-separated values' });
  }
}

function refused(lines: readonly string[]): { readonly code: number; readonly out: string; readonly complaint: string } {
  return { code: 2, out: '', complaint: lines.join('\n') };
}
