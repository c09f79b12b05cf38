/**
 * Entries that do not fit with the rest, with the reason and the ways out, under what brought it about: that
 * correction or taking back can be taken back, or the entry itself be corrected or taken back.
 */
import { type ReactNode, useEffect, useState } from 'react';
import { dayOf, type Entry } from '../../../journal/entry.ts';
import type { NoFit } from '../../../journal/no-fit.ts';
import type { Issue } from '../../../numbers/result.ts';
import { formatDay } from '../../../words/format-day.ts';
import { issueText } from '../../../words/issue-text.ts';
import { useText } from '../frame/manner.tsx';
import { noFitting } from '../model/engine.ts';
import { useYard } from '../model/use-yard.tsx';
import { entrySentence } from './entry-sentence.ts';

interface NoFitProps {
  readonly faults: readonly Issue[];
  readonly onCorrect: (entry: Entry) => void;
  readonly onVoid: (entry: Entry) => void;
}

const atOnce = 3;

export function NoFitList({ faults, onCorrect, onVoid }: NoFitProps) {
  const { t } = useText();
  const { entries } = useYard();
  const [found, setFound] = useState<readonly NoFit[] | null>(null);
  useEffect(() => {
    let gone = false;
    noFitting().then(
      (list) => {
        if (!gone) setFound(list);
      },
      // The reasons are known without the engine; only what brought them about is not.
      () => undefined,
    );
    return () => {
      gone = true;
    };
  }, [faults]);
  const byId = new Map(entries.map((entry) => [entry.id, entry]));
  const ids = [...new Set(faults.map(({ entry }) => entry ?? ''))];
  const row = (id: string) => (
    <NoFitRow
      key={id}
      entry={byId.get(id)}
      reasons={faults.filter((fault) => (fault.entry ?? '') === id)}
      onCorrect={onCorrect}
      onVoid={onVoid}
    />
  );
  const { causes, alone } = byCause(ids, found ?? []);
  return (
    <section className="slip">
      <h2>{t('journal.faults', { count: ids.length })}</h2>
      <p>{t('journal.no-fit-about')}</p>
      {found === null ? <p role="status">{t('journal.no-fit-seeking')}</p> : null}
      {[...causes].map(([id, brought]) => {
        const cause = byId.get(id);
        if (cause === undefined) return null;
        return (
          <div key={id}>
            <h3>{t('journal.no-fit-since', { count: brought.length })}</h3>
            <NamedEntry entry={cause} target={byId.get(cause.corrects ?? '')} />
            <div className="acts">
              <button type="button" onClick={() => onVoid(cause)}>
                {t('journal.no-fit-undo')}
              </button>
            </div>
            <p>{t('journal.no-fit-keep')}</p>
            <NoFitRows ids={brought} row={row} />
          </div>
        );
      })}
      <NoFitRows ids={alone} row={row} />
    </section>
  );
}

/** Entries under the newest correction or taking back that brought it about; the rest alone, and all while that is not known. */
function byCause(ids: readonly string[], found: readonly NoFit[]) {
  const causes = new Map<string, string[]>();
  const alone: string[] = [];
  const since = new Map(found.map((one) => [one.entry, one.since[0]]));
  for (const id of ids) {
    const cause = since.get(id);
    if (cause === undefined) alone.push(id);
    else causes.set(cause, [...(causes.get(cause) ?? []), id]);
  }
  return { causes, alone };
}

interface RowsProps {
  readonly ids: readonly string[];
  readonly row: (id: string) => ReactNode;
}

function NoFitRows({ ids, row }: RowsProps) {
  const { t } = useText();
  const [shown, setShown] = useState(atOnce);
  return (
    <>
      <ul className="no-fit">{ids.slice(0, shown).map(row)}</ul>
      {ids.length <= shown ? null : (
        <div className="acts">
          <button type="button" onClick={() => setShown(shown + 4 * atOnce)}>
            {t('journal.more', { count: ids.length - shown })}
          </button>
        </div>
      )}
    </>
  );
}

interface RowProps extends Pick<NoFitProps, 'onCorrect' | 'onVoid'> {
  /** Absent when the fault names no entry that is here. */
  readonly entry: Entry | undefined;
  readonly reasons: readonly Issue[];
}

function NoFitRow({ entry, reasons, onCorrect, onVoid }: RowProps) {
  const { t, manner } = useText();
  return (
    <li>
      {entry === undefined ? null : <NamedEntry entry={entry} />}
      {reasons.map(({ entry: _, ...reason }, n) => (
        <p key={n} className="fault">
          {issueText(reason, manner)}
        </p>
      ))}
      {entry === undefined ? null : (
        <div className="acts">
          <button type="button" onClick={() => onCorrect(entry)}>
            {t('journal.correct')}
          </button>
          <button type="button" onClick={() => onVoid(entry)}>
            {t('journal.void')}
          </button>
        </div>
      )}
    </li>
  );
}

interface NamedProps {
  readonly entry: Entry;
  /** What it corrected or took back. */
  readonly target?: Entry | undefined;
}

function NamedEntry({ entry, target }: NamedProps) {
  const { t, manner } = useText();
  const { aside } = useYard();
  const now = aside.amended[entry.id] ?? entry;
  const sentence = entrySentence(now, aside.names, manner);
  return (
    <p>
      <b>{formatDay(dayOf(now.at), manner)}</b> {sentence}
      {target === undefined ? null : <> {t('journal.no-fit-of', { sentence: entrySentence(target, aside.names, manner) })}</>}
    </p>
  );
}
