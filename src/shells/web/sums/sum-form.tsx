/** One sum as a form: its fields in, its answer out, what was assumed for fields left empty, the formula and the sources. */
import { type FormEvent, useState } from 'react';
import type { FigureBook } from '../../../apiary/handbook.ts';
import { type Answer, type Field as SumField, runSum, type SumHelp } from '../../../apiary/sums.ts';
import type { Issue } from '../../../numbers/result.ts';
import { plainNumber } from '../../../words/format-number.ts';
import { Field, numberOf, TextField } from '../frame/fields.tsx';
import { useText } from '../frame/manner.tsx';
import { FigureLine } from '../handbook/figure-line.tsx';
import { AnswerTable } from './answer-table.tsx';

interface SumFormProps {
  readonly help: SumHelp;
  readonly book: FigureBook;
}

export function SumForm({ help, book }: SumFormProps) {
  const { t } = useText();
  const [typed, setTyped] = useState<Readonly<Record<string, string>>>({});
  const [issues, setIssues] = useState<readonly Issue[]>([]);
  const [answer, setAnswer] = useState<Answer | null>(null);

  function work(event: FormEvent): void {
    event.preventDefault();
    const input = Object.fromEntries(
      help.fields.flatMap(({ field }) => {
        const text = typed[field.name]?.trim() ?? '';
        return text === '' ? [] : [[field.name, valueOf(field, text)]];
      }),
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
          const issue = issues.find((one) => one.path === field.name || one.path.startsWith(`${field.name}.`));
          const fault = issue === undefined ? undefined : t('sums.fault', { found: issue.found, expected: issue.expected });
          const value = typed[field.name] ?? '';
          const set = (text: string) => setTyped({ ...typed, [field.name]: text });
          if (field.kind === 'choice') {
            return (
              <Field key={field.name} label={field.about} hint={hints === '' ? undefined : hints} fault={fault}>
                {(ids) => (
                  <select {...ids} value={value} onChange={(event) => set(event.target.value)}>
                    <option value="">{t('sums.choose')}</option>
                    {field.choices.map((choice) => (
                      <option key={choice} value={choice}>
                        {choice}
                      </option>
                    ))}
                  </select>
                )}
              </Field>
            );
          }
          return (
            <TextField
              key={field.name}
              label={field.about}
              hint={hints === '' ? undefined : hints}
              fault={fault}
              value={value}
              onChange={set}
              type={field.kind === 'day' ? 'date' : 'text'}
              unit={field.kind === 'day' ? undefined : field.unit}
              inputMode={field.kind === 'numbers' || (field.kind !== 'day' && field.low < 0) ? 'text' : 'decimal'}
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

function valueOf(field: SumField, text: string): unknown {
  if (field.kind === 'number' || field.kind === 'integer') return numberOf(text) ?? text;
  if (field.kind === 'numbers')
    return text
      .split(/[\s;]+|,\s+/)
      .filter((part) => part !== '')
      .map((part) => numberOf(part) ?? part);
  return text;
}

function limits(field: SumField, t: ReturnType<typeof useText>['t']): string | null {
  if (field.kind === 'numbers') return t('sums.several', { low: plainNumber(field.low), high: plainNumber(field.high) });
  if (field.kind !== 'number' && field.kind !== 'integer') return null;
  return t('sums.limits', { low: plainNumber(field.low), high: plainNumber(field.high) });
}

function others(help: SumHelp, field: SumField): readonly string[] {
  return help.fields
    .filter((one) => one.field.oneOf === field.oneOf && one.field.name !== field.name)
    .map((one) => one.field.about);
}
