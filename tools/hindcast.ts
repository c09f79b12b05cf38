/**
 * What would have been forecast at the end of each visit of a journal, and how right it would have been:
 * `node --import tsx tools/hindcast.ts [JOURNAL] [--out FILE]`. Each forecast sees only the entries of its day and
 * before. Prints a line for each thing and time ahead; with `--out` the journal is written with the forecasts in it.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { readJournal } from '../src/apiary.ts';
import { foreseeColony, type KeptColony } from '../src/apiary/foresee.ts';
import { digestOf, forecastIssued } from '../src/apiary/issued.ts';
import { recordOf } from '../src/apiary/record.ts';
import { recordMethods } from '../src/colony/record.ts';
import { dayOf, type Entry, type Id } from '../src/journal/entry.ts';
import { deriveId } from '../src/journal/derive-id.ts';

const { positionals, values } = parseArgs({ allowPositionals: true, options: { out: { type: 'string' } } });
const entries = readFileSync(positionals[0] ?? 'examples/ferry-road.jsonl', 'utf8')
  .split('\n')
  .filter((line) => line.trim() !== '')
  .map((line) => JSON.parse(line) as Entry);

const issued = forecastsOf(entries);
const all = [...entries, ...issued];
if (values.out !== undefined) writeFileSync(values.out, `${all.map((entry) => JSON.stringify(entry)).join('\n')}\n`);
report(all);

function forecastsOf(journal: readonly Entry[]): readonly Entry[] {
  const kept = new Map<Id, KeptColony>();
  const visits = journal.filter((entry) => entry.kind === 'visit').sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0));
  return visits.flatMap((visit, i): Entry[] => {
    const day = dayOf(visit.at);
    const { colony } = visit.body as { readonly colony: Id };
    // Of two visits of one day the later one issues.
    if (visits.slice(i + 1).some((other) => dayOf(other.at) === day && (other.body as { colony: Id }).colony === colony))
      return [];
    const apiary = readJournal(journal, day);
    const made = foreseeColony(apiary, colony, day, kept.get(colony) ?? null);
    if (made === null) return [];
    if (made.kept !== null) kept.set(colony, made.kept);
    const body = forecastIssued(apiary, colony, day, digestOf([]), made.foreseen);
    const id = deriveId('hindcast', { visit: visit.id, body });
    return [{ id, yard: visit.yard, at: day, noted: visit.noted, by: visit.by, kind: 'forecast-issued', version: 1, body }];
  });
}

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
