/**
 * One comb of the made-up world: two faces, each with its brood by day of age and its food by cell.
 * Counts are in cells and need not be whole; drone cells take the room of 1.7 worker cells.
 */
import { settings } from './settings.ts';

const { brood, comb: size } = settings;

export interface Face {
  /** Worker brood by days since laying, 0…20. */
  readonly worker: number[];
  /** Drone brood in drone cells, 0…23. */
  readonly drone: number[];
  /** Unfertilised eggs and their brood in worker cells, 0…23. */
  readonly misplaced: number[];
  honey: number;
  nectar: number;
  bread: number;
}

export interface WorldComb {
  readonly id: string;
  place: number;
  /** Share of the full outline, 0…1. */
  built: number;
  /** Share of the comb that is built as drone cells. */
  readonly droneShare: number;
  readonly begun: string;
  readonly faces: readonly [Face, Face];
}

export function newComb(id: string, place: number, built: number, droneShare: number, begun: string): WorldComb {
  return { id, place, built, droneShare, begun, faces: [emptyFace(), emptyFace()] };
}

/** One face of the full outline, square decimetres: the trapezoid inside walls, less the bees' own gaps. */
export const faceDm2 = ((): number => {
  const slope = Math.tan((size.wallDeg * Math.PI) / 180);
  const top = size.topMm - (2 * size.sideGapMm) / Math.cos((size.wallDeg * Math.PI) / 180);
  const deep = size.depthMm - size.floorGapMm;
  return (((top + top - 2 * deep * slope) / 2) * deep) / 10000;
})();

/** Worker cells of one face as built. */
export function roomOf(comb: WorldComb): number {
  return faceDm2 * size.cellsPerDm2 * comb.built;
}

export function broodCells(face: Face): number {
  return sum(face.worker) + sum(face.misplaced) + brood.droneArea * sum(face.drone);
}

export function foodCells(face: Face): number {
  return face.honey + face.nectar + face.bread;
}

export function combBrood(comb: WorldComb): number {
  return broodCells(comb.faces[0]) + broodCells(comb.faces[1]);
}

export function combFood(comb: WorldComb): number {
  return foodCells(comb.faces[0]) + foodCells(comb.faces[1]);
}

/** Worker brood of both faces with ages from…to, both included. */
export function workersAged(comb: WorldComb, from: number, to: number): number {
  return sumOf(comb.faces[0].worker, from, to) + sumOf(comb.faces[1].worker, from, to);
}

export interface Emerged {
  readonly workers: number;
  readonly drones: number;
}

/** One day older: losses at hatching and sealing, those of age leave their cells. `care` and `sound` (of the queen's eggs) are 0…1. */
export function ageFace(face: Face, care: number, sound: number): Emerged {
  face.worker[brood.hatchAge - 1] = (face.worker[brood.hatchAge - 1] ?? 0) * sound;
  const workers = shift(face.worker, brood.emergeAge, brood.sealAge, care);
  const drones =
    shift(face.drone, brood.droneEmergeAge, brood.droneSealAge, care) +
    shift(face.misplaced, brood.droneEmergeAge, brood.droneSealAge, care * 0.97);
  return { workers, drones };
}

function shift(cohorts: number[], emergeAge: number, sealAge: number, care: number): number {
  const out = (cohorts[emergeAge - 1] ?? 0) * brood.emerge;
  for (let age = emergeAge - 1; age > 0; age -= 1) cohorts[age] = cohorts[age - 1] ?? 0;
  cohorts[0] = 0;
  cohorts[brood.hatchAge] = (cohorts[brood.hatchAge] ?? 0) * brood.hatch * care;
  cohorts[sealAge] = (cohorts[sealAge] ?? 0) * brood.seal * care;
  return out;
}

export function sum(list: readonly number[]): number {
  return sumOf(list, 0, list.length - 1);
}

/** Of a stretch of the list, both ends included, in its order. */
export function sumOf(list: readonly number[], from: number, to: number): number {
  let all = 0;
  for (let i = from; i <= to; i += 1) all += list[i]!;
  return all;
}

function emptyFace(): Face {
  return {
    worker: new Array<number>(brood.emergeAge).fill(0),
    drone: new Array<number>(brood.droneEmergeAge).fill(0),
    misplaced: new Array<number>(brood.droneEmergeAge).fill(0),
    honey: 0,
    nectar: 0,
    bread: 0,
  };
}
