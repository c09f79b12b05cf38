/** The few kinds of things that forms are made of: a labelled field, a number with its unit, one of several, yes or no. */
import { type ReactNode, useId } from 'react';

interface FieldProps {
  readonly label: string;
  readonly hint?: string | undefined;
  readonly fault?: string | undefined;
  readonly children: (ids: {
    readonly id: string;
    readonly 'aria-describedby': string | undefined;
    readonly 'aria-invalid': boolean;
  }) => ReactNode;
}

export function Field({ label, hint, fault, children }: FieldProps) {
  const id = useId();
  const described = [hint === undefined ? '' : `${id}-hint`, fault === undefined ? '' : `${id}-fault`].join(' ').trim();
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      {children({
        id,
        'aria-describedby': described === '' ? undefined : described,
        'aria-invalid': fault !== undefined,
      })}
      {hint === undefined ? null : (
        <p className="hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      {fault === undefined ? null : (
        <p className="fault" id={`${id}-fault`} role="alert">
          {fault}
        </p>
      )}
    </div>
  );
}

interface TextFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly hint?: string | undefined;
  readonly fault?: string | undefined;
  readonly type?: 'text' | 'date' | 'tel' | 'search';
  readonly unit?: string | undefined;
  readonly inputMode?: 'decimal' | 'numeric' | 'text' | 'tel';
  readonly autoComplete?: string;
  readonly long?: boolean;
}

export function TextField(props: TextFieldProps) {
  const { label, value, onChange, hint, fault, type = 'text', unit, inputMode, autoComplete = 'off', long = false } = props;
  const numeric = inputMode === 'decimal' || inputMode === 'numeric';
  return (
    <Field label={label} hint={hint} fault={fault}>
      {(ids) =>
        long ? (
          <textarea {...ids} value={value} onChange={(event) => onChange(event.target.value)} />
        ) : (
          <span className="typed">
            <input
              {...ids}
              type={type}
              value={value}
              inputMode={inputMode}
              autoComplete={autoComplete}
              className={numeric ? 'number' : undefined}
              onChange={(event) => onChange(event.target.value)}
            />
            {unit === undefined ? null : <span>{unit}</span>}
          </span>
        )
      }
    </Field>
  );
}

interface ChoicesProps<T extends string | number> {
  readonly legend: string;
  readonly value: T | null;
  readonly options: readonly { readonly value: T; readonly label: string }[];
  readonly onChange: (value: T) => void;
}

/** One of a few: all of them in view, each large enough for a thumb. */
export function Choices<T extends string | number>({ legend, value, options, onChange }: ChoicesProps<T>) {
  const name = useId();
  return (
    <fieldset>
      <legend>{legend}</legend>
      <div className="choices">
        {options.map((option) => (
          <label key={option.value}>
            <input type="radio" name={name} checked={option.value === value} onChange={() => onChange(option.value)} />
            <span>{option.label}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}

interface CheckProps {
  readonly label: string;
  readonly checked: boolean;
  readonly onChange: (checked: boolean) => void;
}

export function Check({ label, checked, onChange }: CheckProps) {
  return (
    <label className="check">
      <input type="checkbox" checked={checked} onChange={(event) => onChange(event.target.checked)} />
      <span>{label}</span>
    </label>
  );
}

/** What was typed as a number, a comma taken for the point; null when it is none. */
export function numberOf(typed: string): number | null {
  const plain = typed.trim().replace(',', '.');
  if (!/^[-+]?\d+(\.\d+)?$/.test(plain)) return null;
  return Number(plain);
}
