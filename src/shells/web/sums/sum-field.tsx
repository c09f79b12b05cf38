/**
 * One field of a sum on the screen, whatever its kind. Fields of a record stand in a frame of their own, and a list
 * of records is rows of such frames that can be added and taken away. What is typed is kept by the way to the field.
 */
import type { Field as SumFieldKind } from '../../../apiary/sums.ts';
import type { Issue } from '../../../numbers/result.ts';
import { plainNumber } from '../../../words/format-number.ts';
import { Field, numberOf, TextField } from '../frame/fields.tsx';
import { useText } from '../frame/manner.tsx';

/** Texts and numbers of rows by the way to the field: `days.2.cells.open`. */
export interface Typed {
  readonly texts: Readonly<Record<string, string>>;
  readonly rows: Readonly<Record<string, number>>;
}

interface SumFieldProps {
  readonly field: SumFieldKind;
  readonly path: string;
  readonly hint: string | undefined;
  readonly typed: Typed;
  readonly onType: (typed: Typed) => void;
  readonly issues: readonly Issue[];
}

export function SumField(props: SumFieldProps) {
  const { field, path, hint, typed, onType, issues } = props;
  const { t } = useText();
  if (field.kind === 'record' || field.kind === 'records') return <RecordFrames {...props} field={field} />;
  const issue = issues.find((one) => one.path === path || (field.kind === 'numbers' && one.path.startsWith(`${path}.`)));
  const fault = issue === undefined ? undefined : t('sums.fault', { found: issue.found, expected: issue.expected });
  const value = typed.texts[path] ?? '';
  const set = (text: string) => onType({ ...typed, texts: { ...typed.texts, [path]: text } });
  if (field.kind === 'choice' || field.kind === 'flag') {
    const yesNo = [
      [yes, t('sums.yes')],
      [no, t('sums.no')],
    ] as const;
    const choices = field.kind === 'flag' ? yesNo : field.choices.map((one) => [one, one] as const);
    return (
      <Field label={field.about} hint={hint} fault={fault}>
        {(ids) => (
          <select {...ids} value={value} onChange={(event) => set(event.target.value)}>
            <option value="">{t('sums.choose')}</option>
            {choices.map(([key, shown]) => (
              <option key={key} value={key}>
                {shown}
              </option>
            ))}
          </select>
        )}
      </Field>
    );
  }
  return (
    <TextField
      label={field.about}
      hint={hint}
      fault={fault}
      value={value}
      onChange={set}
      type={field.kind === 'day' ? 'date' : 'text'}
      unit={'unit' in field ? field.unit : undefined}
      inputMode={'unit' in field && field.kind !== 'numbers' && field.low >= 0 ? 'decimal' : 'text'}
    />
  );
}

type FramedProps = Omit<SumFieldProps, 'field'> & {
  readonly field: Extract<SumFieldKind, { readonly of: readonly SumFieldKind[] }>;
};

function RecordFrames({ field, path, hint, typed, onType, issues }: FramedProps) {
  const { t } = useText();
  const own = issues.find((one) => one.path === path);
  const rows = rowsOf(typed, path);
  const setRows = (many: number) => onType({ ...typed, rows: { ...typed.rows, [path]: many } });
  const frame = (at: string, legend: string) => (
    <fieldset key={at}>
      <legend>{legend}</legend>
      {field.of.map((one) => (
        <SumField
          key={one.name}
          field={one}
          path={`${at}.${one.name}`}
          hint={limits(one, t) ?? undefined}
          typed={typed}
          onType={onType}
          issues={issues}
        />
      ))}
    </fieldset>
  );
  return (
    <>
      {field.kind === 'record' ? frame(path, field.about) : <p>{field.about}</p>}
      {hint === undefined ? null : <p className="hint">{hint}</p>}
      {field.kind === 'record'
        ? null
        : Array.from({ length: rows }, (_, row) => frame(`${path}.${row}`, t('sums.row', { row: row + 1 })))}
      {own === undefined ? null : (
        <p className="fault" role="alert">
          {t('sums.fault', { found: own.found, expected: own.expected })}
        </p>
      )}
      {field.kind === 'record' ? null : (
        <div className="acts">
          <button type="button" onClick={() => setRows(rows + 1)}>
            {t('sums.add-row')}
          </button>
          {rows === 0 ? null : (
            <button type="button" onClick={() => setRows(rows - 1)}>
              {t('sums.drop-row')}
            </button>
          )}
        </div>
      )}
    </>
  );
}

/** What was typed as the input of the sum: fields left empty are left out. */
export function inputOf(fields: readonly SumFieldKind[], typed: Typed, before = ''): Readonly<Record<string, unknown>> {
  return Object.fromEntries(
    fields.flatMap((field): readonly (readonly [string, unknown])[] => {
      const path = before + field.name;
      if (field.kind === 'record') {
        const inside = inputOf(field.of, typed, `${path}.`);
        return Object.keys(inside).length === 0 ? [] : [[field.name, inside]];
      }
      if (field.kind === 'records') {
        const rows = Array.from({ length: rowsOf(typed, path) }, (_, row) => inputOf(field.of, typed, `${path}.${row}.`));
        return [[field.name, rows]];
      }
      const text = typed.texts[path]?.trim() ?? '';
      return text === '' ? [] : [[field.name, valueOf(field, text)]];
    }),
  );
}

export function limits(field: SumFieldKind, t: ReturnType<typeof useText>['t']): string | null {
  if (field.kind === 'numbers') return t('sums.several', { low: plainNumber(field.low), high: plainNumber(field.high) });
  if (field.kind !== 'number' && field.kind !== 'integer') return null;
  return t('sums.limits', { low: plainNumber(field.low), high: plainNumber(field.high) });
}

const yes = 'yes';
const no = 'no';

function rowsOf(typed: Typed, path: string): number {
  return typed.rows[path] ?? 1;
}

function valueOf(field: SumFieldKind, text: string): unknown {
  if (field.kind === 'number' || field.kind === 'integer') return numberOf(text) ?? text;
  if (field.kind === 'flag') return text === yes;
  if (field.kind === 'numbers')
    return text
      .split(/[\s;]+|,\s+/)
      .filter((part) => part !== '')
      .map((part) => numberOf(part) ?? part);
  return text;
}
