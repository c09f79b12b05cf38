/** A reading of today as a bar of the strip: what the rulers said, and no more than that. */
import { bareShares } from '../../../apiary/visit-terms.ts';
import type { Reading } from '../../../colony/reading.ts';
import type { BarView, ColonyView } from '../../../colony/view.ts';
import type { Shares } from '../../../hive/contents.ts';

export function drawnReading(view: ColonyView, reading: Reading): BarView {
  const before = view.bars.find((bar) => bar.place === reading.place);
  const bare = reading.combClass === 'bare';
  const [face] = reading.faces;
  const told = face !== undefined && (face.brood8 !== null || face.food8 !== null);
  return {
    place: reading.place,
    comb: before?.comb ?? null,
    mark: before?.mark ?? null,
    widthMm: before?.widthMm ?? view.bars[0]?.widthMm ?? 35,
    kind: bare ? 'bare' : told ? 'comb' : 'unknown',
    built: bare ? 0 : reading.combClass === 'building' ? buildingBuilt : builtBefore(before),
    shares: bare ? bareShares : told ? sharesOf(face.brood8 ?? 0, face.food8 ?? 0, reading.combClass === 'mostly drone') : null,
    ink: 'seen',
    bees: null,
    cells: reading.cells,
    queenSeen: reading.queen === 'seen',
    readOn: view.day,
    spot: before?.spot ?? null,
  };
}

/** A comb being built is drawn half: only for the picture, nothing is reckoned from it. */
const buildingBuilt = 0.5;

/** How far it is built was not asked: as it was believed, and whole where nothing was. */
function builtBefore(before: BarView | undefined): number {
  return before === undefined || before.built === 0 ? 1 : before.built;
}

/** The rulers do not tell the stages apart: all brood is drawn as sealed, all food as honey. */
function sharesOf(brood8: number, food8: number, drone: boolean): Shares {
  const brood = brood8 / 8;
  const honey = food8 / 8;
  return {
    ...bareShares,
    empty: Math.max(0, 1 - brood - honey),
    honey,
    ...(drone ? { drone: brood } : { sealed: brood }),
  };
}
