/**
 * What would have been forecast at the end of each visit of a journal, and how right it would have been:
 * `node --import tsx tools/hindcast.ts [JOURNAL] [--out FILE]`. Each forecast sees only the entries noted by then;
 * those that stand in the journal are left out. Prints a line for each thing and time ahead; with `--out` the journal
 * is written with the new forecasts in it.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { readJournal } from '../src/apiary.ts';
import { recordOf } from '../src/apiary/record.ts';
import { recordMethods } from '../src/colony/record.ts';
import type { Entry, Id } from '../src/journal/entry.ts';
import { issuedForecasts } from './demo/issued-forecasts.ts';

const { positionals, values } = parseArgs({ allowPositionals: true, options: { out: { type: 'string' } } });
const entries = readFileSync(positionals[0] ?? 'examples/ferry-road.jsonl', 'utf8')
  .split('\n')
  .filter((line) => line.trim() !== '')
  .map((line) => JSON.parse(line) as Entry);

const own = entries.filter((entry) => entry.kind !== 'forecast-issued');
const all = [...own, ...issuedForecasts(own)];
if (values.out !== undefined) writeFileSync(values.out, `${all.map((entry) => JSON.stringify(entry)).join('\n')}\n`);
report(all);

function report(journal: readonly Entry[]): void {
  const apiary = readJournal(journal);
  const factor = (error: number | null): string => (error === null ? '    –' : error.toFixed(3));
  const line = (name: string, colony: Id | null): void => {
    for (const { what, horizonDays, n, inside, logRmse, isBetter } of recordOf(apiary, colony, null).scores) {
      const errors = recordMethods.map((method) => `${method} ${factor(logRmse[method])}`).join('  ');
      const better = isBetter === null ? 'too few to say' : isBetter ? 'better' : 'no better';
      const share = n === 0 ? '–' : (inside / n).toFixed(2);
      console.log(`${name}  ${what} ${horizonDays} d: n ${n}  inside ${share}  log RMSE: ${errors}  ${better}`);
    }
  };
  line('all', null);
  for (const colony of apiary.state.colonies.values()) line(colony.name, colony.id);
}
