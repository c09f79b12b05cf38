/** Bars that can be hung at the chosen place: those taken at this visit, and combs of the yard that hang nowhere. */
import { useText, type Wording } from '../frame/manner.tsx';
import type { Arrangement, Handed } from './arrangement.ts';
import type { Draft } from './draft.ts';
import type { VisitPorts } from './ports.ts';
import { useHand } from './use-session.ts';

interface HangProps {
  readonly draft: Draft;
  readonly now: Arrangement;
  readonly place: number;
}

/** As many as a thumb can choose from. */
const mostShown = 4;

export function Hang({ draft, now, place }: HangProps) {
  const { t } = useText();
  const { move, ports } = useHand();
  const room = now.row.at.has(place) ? 'make way' : 'free';
  const rows = [
    ...now.handed.toReversed().map((one) => {
      return { key: one.entry, label: takenLabel(one, t), what: { kind: 'taken', entry: one.entry } as const };
    }),
    ...awayNow(draft, ports).map((one) => {
      return { key: one.comb, label: awayLabel(one, t), what: { kind: 'comb', comb: one.comb } as const };
    }),
  ].slice(0, mostShown);
  if (rows.length === 0) return null;
  return (
    <>
      <h2>{t(room === 'free' ? 'visiting.moves-hang' : 'visiting.moves-hang-in', { place: String(place) })}</h2>
      <div className="visit-grid visit-grid-2">
        {rows.map(({ key, label, what }) => (
          <button key={key} type="button" onClick={() => move({ do: 'put', place, what, room })}>
            {label}
          </button>
        ))}
      </div>
    </>
  );
}

/** A picture made during the visit may know of what was taken at it, and of what was hung again. */
function awayNow({ moves }: Draft, { away }: VisitPorts): VisitPorts['away'] {
  const ours = new Set(
    moves.flatMap(({ entry, move }) => (move.do === 'put' && move.what.kind === 'comb' ? [move.what.comb] : [entry])),
  );
  return away.filter(({ comb, taken }) => !ours.has(comb) && !ours.has(taken));
}

function takenLabel({ bars, where }: Handed, t: Wording['t']): string {
  const [first] = bars;
  const found = bars.flatMap(({ what }) => (typeof what === 'number' ? what : [])).sort((a, b) => a - b);
  const what =
    bars.length > 1
      ? t('visiting.moves-joined', { places: found.join(', ') })
      : found.length === 1
        ? t('visiting.moves-bar', { place: String(found[0]) })
        : t(first?.bare === true ? 'visiting.moves-bare-bar' : 'visiting.moves-comb');
  return t(`visiting.moves-is.${where}`, { what });
}

function awayLabel({ where, from }: VisitPorts['away'][number], t: Wording['t']): string {
  const what = from === null ? t('visiting.moves-comb') : t('visiting.moves-of', { hive: from.hive, place: String(from.place) });
  return t(`visiting.moves-is.${where}`, { what });
}
