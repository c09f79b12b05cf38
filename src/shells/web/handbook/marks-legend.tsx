/** The nine contents and the three inks, each with its mark and its word. */
import type { Ink } from '../../../hive/contents.ts';
import { inks, markSample } from '../../../sheets/marks.ts';
import { layerOrder } from '../../../sheets/strip.ts';
import { Drawn } from '../frame/drawn.tsx';
import { useText } from '../frame/manner.tsx';

export function MarksLegend() {
  const { t } = useText();
  return (
    <>
      <ul className="legend">
        {layerOrder.map((content) => (
          <li key={content}>
            <Drawn svg={markSample(content)} className="mark-box" /> {t(`content.${content}`)}
          </li>
        ))}
      </ul>
      <ul className="legend">
        {inks.map((ink: Ink) => (
          <li key={ink}>
            <Drawn svg={markSample('sealed', ink)} className="mark-box" /> {t(`ink.${ink}`)}
          </li>
        ))}
      </ul>
      <p className="soft">{t('legend.beads')}</p>
    </>
  );
}
