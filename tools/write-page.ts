/**
 * Writes a generated page of the documentation, or with `--check` says whether it is stale: exit code 1 when
 * the page on the disk is not the one that the present data give.
 */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';

export function writePage(path: string, page: string, args: readonly string[]): void {
  const present = existsSync(path) ? readFileSync(path, 'utf8') : null;
  if (!args.includes('--check')) {
    if (present !== page) writeFileSync(path, page);
    console.log(`${path}: ${present === page ? 'as it was' : 'written'}`);
    return;
  }
  if (present === page) return;
  console.error(`${path} is ${present === null ? 'missing' : 'stale'}: run npm run pages`);
  process.exitCode = 1;
}

/** A markdown table; bars inside cells are kept from breaking it. */
export function markdownTable(heads: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]): string => `| ${cells.map((cell) => cell.replaceAll('|', '\\|')).join(' | ')} |`;
  return [line(heads), line(heads.map(() => '---')), ...rows.map(line)].join('\n');
}

/** At most six digits, without trailing noughts: the same on every machine. */
export function short(value: number): string {
  return `${Number(value.toPrecision(6))}`;
}
