/** One sum as a form: its fields in, its answer out, what was assumed for fields left empty, the formula and the sources. */
import { type FormEvent, useState } from 'react';
import type { FigureBook } from '../../../apiary/handbook.ts';
import { type Answer, type Field as SumFieldKind, runSum, type SumHelp } from '../../../apiary/sums.ts';
import type { Issue } from '../../../numbers/result.ts';
import { plainNumber } from '../../../words/format-number.ts';
import { useText } from '../frame/manner.tsx';
import { FigureLine } from '../handbook/figure-line.tsx';
import { AnswerTable } from './answer-table.tsx';
import { inputOf, limits, SumField, type Typed } from './sum-field.tsx';

interface SumFormProps {
  readonly help: SumHelp;
  readonly book: FigureBook;
}

export function SumForm({ help, book }: SumFormProps) {
  const { t } = useText();
  const [typed, setTyped] = useState<Typed>({ texts: {}, rows: {} });
  const [issues, setIssues] = useState<readonly Issue[]>([]);
  const [answer, setAnswer] = useState<Answer | null>(null);

  function work(event: FormEvent): void {
    event.preventDefault();
    const input = inputOf(
      help.fields.map(({ field }) => field),
      typed,
    );
    const done = runSum(help.key, input, book);
    setIssues(done.ok ? [] : done.issues);
    setAnswer(done.ok ? done.value : null);
  }

  const placed = new Set(help.fields.map(({ field }) => field.name));
  return (
    <>
      <form onSubmit={work} noValidate>
        {help.fields.map(({ field, standIn, required }) => {
          const hints = [
            limits(field, t),
            field.oneOf === undefined ? null : t('sums.one-of', { fields: others(help, field).join(', ') }),
            standIn === null
              ? required
                ? null
                : t('sums.may-be-empty')
              : t('sums.stand-in', { value: plainNumber(standIn.value, 4) }),
          ]
            .filter((hint) => hint !== null)
            .join(' ');
          return (
            <SumField
              key={field.name}
              field={field}
              path={field.name}
              hint={hints === '' ? undefined : hints}
              typed={typed}
              onType={setTyped}
              issues={issues}
            />
          );
        })}
        {issues
          .filter((one) => ![...placed].some((name) => one.path === name || one.path.startsWith(`${name}.`)))
          .map((one) => (
            <p key={one.path + one.code} className="fault" role="alert">
              {t('sums.fault', { found: one.found, expected: one.expected })}
            </p>
          ))}
        <div className="acts">
          <button type="submit" className="go">
            {t('sums.work-out')}
          </button>
        </div>
      </form>
      <div aria-live="polite">{answer === null ? null : <AnswerTable answer={answer} />}</div>
      <h2>{t('sums.formula')}</h2>
      <p className="formula">{help.formula}</p>
      {help.sources.length === 0 ? null : (
        <details>
          <summary>{t('sums.sources', { count: help.sources.length })}</summary>
          {help.sources.map((figure) => (
            <FigureLine key={figure.key} figure={figure} />
          ))}
        </details>
      )}
    </>
  );
}

function others(help: SumHelp, field: SumFieldKind): readonly string[] {
  return help.fields
    .filter((one) => one.field.oneOf === field.oneOf && one.field.name !== field.name)
    .map((one) => one.field.about);
}
