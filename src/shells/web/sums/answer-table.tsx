/** What a sum answered, name by name; lists and records inside it are laid out as they come. */
import type { Answer } from '../../../apiary/sums.ts';
import { isDay } from '../../../numbers/day.ts';
import { formatDay } from '../../../words/format-day.ts';
import { plainNumber } from '../../../words/format-number.ts';
import type { Manner } from '../../../words/say.ts';
import { useText } from '../frame/manner.tsx';

export function AnswerTable({ answer }: { readonly answer: Answer }) {
  const { t, manner } = useText();
  const { assumed, sources: _, ...rest } = answer;
  const rows = Object.entries(rest);
  const stood = Object.entries(typeof assumed === 'object' && assumed !== null ? assumed : {});
  return (
    <>
      <h2>{t('sums.answer')}</h2>
      <table className="answer">
        <tbody>
          {rows.map(([name, value]) => (
            <tr key={name}>
              <th scope="row">{plainName(name)}</th>
              <td>{isRows(value) ? <Rows rows={value} /> : shown(value, t('sums.none'), manner)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {stood.length === 0 ? null : (
        <p className="soft">
          {t('sums.assumed', {
            what: stood.map(([name, value]) => `${plainName(name)} ${shown(value, '–', manner)}`).join(', '),
          })}
        </p>
      )}
    </>
  );
}

type Row = Readonly<Record<string, unknown>>;

/** Records of one shape, a row each. */
function Rows({ rows }: { readonly rows: readonly Row[] }) {
  const { t, manner } = useText();
  const names = Object.keys(rows[0] ?? {});
  return (
    <table>
      <thead>
        <tr>
          {names.map((name) => (
            <th key={name} scope="col">
              {plainName(name)}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map((row, at) => (
          <tr key={at}>
            {names.map((name) => (
              <td key={name}>{shown(row[name], t('sums.none'), manner)}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function isRows(value: unknown): value is readonly Row[] {
  return (
    Array.isArray(value) &&
    value.length > 0 &&
    value.every((one) => typeof one === 'object' && one !== null && !Array.isArray(one))
  );
}

/** "perSidePerDm2" as "per side per dm²": the names of the answer are plain words run together. */
export function plainName(name: string): string {
  return name
    .replace(/([a-z0-9])([A-Z])/g, '$1 $2')
    .toLowerCase()
    .replace(/\bdm2\b/g, 'dm²')
    .replace(/\bcm4\b/g, 'cm⁴')
    .replace(/\b(mm|cm|kg|dm²|cm⁴|l)$/, '($1)')
    .replace(/\(l\)$/, '(L)');
}

function shown(value: unknown, none: string, manner: Manner): string {
  if (value === null || value === undefined) return none;
  if (typeof value === 'number') return plainNumber(value, 4);
  if (isDay(value)) return formatDay(value, manner);
  if (Array.isArray(value)) return value.map((one) => shown(one, none, manner)).join('; ');
  if (typeof value === 'object')
    return Object.entries(value)
      .map(([name, one]) => `${plainName(name)} ${shown(one, none, manner)}`)
      .join(', ');
  return String(value);
}
