/**
 * Rows as comma-separated values (RFC 4180, UTF-8, CRLF). What is not known is an empty cell, never 0. A text that a
 * spreadsheet would run as a formula gets an apostrophe before it, as OWASP advises against CSV injection; numbers stay numbers.
 */
export type Cell = string | number | boolean | null;

export interface CsvTable {
  readonly columns: readonly string[];
  /** As many cells as columns. */
  readonly rows: readonly (readonly Cell[])[];
}

export function csvText({ columns, rows }: CsvTable): string {
  return [columns, ...rows].map((row) => `${row.map(csvCell).join(',')}\r\n`).join('');
}

function csvCell(cell: Cell): string {
  if (cell === null) return '';
  if (typeof cell !== 'string') return String(cell);
  const safe = /^[=+\-@\t\r]/.test(cell) ? `'${cell}` : cell;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
