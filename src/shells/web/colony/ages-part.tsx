/** Bees and brood by age, both queens' daughters apart; and when the new queen's daughters take over. */
import type { AgeClass, Foreseen, TurnoverDays } from '../../../colony/foreseen.ts';
import type { ColonyView } from '../../../colony/view.ts';
import { agePyramid } from '../../../sheets/age-pyramid.ts';
import { Drawn } from '../frame/drawn.tsx';
import { useTextSize } from '../frame/drawings.ts';
import { useText, type Wording } from '../frame/manner.tsx';
import { dayPart, windowPart } from '../frame/parts.ts';
import { useWide } from '../frame/wide.ts';

interface AgesProps {
  readonly view: ColonyView;
  readonly foreseen: Foreseen;
}

/** With fewer than one in a hundred left of them, the old queen's daughters are not told apart in words: our choice. */
const leastOld = 0.01;

export function AgesPart({ view, foreseen }: AgesProps) {
  const { t } = useText();
  const wide = useWide();
  const textSize = useTextSize();
  const { adults, brood } = foreseen.ages;
  const [bees, cells] = [sumsOf(adults), sumsOf(brood)];
  const all = bees.old + bees.new + cells.old + cells.new;
  const old = bees.old + cells.old >= leastOld * all;
  return (
    <section>
      <h2>{t('ages.title')}</h2>
      {all < 1 ? <p>{t('ages.none')}</p> : null}
      {all >= 1 ? (
        <>
          <p>{old ? t('ages.both', { bees: shareOf(bees, t), brood: shareOf(cells, t) }) : t('ages.one')}</p>
          <Drawn
            className="drawn pyramid"
            svg={agePyramid(foreseen.ages, {
              width: wide ? 560 : 360,
              height: 230,
              ...(textSize === null ? {} : { textSize: wide ? textSize * 0.9 : textSize }),
              label: t('ages.label', { name: view.name, day: dayPart(view.day) }),
              prefix: 'ages',
              oldWord: old ? t('ages.old') : '',
              newWord: old ? t('ages.new') : '',
              adultsWord: t('ages.bees'),
              broodWord: t('ages.brood'),
              olderWord: t('ages.older'),
              ageLabel: (days) => t('ages.age', { days }),
            })}
          />
          <p className="soft small">{t('ages.key')}</p>
        </>
      ) : null}
      {foreseen.turnover === null ? null : <Turnover turnover={foreseen.turnover} />}
    </section>
  );
}

const turnoverDays = ['laysSince', 'firstDaughters', 'half', 'nineTenths', 'oldHalf', 'oldNineTenths'] as const;

function Turnover({ turnover }: { readonly turnover: TurnoverDays }) {
  const { t } = useText();
  const { dip } = turnover;
  return (
    <>
      <h3>{t('turnover.title')}</h3>
      <dl className="turnover">
        {turnoverDays.map((name) => (
          <div key={name}>
            <dt>{t(`turnover.${name}`)}</dt>
            <dd>{t('turnover.window', { window: windowPart(turnover[name]) })}</dd>
          </div>
        ))}
      </dl>
      <p>{t('turnover.temper', { window: windowPart(turnover.oldHalf) })}</p>
      {dip === null ? null : (
        <p>
          {t('turnover.dip', {
            window: windowPart(dip.window),
            likely: Math.round(dip.share.likely * 10),
            low: Math.round(dip.share.low * 10),
            high: Math.round(dip.share.high * 10),
          })}
        </p>
      )}
    </>
  );
}

interface Sums {
  readonly old: number;
  readonly new: number;
}

function sumsOf(rows: readonly AgeClass[]): Sums {
  return rows.reduce((sums, row) => ({ old: sums.old + row.ofOld, new: sums.new + row.ofNew }), { old: 0, new: 0 });
}

/** The new queen's share, in words. */
function shareOf(sums: Sums, t: Wording['t']): string {
  const all = sums.old + sums.new;
  const tenths = all === 0 ? 0 : Math.round((10 * sums.new) / all);
  if (tenths === 0) return t('ages.share-none');
  return tenths === 10 ? t('ages.share-all') : t('ages.share-about', { n: tenths });
}
