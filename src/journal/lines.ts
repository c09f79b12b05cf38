/**
 * A journal as JSON lines: one entry a line in canonical JSON, in order, so that the same journal is
 * the same file everywhere. Reading gives every line its number and never stops at a bad one.
 */
import type { Issue } from '../numbers/result.ts';
import { canonicalText } from './canonical.ts';
import type { Entry } from './entry.ts';
import { inOrder } from './order.ts';
import { shown } from './zod-issues.ts';

export type Line =
  | { readonly line: number; readonly ok: true; readonly value: unknown }
  | { readonly line: number; readonly ok: false; readonly issue: Issue };

export function linesOf(entries: readonly Entry[]): string {
  return inOrder(entries)
    .map((entry) => `${canonicalText(entry)}\n`)
    .join('');
}

/** Empty lines are passed over; a byte order mark and line ends of other systems are accepted. */
export function readLines(text: string): readonly Line[] {
  const rows = text.replace(/^\uFEFF/, '').split('\n');
  const lines: Line[] = [];
  for (const [i, row] of rows.entries()) {
    const trimmed = row.trim();
    if (trimmed !== '') lines.push(readLine(trimmed, i + 1, i === rows.length - 1));
  }
  return lines;
}

function readLine(row: string, line: number, last: boolean): Line {
  try {
    return { line, ok: true, value: JSON.parse(row) as unknown };
  } catch {
    const tail = shown(row.slice(-40));
    const issue = last
      ? {
          code: 'truncated-line',
          path: `line ${line}`,
          found: `a last line that breaks off at ${tail}`,
          expected: 'a whole entry and a line end',
        }
      : { code: 'bad-json', path: `line ${line}`, found: shown(row), expected: 'one JSON record a line' };
    return { line, ok: false, issue };
  }
}
