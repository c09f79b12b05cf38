/** A filled sheet is typed in: a row a bar, kept at every key, written when all of it is understood. */
import { type FormEvent, useEffect, useState } from 'react';
import { Link } from 'wouter';
import type { ColonyView } from '../../../colony/view.ts';
import type { Issue } from '../../../numbers/result.ts';
import { isDay } from '../../../numbers/day.ts';
import { issueText } from '../../../words/issue-text.ts';
import { Choices, TextField } from '../frame/fields.tsx';
import { useText } from '../frame/manner.tsx';
import { instantOf } from '../model/clock.ts';
import { newId } from '../model/notes.ts';
import { useYard } from '../model/use-yard.tsx';
import { freeRow, sheetEntries, type TypedField, typedFields, type TypedRow } from './typed-sheet.ts';

interface Typed {
  readonly day: string;
  readonly by: string;
  readonly rows: readonly (readonly [number, TypedRow])[];
}

export function TypeIn({ view, places }: { readonly view: ColonyView; readonly places: readonly number[] }) {
  const { t, manner } = useText();
  const { yard, today, observer, aside, take, drafts } = useYard();
  const key = `typed:${view.colony}`;
  const empty: Typed = { day: today, by: observer, rows: places.map((place) => [place, freeRow]) };
  const [typed, setTyped] = useState<Typed>(empty);
  const [issues, setIssues] = useState<readonly Issue[]>([]);
  const [done, setDone] = useState(false);
  useEffect(() => {
    void drafts.get(key).then((kept) => {
      if (isTyped(kept)) setTyped(kept);
    });
  }, [drafts, key]);

  function change(next: Typed): void {
    setTyped(next);
    setDone(false);
    void drafts.put(key, next).catch(() => undefined);
  }

  function setField(place: number, field: TypedField, value: string): void {
    change({ ...typed, rows: typed.rows.map(([at, row]) => [at, at === place ? { ...row, [field]: value } : row]) });
  }

  async function keep(event: FormEvent): Promise<void> {
    event.preventDefault();
    const { day, by } = typed;
    const dayIssue = { code: 'not-understood', path: t('pencil.date'), found: day, expected: `a day up to ${today}` };
    if (!isDay(day) || day > today) return setIssues([dayIssue]);
    const visit = newId();
    const sentence = t('typed.sentence', { name: view.name });
    const made = sheetEntries({ day, rows: new Map(typed.rows) }, { visit, colony: view.colony, hive: view.hive, sentence });
    if (!made.ok) return setIssues(made.issues);
    const noted = instantOf(new Date());
    const entry = (kind: string, body: unknown) => ({ id: newId(), yard, at: day, noted, by, kind, version: 1, body });
    const notes = made.value.notes.map(({ place, text }) =>
      entry('note', { about: view.colony, text: t('visiting.note-text', { place: String(place), text }) }),
    );
    const stored = await take([
      ...made.value.readings.map((body) => entry('reading', body)),
      ...notes,
      entry('visit', made.value.visit),
    ]);
    if (!stored.ok) return setIssues(stored.issues);
    await drafts.remove(key).catch(() => undefined);
    setIssues([]);
    setTyped(empty);
    setDone(true);
  }

  return (
    <form className="type-in" onSubmit={(event) => void keep(event)} noValidate>
      <h2>{t('typed.title', { name: view.name })}</h2>
      <p>
        {t('pencil.letters')} {t('pencil.letters-youngest')} {t('typed.about')}
      </p>
      <TextField label={t('pencil.date')} type="date" value={typed.day} onChange={(day) => change({ ...typed, day })} />
      <Choices
        legend={t('pencil.by')}
        value={typed.by}
        onChange={(by) => change({ ...typed, by })}
        options={aside.observers.map(({ id, name }) => ({ value: id, label: name }))}
      />
      <div className="typed-rows">
        <table>
          <thead>
            <tr>
              <th scope="col">{t('pencil.place')}</th>
              {typedFields.map((field) => (
                <th key={field} scope="col">
                  {t(`pencil.${field}`)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {typed.rows.map(([place, row]) => (
              <tr key={place}>
                <th scope="row">{place}</th>
                {typedFields.map((field) => (
                  <td key={field}>
                    <input
                      className={field}
                      value={row[field]}
                      maxLength={field === 'note' ? 600 : 8}
                      autoComplete="off"
                      aria-label={t('typed.field', { place, field: t(`pencil.${field}`) })}
                      onChange={(event) => setField(place, field, event.target.value)}
                    />
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {issues.map((issue) => (
        <p key={`${issue.path} ${issue.found}`} className="fault" role="alert">
          {issueText(issue, manner)}
        </p>
      ))}
      {done ? (
        <p role="status">
          {t('typed.done')} <Link href={`/colony/${view.colony}`}>{t('typed.to-colony', { name: view.name })}</Link>
        </p>
      ) : null}
      <button type="submit" className="go">
        {t('typed.keep')}
      </button>
    </form>
  );
}

function isTyped(kept: unknown): kept is Typed {
  const typed = kept as Partial<Typed> | null;
  return typeof typed === 'object' && typed !== null && typeof typed.day === 'string' && Array.isArray(typed.rows);
}
