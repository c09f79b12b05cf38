/**
 * Turns the published autumn counts (examples/fall-colony-strength.csv) into the form that is scored. Their
 * dates have no year, so one is put; no rounds are given, for bees were not counted on all five days.
 * `node --import tsx tools/score/d1.ts > COUNTS.csv`.
 */
import { readFileSync } from 'node:fs';
import { argv } from 'node:process';
import { pathToFileURL } from 'node:url';
import { addDays } from '../../src/numbers/day.ts';
import { readCsv } from './csv.ts';

/** The year is not told; only that autumn comes before winter matters. */
const year = 2021;
const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];
const firstMonth = 8;

export function scoredForm(text: string): string {
  const table = readCsv(text, 'counts');
  if (!table.ok) throw new Error(table.issues.map(({ path, found }) => `${path}: ${found}`).join('\n'));
  const lines = table.value.rows.map(({ line, cells }) => {
    const found = /^(\d{1,2})-([A-Z][a-z]{2})$/.exec(cells['date_dd_mon'] ?? '');
    const month = months.indexOf(found?.[2] ?? '');
    if (found === null || month < 0)
      throw new Error(`line ${line}, column date_dd_mon: ${cells['date_dd_mon']}; a day like 14-Oct`);
    const first = `${month >= firstMonth ? year : year + 1}-${String(month + 1).padStart(2, '0')}-01`;
    const date = addDays(first, Number(found[1]) - 1);
    return [cells['colony'], date, cells['adult_bees'], cells['capped_worker_cells']].join(',');
  });
  return ['colony,date,adult_bees,capped_worker_cells', ...lines].join('\n');
}

if (import.meta.url === pathToFileURL(argv[1] ?? '').href) {
  console.log(scoredForm(readFileSync(argv[2] ?? 'examples/fall-colony-strength.csv', 'utf8')));
}
