/** The handbook: first things first, then every figure with its source, the rules, the marks, the signs. All of it can be searched. */
import { useDeferredValue, useMemo, useState } from 'react';
import { type Figure, figures, sources, topics } from '../../../apiary/handbook.ts';
import { TextField } from '../frame/fields.tsx';
import { useText } from '../frame/manner.tsx';
import { Screen } from '../frame/screen.tsx';
import { FigureLine } from './figure-line.tsx';
import { FirstThings } from './first-things.tsx';
import { MarksLegend } from './marks-legend.tsx';
import { OverrideSheet } from './override-sheet.tsx';
import { RuleList } from './rule-list.tsx';
import { SignList } from './sign-list.tsx';

export function HandbookScreen() {
  const { t } = useText();
  const [sought, setSought] = useState('');
  const [changing, setChanging] = useState<Figure | null>(null);
  const wanted = useDeferredValue(sought.trim().toLowerCase());
  const found = useMemo(() => figures.filter((figure) => wanted === '' || haystack(figure).includes(wanted)), [wanted]);
  return (
    <Screen title={t('frame.handbook')}>
      <div role="search">
        <TextField label={t('handbook.search')} type="search" value={sought} onChange={setSought} />
      </div>
      <p className="soft" role="status">
        {wanted === '' ? t('handbook.count', { count: figures.length }) : t('handbook.found', { count: found.length })}
      </p>
      {wanted === '' ? <FirstThings /> : null}
      {topics.map((topic) => {
        const rows = found.filter((figure) => figure.topic === topic);
        if (rows.length === 0) return null;
        const list = rows.map((figure) => <FigureLine key={figure.key} figure={figure} onOverride={setChanging} />);
        return wanted === '' ? (
          <details key={topic} className="chapter">
            <summary>
              {t(`topic.${topic}`)} <span className="soft">{t('handbook.figures', { count: rows.length })}</span>
            </summary>
            {list}
          </details>
        ) : (
          <section key={topic}>
            <h2>{t(`topic.${topic}`)}</h2>
            {list}
          </section>
        );
      })}
      {wanted === '' ? (
        <>
          <details className="chapter">
            <summary>{t('handbook.rules')}</summary>
            <RuleList />
          </details>
          <details className="chapter">
            <summary>{t('handbook.marks')}</summary>
            <MarksLegend />
          </details>
          <details className="chapter">
            <summary>{t('handbook.signs')}</summary>
            <SignList />
          </details>
        </>
      ) : null}
      {changing === null ? null : <OverrideSheet figure={changing} onClose={() => setChanging(null)} />}
    </Screen>
  );
}

function haystack(figure: Figure): string {
  const source = figure.basis.kind === 'source' ? sources[figure.basis.source] : null;
  const of = source === null ? '' : `${source.who} ${source.year} ${source.title}`;
  return `${figure.title} ${figure.topic} ${figure.when} ${figure.note ?? ''} ${figure.key} ${of}`.toLowerCase();
}
