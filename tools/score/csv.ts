/**
 * A table of comma-separated values as RFC 4180 writes it: quotes, doubled quotes, either line end, a byte
 * order mark let pass. The first row names the columns; every other row keeps the line it began on.
 */
import { bad, good, type Result } from '../../src/numbers/result.ts';

export interface Row {
  /** From 1, as an editor counts. */
  readonly line: number;
  readonly cells: Readonly<Record<string, string>>;
}

export interface Table {
  readonly columns: readonly string[];
  readonly rows: readonly Row[];
}

interface RawRow {
  readonly line: number;
  readonly cells: readonly string[];
}

export function readCsv(text: string, file: string): Result<Table> {
  const raw = split(text.replace(/^\uFEFF/, ''));
  if (!Array.isArray(raw))
    return bad({
      code: 'quote-not-closed',
      path: `${file} line ${raw.openLine}`,
      found: 'a quote that is not closed',
      expected: 'quotes in pairs',
    });
  const [head, ...rest] = raw.filter(({ cells }) => cells.length > 1 || cells[0] !== '');
  if (head === undefined) return bad({ code: 'empty-file', path: file, found: 'nothing', expected: 'a row of column names' });
  const columns = head.cells.map((name) => name.trim());
  const twice = columns.find((name, i) => name !== '' && columns.indexOf(name) !== i);
  if (twice !== undefined)
    return bad({
      code: 'column-twice',
      path: `${file} line ${head.line}, column ${twice}`,
      found: 'a column twice',
      expected: 'each column once',
    });
  const uneven = rest.find(({ cells }) => cells.length !== columns.length);
  if (uneven !== undefined) {
    return bad({
      code: 'uneven-row',
      path: `${file} line ${uneven.line}`,
      found: `${uneven.cells.length} cells`,
      expected: `${columns.length}, as in the first row`,
    });
  }
  return good({
    columns,
    rows: rest.map(({ line, cells }) => ({
      line,
      cells: Object.fromEntries(columns.map((name, i) => [name, (cells[i] ?? '').trim()])),
    })),
  });
}

function split(text: string): RawRow[] | { readonly openLine: number } {
  const rows: RawRow[] = [];
  let cells: string[] = [];
  let cell = '';
  let quotedFrom: number | null = null;
  let [line, began] = [1, 1];
  const endRow = (): void => {
    rows.push({ line: began, cells: [...cells, cell] });
    [cells, cell, began] = [[], '', line + 1];
  };
  for (let i = 0; i < text.length; i += 1) {
    const sign = text[i]!;
    if (quotedFrom !== null) {
      if (sign === '"' && text[i + 1] === '"') i += 1;
      else if (sign === '"') {
        quotedFrom = null;
        continue;
      }
      if (sign === '\n') line += 1;
      cell += sign;
    } else if (sign === '"' && cell === '') quotedFrom = line;
    else if (sign === ',') {
      cells.push(cell);
      cell = '';
    } else if (sign === '\n') {
      endRow();
      line += 1;
    } else if (sign !== '\r') cell += sign;
  }
  if (quotedFrom !== null) return { openLine: quotedFrom };
  if (cell !== '' || cells.length > 0) endRow();
  return rows;
}
