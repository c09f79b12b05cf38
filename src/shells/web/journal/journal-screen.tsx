/** The journal: every entry, newest first, in plain sentences; what was corrected, taken back, in conflict or not understood is shown. */
import { useMemo, useState } from 'react';
import { byOrder } from '../../../journal/order.ts';
import type { Entry } from '../../../journal/entry.ts';
import { Check, TextField } from '../frame/fields.tsx';
import { useText } from '../frame/manner.tsx';
import { Screen } from '../frame/screen.tsx';
import { useYard } from '../model/use-yard.tsx';
import { ConflictList } from './conflict-list.tsx';
import { CorrectSheet, VoidSheet } from './correct-sheet.tsx';
import { EntryRow } from './entry-row.tsx';
import { entrySentence } from './entry-sentence.ts';
import { ExportImport } from './export-import.tsx';
import { NoFitList } from './no-fit-list.tsx';

const atOnce = 60;

export function JournalScreen() {
  const { t, manner } = useText();
  const { entries, aside, picture } = useYard();
  const [shown, setShown] = useState(atOnce);
  const [sought, setSought] = useState('');
  const [withReadings, setWithReadings] = useState(false);
  const [correcting, setCorrecting] = useState<Entry | null>(null);
  const [voiding, setVoiding] = useState<Entry | null>(null);
  const amendments = useMemo(() => groupByTarget(entries), [entries]);
  const newestFirst = useMemo(() => [...entries].sort(byOrder).reverse(), [entries]);
  const rows = useMemo(() => {
    const wanted = sought.trim().toLowerCase();
    return newestFirst.filter(
      (entry) =>
        entry.corrects === undefined &&
        (withReadings || entry.kind !== 'reading') &&
        (wanted === '' ||
          entrySentence(aside.amended[entry.id] ?? entry, aside.names, manner)
            .toLowerCase()
            .includes(wanted) ||
          entry.at.startsWith(wanted)),
    );
  }, [newestFirst, sought, withReadings, aside, manner]);
  const faults = picture?.faults ?? [];
  return (
    <Screen title={t('frame.journal')} aside={t('journal.count', { count: entries.length })}>
      <ExportImport />
      <ConflictList />
      {aside.notUnderstood.length === 0 ? null : (
        <p className="slip">{t('journal.not-understood', { count: aside.notUnderstood.length })}</p>
      )}
      {faults.length === 0 ? null : <NoFitList faults={faults} onCorrect={setCorrecting} onVoid={setVoiding} />}
      <h2>{t('journal.entries')}</h2>
      <TextField label={t('journal.search')} type="search" value={sought} onChange={setSought} />
      <Check label={t('journal.with-readings')} checked={withReadings} onChange={setWithReadings} />
      <ul className="entries">
        {rows.slice(0, shown).map((entry) => (
          <EntryRow
            key={entry.id}
            entry={entry}
            amendments={amendments.get(entry.id) ?? []}
            onCorrect={() => setCorrecting(entry)}
            onVoid={() => setVoiding(entry)}
          />
        ))}
      </ul>
      {rows.length === 0 ? <p>{t('journal.none')}</p> : null}
      {rows.length <= shown ? null : (
        <div className="acts">
          <button type="button" onClick={() => setShown(shown + atOnce)}>
            {t('journal.more', { count: rows.length - shown })}
          </button>
        </div>
      )}
      {correcting === null ? null : (
        <CorrectSheet
          entry={aside.amended[correcting.id] ?? correcting}
          knew={idsOf(amendments, correcting)}
          onClose={() => setCorrecting(null)}
        />
      )}
      {voiding === null ? null : <VoidSheet entry={voiding} knew={idsOf(amendments, voiding)} onClose={() => setVoiding(null)} />}
    </Screen>
  );
}

function groupByTarget(entries: readonly Entry[]): ReadonlyMap<string, readonly Entry[]> {
  const groups = new Map<string, Entry[]>();
  for (const entry of entries) {
    if (entry.corrects === undefined) continue;
    const group = groups.get(entry.corrects);
    if (group === undefined) groups.set(entry.corrects, [entry]);
    else group.push(entry);
  }
  return groups;
}

function idsOf(amendments: ReadonlyMap<string, readonly Entry[]>, entry: Entry): readonly string[] {
  return (amendments.get(entry.id) ?? []).map((one) => one.id);
}
