/**
 * Correcting and taking back. The entry itself stays: a correction is a later entry that names it, and
 * says which corrections its writer had seen. What is typed is read by the engine first, field by field.
 */
import { type FormEvent, useEffect, useState } from 'react';
import type { Entry } from '../../../journal/entry.ts';
import { issueText } from '../../../words/issue-text.ts';
import { TextField } from '../frame/fields.tsx';
import { useText } from '../frame/manner.tsx';
import { Sheet } from '../frame/sheet.tsx';
import { newlyUnfitWith, readEntries } from '../model/engine.ts';
import { useYard } from '../model/use-yard.tsx';
import { WriteForm } from '../round/write-forms.tsx';
import { entrySentence } from './entry-sentence.ts';
import { leafName } from './leaf-name.ts';
import { leavesOf, withLeaves } from './leaves.ts';

/** The id of an entry that is only tried. */
const unwritten = 'not written yet';

interface AmendProps {
  readonly entry: Entry;
  readonly knew: readonly string[];
  readonly onClose: () => void;
}

export function CorrectSheet({ entry, knew, onClose }: AmendProps) {
  const { t, manner } = useText();
  const { aside, append } = useYard();
  const leaves = leavesOf(entry.body);
  const [typed, setTyped] = useState<Readonly<Record<string, string>>>({});
  const [at, setAt] = useState(entry.at);
  const [why, setWhy] = useState('');
  const [faults, setFaults] = useState<readonly string[]>([]);
  /** What would not fit any more with the change that was asked about last. */
  const [unfit, setUnfit] = useState<{ readonly change: string; readonly count: number } | null>(null);

  async function keep(event: FormEvent): Promise<void> {
    event.preventDefault();
    if (why.trim() === '') {
      setFaults([t('journal.why-fault')]);
      return;
    }
    const body = withLeaves(entry.body, typed);
    const read = await readEntries(`${JSON.stringify({ ...entry, at: at.trim(), body })}\n`);
    if (read.faults.length > 0) {
      setFaults(
        read.faults.map((fault) =>
          issueText({ code: fault.code, path: fault.path, found: fault.found, expected: fault.expected }, manner),
        ),
      );
      return;
    }
    const change = {
      ...(Object.keys(typed).length === 0 ? {} : { body }),
      ...(at.trim() === entry.at ? {} : { at: at.trim() }),
    };
    const made = { kind: 'correction', corrects: entry.id, body: { ...change, why: why.trim(), knew } };
    const asked = JSON.stringify(change);
    if (unfit?.change !== asked) {
      const { length: count } = await newlyUnfitWith({ ...entry, ...made, version: 1, id: unwritten }).catch(() => []);
      setFaults([]);
      setUnfit(count === 0 ? null : { change: asked, count });
      if (count > 0) return;
    }
    const stored = await append([made]);
    if (stored.ok) onClose();
    else setFaults(stored.issues.map((issue) => issueText(issue, manner)));
  }

  return (
    <Sheet title={t('journal.correct')} onClose={onClose}>
      <p className="soft">{entrySentence(entry, aside.names, manner)}</p>
      <form onSubmit={(event) => void keep(event)} noValidate>
        <TextField label={t('journal.when')} hint={t('journal.when-hint')} value={at} onChange={setAt} />
        {leaves.map(({ path, text }) => (
          <TextField
            key={path}
            label={leafName(path)}
            value={typed[path] ?? text}
            onChange={(value) => setTyped({ ...typed, [path]: value })}
          />
        ))}
        <TextField label={t('journal.why')} value={why} onChange={setWhy} />
        {faults.map((fault) => (
          <p key={fault} className="fault" role="alert">
            {fault}
          </p>
        ))}
        {unfit === null ? null : (
          <p className="fault" role="alert">
            {t('journal.would-not-fit', { count: unfit.count })}
          </p>
        )}
        <div className="acts">
          <button type="submit" className="go">
            {t(unfit === null ? 'journal.keep-correction' : 'journal.keep-all-same')}
          </button>
        </div>
      </form>
    </Sheet>
  );
}

export function VoidSheet({ entry, knew, onClose }: AmendProps) {
  const { t, manner } = useText();
  const { aside } = useYard();
  const [why, setWhy] = useState('');
  const [unfit, setUnfit] = useState(0);
  const seen = knew.join(' ');
  useEffect(() => {
    let gone = false;
    const body = { why: '', knew: seen === '' ? [] : seen.split(' ') };
    newlyUnfitWith({ ...entry, id: unwritten, kind: 'void', version: 1, corrects: entry.id, body }).then(
      (ids) => {
        if (!gone) setUnfit(ids.length);
      },
      () => undefined,
    );
    return () => {
      gone = true;
    };
  }, [entry, seen]);
  return (
    <Sheet title={t('journal.void')} onClose={onClose}>
      <p>{entrySentence(entry, aside.names, manner)}</p>
      <p className="soft">{t('journal.void-line')}</p>
      {unfit === 0 ? null : (
        <p className="fault" role="status">
          {t('journal.would-not-fit', { count: unfit })}
        </p>
      )}
      <WriteForm
        onDone={onClose}
        fault="journal.why-fault"
        notes={() => (why.trim() === '' ? null : [{ kind: 'void', corrects: entry.id, body: { why: why.trim(), knew } }])}
      >
        <TextField label={t('journal.why')} value={why} onChange={setWhy} />
      </WriteForm>
    </Sheet>
  );
}
