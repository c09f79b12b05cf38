/** A sheet for one visit, to be filled at the hive: the rulers and facts of the screen, a row a bar; and two faces to draw on. */
import type { ColonyView } from '../../../colony/view.ts';
import { blankStrip, pencilRuler } from '../../../sheets/paper.ts';
import { faceScale, paperRuler, pencilFace } from '../../../sheets/pencil.ts';
import { Drawn } from '../frame/drawn.tsx';
import { useDrawings } from '../frame/drawings.ts';
import { useText } from '../frame/manner.tsx';

const heads = ['place', 'mark', 'brood', 'food', 'eggs', 'youngest', 'cells', 'queen', 'note'] as const;
/** Bars beyond the follower board that may be given at the visit. */
const spare = 2;

/** Bars of the bay, and a few beyond the follower board. */
export function sheetPlaces({ bay, hiveBars }: ColonyView): readonly number[] {
  return Array.from({ length: Math.min(hiveBars, bay.to + spare) - bay.from + 1 }, (_, i) => bay.from + i);
}

export function PencilSheet({ view }: { readonly view: ColonyView }) {
  const { t } = useText();
  const { troughOf } = useDrawings();
  const trough = troughOf(view.hive);
  const scale = faceScale(trough);
  const places = sheetPlaces(view);
  const marks = new Map(view.bars.map(({ place, mark }) => [place, mark]));
  const names = { ...trough, size: 'A4', language: 'en', entrance: view.entrance, prefix: 'pencil' } as const;
  return (
    <>
      <article className="paper-sheet pencil-sheet">
        <h2>{t('pencil.title', { name: view.name })}</h2>
        <p className="pencil-head">
          {(['date', 'hours', 'by'] as const).map((what) => (
            <span key={what}>
              {t(`pencil.${what}`)} <span className="write-on">&nbsp;</span>
            </span>
          ))}
        </p>
        <Drawn svg={blankStrip(view.hiveBars, t('pencil.strip'), names)} />
        <table>
          <thead>
            <tr>
              {heads.map((head) => (
                <th key={head} scope="col">
                  {t(`pencil.${head}`)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {places.map((place) => (
              <tr key={place}>
                <th scope="row">{place}</th>
                <td>{marks.get(place) ?? ''}</td>
                <td>
                  <Drawn svg={pencilRuler()} />
                </td>
                <td>
                  <Drawn svg={pencilRuler()} />
                </td>
                <td />
                <td />
                <td />
                <td />
                <td />
              </tr>
            ))}
          </tbody>
        </table>
        <p>
          {t('pencil.letters')} {t('pencil.letters-youngest')}
        </p>
        <p className="pencil-head">
          {(['follower', 'bees', 'temper'] as const).map((what) => (
            <span key={what}>
              {t(`pencil.${what}`)} <span className="write-on">&nbsp;</span>
            </span>
          ))}
        </p>
      </article>
      <article className="paper-sheet pencil-faces">
        <h2>{t('pencil.faces', { name: view.name, scale })}</h2>
        {(['first', 'last'] as const).map((side) => (
          <div key={side}>
            <p>
              {t(`pencil.face-${side}`)} <span className="write-on">&nbsp;</span>
            </p>
            <Drawn svg={pencilFace(trough, scale, t(`pencil.face-${side}`))} />
          </div>
        ))}
        <p>{t('pencil.ruler')}</p>
        <Drawn svg={paperRuler(t('pencil.ruler'))} />
      </article>
    </>
  );
}
