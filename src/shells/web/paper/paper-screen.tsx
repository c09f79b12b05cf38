/** What is taken along on paper: one page for whoever looks after the bees meanwhile, and sheets to be filled by pencil. */
import { useState } from 'react';
import { Choices } from '../frame/fields.tsx';
import { useText } from '../frame/manner.tsx';
import { Screen } from '../frame/screen.tsx';
import { useYard } from '../model/use-yard.tsx';
import { CoverSheet } from './cover-sheet.tsx';
import { PencilSheet, sheetPlaces } from './pencil-sheet.tsx';
import { TypeIn } from './type-in.tsx';
import './paper.css';

const coverKey = 'cover';

export function PaperScreen() {
  const { t } = useText();
  const { picture } = useYard();
  const [chosen, setChosen] = useState(coverKey);
  if (picture === null) return null;
  const living = picture.colonies.filter(({ ended }) => ended === null);
  const view = living.find(({ colony }) => colony === chosen) ?? null;
  return (
    <Screen title={t('paper.title')}>
      <div className="paper-choice">
        <Choices
          legend={t('paper.which')}
          value={view === null ? coverKey : chosen}
          onChange={setChosen}
          options={[
            { value: coverKey, label: t('paper.cover') },
            ...living.map(({ colony, name }) => ({ value: colony, label: t('paper.visit', { name }) })),
          ]}
        />
        <button type="button" className="go" onClick={() => window.print()}>
          {t('paper.print')}
        </button>
        <p className="soft">{t('paper.size')}</p>
      </div>
      {view === null ? (
        <CoverSheet picture={picture} />
      ) : (
        <div key={view.colony}>
          <details className="type-in-part">
            <summary>{t('typed.open', { name: view.name })}</summary>
            <TypeIn view={view} places={sheetPlaces(view)} />
          </details>
          <PencilSheet view={view} />
        </div>
      )}
    </Screen>
  );
}
