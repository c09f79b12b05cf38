/** The journal as a file of JSON lines, out and in. A file is read and told about first; nothing is added until the keeper says so. */
import { type ChangeEvent, useState } from 'react';
import type { TableName } from '../../../apiary/tables.ts';
import type { Entry } from '../../../journal/entry.ts';
import type { Issue } from '../../../numbers/result.ts';
import { issueText } from '../../../words/issue-text.ts';
import { linesOf } from '../../../journal/lines.ts';
import { useText } from '../frame/manner.tsx';
import { readEntries } from '../model/engine.ts';
import type { ReadFile } from '../model/shown.ts';
import { useYard } from '../model/use-yard.tsx';
import { saveFile } from './save-file.ts';
import { takeAll, type Taken } from './take-all.ts';

const shownFaults = 30;

export function ExportImport() {
  const { t, manner } = useText();
  const { entries, take, today, picture } = useYard();
  const [read, setRead] = useState<ReadFile | null>(null);
  const [taken, setTaken] = useState<Taken | null>(null);
  const [reading, setReading] = useState(false);

  async function choose(event: ChangeEvent<HTMLInputElement>): Promise<void> {
    const file = event.target.files?.[0];
    event.target.value = '';
    if (file === undefined) return;
    setTaken(null);
    setReading(true);
    try {
      setRead(await readEntries(await file.text()));
    } finally {
      setReading(false);
    }
  }

  async function add(from: ReadFile): Promise<void> {
    setTaken(await takeAll(from.entries, take));
    setRead(null);
  }

  const known = new Set(entries.map((entry) => entry.id));
  const fresh = read?.entries.filter((entry) => !known.has(entry.id)).length ?? 0;
  const lines = (issues: readonly Issue[]) =>
    issues.slice(0, shownFaults).map((issue, n) => <li key={n}>{issueText(issue, manner)}</li>);
  return (
    <section>
      <div className="acts">
        <button type="button" onClick={() => saveFile(`${picture?.yard?.name ?? 'yard'}-${today}.jsonl`, linesOf(entries))}>
          {t('journal.export')}
        </button>
        <label className="button">
          {t('journal.import')}
          <input
            type="file"
            accept=".jsonl,.json,.txt,application/x-ndjson"
            className="hidden-text"
            onChange={(event) => void choose(event)}
          />
        </label>
        {tableNames.map((name) => (
          <button
            key={name}
            type="button"
            onClick={() => void saveTable(name, entries, `${picture?.yard?.name ?? 'yard'}-${today}`)}
          >
            {t(`journal.table.${name}`)}
          </button>
        ))}
      </div>
      <div role="status">
        {reading ? <p>{t('journal.reading-file')}</p> : null}
        {read === null ? null : (
          <div className="slip">
            <p>{t('journal.file-holds', { fresh, known: read.entries.length - fresh })}</p>
            {read.faults.length === 0 ? null : (
              <>
                <p>{t('journal.file-faults', { count: read.faults.length })}</p>
                <ul>{lines(read.faults)}</ul>
              </>
            )}
            {read.notes.length === 0 ? null : (
              <>
                <p>{t('journal.file-notes', { count: read.notes.length })}</p>
                <ul>{lines(read.notes)}</ul>
              </>
            )}
            <div className="acts">
              <button type="button" className="go" onClick={() => void add(read)} disabled={read.entries.length === 0}>
                {t('journal.add', { count: fresh })}
              </button>
              <button type="button" onClick={() => setRead(null)}>
                {t('frame.leave')}
              </button>
            </div>
          </div>
        )}
        {taken === null ? null : (
          <div className="slip">
            <p>{t('journal.added', { added: taken.added, known: taken.known })}</p>
            {taken.issues.length === 0 ? null : (
              <>
                <p>{t('journal.refused', { count: taken.issues.length })}</p>
                <ul>{lines(taken.issues)}</ul>
              </>
            )}
          </div>
        )}
      </div>
    </section>
  );
}

const tableNames = ['visits', 'faces', 'colonies', 'reigns'] as const satisfies readonly TableName[];

/** What makes tables is fetched when one is asked for. */
async function saveTable(name: TableName, entries: readonly Entry[], file: string): Promise<void> {
  const { csvText, tableOf } = await import('../../../apiary/tables.ts');
  saveFile(`${file}-${name}.csv`, csvText(tableOf(name, entries)), 'text/csv');
}
