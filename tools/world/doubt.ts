/** A doubt of the bee scientist, and what all of them read of a visit: eighths of a comb, cells of brood, by round published sizes. */
import type { Day } from '../../src/numbers/day.ts';
import { type CaseVisit, mainSheets, type Sheet } from './case-notes.ts';

export interface Doubt {
  readonly code:
    | 'more than a face'
    | 'stage too early after hiving'
    | 'eggs without a queen'
    | 'brood outlives its queen'
    | 'more brood than a queen lays'
    | 'brood out of season'
    | 'no spring growth'
    | 'no honey from the flow'
    | 'food grew in winter'
    | 'strength out of range'
    | 'bees from nowhere'
    | 'cells out of order'
    | 'swarm without cells'
    | 'visit after the end'
    | 'comb shrank'
    | 'comb too soon'
    | 'opened in the cold'
    | 'brood without a stage';
  readonly entry: string;
  readonly day: Day;
  readonly found: string;
}

/** Both faces of a full comb of the yard: about 8.1 dm2 a face at 427 worker cells. */
export const cellsOfComb = 6950;
export const mostEggs = 2200;
/** A bar of bees, both faces: 1 200 to 2 100 are published for combs of this size. */
export const beesOfBar = 1650;

export function doubt(code: Doubt['code'], at: Sheet | CaseVisit, found: string): Doubt {
  return { code, entry: at.entry.id, day: at.entry.at.slice(0, 10), found };
}

export function broodCellsSeen(visit: CaseVisit): number {
  return mainSheets(visit).reduce((all, sheet) => all + (brood8(sheet) / 8) * cellsOfComb * builtOf(sheet), 0);
}

export function brood8(sheet: Sheet): number {
  return sheet.body.faces.reduce((all, face) => all + (face.brood8 ?? 0), 0) / (sheet.body.faces.length > 1 ? 2 : 1);
}

export function food8(sheet: Sheet): number {
  return sheet.body.faces.reduce((all, face) => all + (face.food8 ?? 0), 0) / (sheet.body.faces.length > 1 ? 2 : 1);
}

export function builtOf(sheet: Sheet): number {
  return (sheet.body.built8 ?? 8) / 8;
}
