/** One figure as the handbook shows it: value, range, unit, when it holds, where it comes from and how sure that is. */
import { type Figure, printed, sources } from '../../../apiary/handbook.ts';
import type { FigureKey } from '../../../apiary/handbook.ts';
import { plainNumber } from '../../../words/format-number.ts';
import { useText } from '../frame/manner.tsx';
import { useYard } from '../model/use-yard.tsx';

interface FigureLineProps {
  readonly figure: Figure;
  /** Absent where the figure can only be read. */
  readonly onOverride?: (figure: Figure) => void;
}

export function FigureLine({ figure, onOverride }: FigureLineProps) {
  const { t } = useText();
  const { overrides } = useYard().aside;
  const own = overrides.findLast((one) => one.key === figure.key) ?? null;
  const { value, low, high } = own ?? figure;
  return (
    <div className="figure" data-own={own !== null}>
      <p>
        <b>{figure.title}:</b> {t('figure.value', { value: plainNumber(value, 4), unit: unitText(figure.unit) })}
        {low === high ? '' : ` ${t('figure.between', { low: plainNumber(low, 4), high: plainNumber(high, 4) })}`}
      </p>
      {own === null ? null : (
        <p>
          {t('figure.own', {
            value: plainNumber(figure.value, 4),
            low: plainNumber(figure.low, 4),
            high: plainNumber(figure.high, 4),
          })}
        </p>
      )}
      <p className="soft small sentence">
        {figure.when === '' ? '' : `${t('figure.when', { when: figure.when })} `}
        {figure.note ?? ''}
      </p>
      <p className="soft small sentence">
        <Basis figure={figure} />
      </p>
      {onOverride === undefined ? null : (
        <button type="button" className="plain small" onClick={() => onOverride(figure)}>
          {t(own === null ? 'figure.set-own' : 'figure.change-own')}
          <span className="hidden-text"> {figure.title}</span>
        </button>
      )}
    </div>
  );
}

function Basis({ figure }: { readonly figure: Figure }) {
  const { t } = useText();
  const { basis } = figure;
  if (basis.kind === 'common practice')
    return (
      <>
        {t('basis.common practice')}
        {basis.note === undefined ? '.' : `: ${basis.note}.`}
      </>
    );
  if (basis.kind === 'our choice') return <>{t('basis.our choice', { why: basis.why })}.</>;
  if (basis.kind === 'derived') {
    const from = basis.from.map((key) => printed(key as FigureKey).title).join('; ');
    return (
      <>
        {t('basis.derived', { how: basis.how })} ({from}).
      </>
    );
  }
  const source = sources[basis.source];
  const doi = 'doi' in source ? source.doi : undefined;
  return (
    <>
      {source.year === null
        ? t('figure.source-undated', { who: source.who, title: source.title, where: source.where })
        : t('basis.source', { who: source.who, year: String(source.year), title: source.title, where: source.where })}
      , {basis.where}; {t(`sureness.${basis.sureness}`)}.
      {doi === undefined ? null : (
        <>
          {' '}
          <a href={`https://doi.org/${doi}`} rel="noreferrer">
            doi:{doi}
          </a>
        </>
      )}
    </>
  );
}

const units: Readonly<Record<string, string>> = {
  degC: '°C',
  deg: '°',
  dm2: 'dm²',
  d: 'days',
  '1/d': 'per day',
  h: 'hours',
  min: 'minutes',
};

export function unitText(unit: string): string {
  return units[unit] ?? unit;
}
