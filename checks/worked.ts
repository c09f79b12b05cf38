/** Calculations that checks ask for and that are no sums: each a plain function of numbers, resting on the program's own parts. */
import { printedBook, value } from '../src/figures/book.ts';
import { combFace } from '../src/hive/comb-face.ts';
import { addDays, daysBetween } from '../src/numbers/day.ts';
import { areaMoments, type Point, polygonPerimeter } from '../src/numbers/polygon.ts';
import { foodCourse } from '../src/colony/balance/with-food.ts';
import { queenLoss } from '../src/colony/queen-loss.ts';
import { steadyColony } from '../src/colony/steady-colony.ts';
import { allLive, meanLife } from '../src/colony/survival.ts';

const figure = (key: Parameters<typeof value>[1]): number => value(printedBook, key);

export const worked = {
  /** Eggs of 100 that are at the stage: 1 larva, 2 sealed, 3 adult. */
  'survivors of 100 eggs': ([stage = 0]) =>
    100 *
    [figure('survival-egg-to-larva'), figure('survival-larva-to-sealed'), figure('survival-sealed-to-adult')]
      .slice(0, stage)
      .reduce((a, b) => a * b, 1),
  /** Cells of worker comb on square inches of face, at our density. */
  'worker cells on square inches': ([squareInches = 0]) => squareInches * 0.254 ** 2 * figure('worker-cells-per-dm2'),
  /** Cells and bees of an eighth of a side of 8 dm², at our densities. */
  'worker cells of eighths': ([eighths = 0, sideDm2 = 0]) => (eighths / 8) * sideDm2 * figure('worker-cells-per-dm2'),
  'drone cells of eighths': ([eighths = 0, sideDm2 = 0]) => (eighths / 8) * sideDm2 * figure('drone-cells-per-dm2'),
  'food grams of eighths': ([eighths = 0, sideDm2 = 0]) => (eighths / 8) * sideDm2 * 1000 * figure('food-kg-per-dm2-face'),
  /** Honey on a square decimetre of sealed comb of a thickness in cm, both faces, in kg. */
  'honey of a square decimetre': ([thicknessCm = 0]) => thicknessCm * figure('honey-kg-per-dm2-cm'),
  /** From a queen's egg to her first egg, in days. */
  'queen egg to egg': () => figure('queen-total-days') + figure('queen-first-egg-age'),
  /** Mean life after emerging under our two rates of loss, in days. */
  'mean summer life': () => {
    let alive = 1;
    let life = 0.5;
    for (let day = 1; day < 500; day += 1) {
      alive *= 1 - (day <= figure('house-bee-days') ? figure('house-bee-loss') : figure('forager-loss'));
      life += alive;
    }
    return life;
  },
  /** Days from a loss on the day of the last egg to the latest virgin, 0, or the latest first egg, 1. */
  'latest after a loss': ([which = 0]) => {
    const loss = queenLoss({ earliest: lossDay, latest: lossDay }, printedBook);
    return daysBetween(lossDay, which === 0 ? loss.virginEmerges.latest : loss.firstEggs.latest);
  },
  /** Days from a loss to the earliest virgin. */
  'earliest virgin after a loss': () => {
    const loss = queenLoss({ earliest: lossDay, latest: lossDay }, printedBook);
    return daysBetween(lossDay, loss.virginEmerges.earliest ?? addDays(lossDay, 999));
  },
  /** Combs of bees, both faces full, from one comb of sealed brood. */
  'combs of bees from a sealed comb': () =>
    (figure('worker-cells-per-dm2') * figure('survival-sealed-to-adult')) / figure('bees-per-dm2'),
  /**
   * Greatest relative difference, over area, centroid, second moment and perimeter, between the closed forms and the
   * polygon of the corners: top width, depth, angle, side gap, floor gap.
   */
  'closed form against polygon': ([topWidthMm = 0, depthMm = 0, wallAngleDeg = 0, sideGapMm = 0, floorGapMm = 0]) => {
    const face = combFace({ topWidthMm, depthMm, wallAngleDeg, sideGapMm, floorGapMm });
    if (face === null) return null;
    const [half, bottom, deep] = [face.attachmentMm / 2, face.bottomMm / 2, face.combDepthMm];
    const corners: readonly Point[] = [
      [-half, 0],
      [half, 0],
      [bottom, deep],
      [-bottom, deep],
    ];
    const polygon = areaMoments(corners);
    return Math.max(
      apart(face.faceDm2, polygon.area / 1e4),
      apart(face.centroidMm, polygon.centroid[1]),
      apart(face.secondMomentCm4, polygon.secondMomentX / 1e4),
      apart(face.perimeterMm, polygonPerimeter(corners)),
    );
  },
  /** Brood 0, house bees 1, foragers 2 or food 3 of the published balance with food, from the start that its checks share. */
  'food balance after': ([death = 0, days = 0, which = 0]) => {
    return foodCourse(death, [0, 16000, 8000, 1000], days)[days]?.[which] ?? null;
  },
  /** Eggs 0, larvae 1, sealed brood 2 or bees 3 of a colony that stands still. */
  'steady colony': ([eggs = 0, life = 0, which = 0]) => {
    const colony = steadyColony(eggs, allLive(life), printedBook);
    return [colony.eggs, colony.larvae, colony.sealed, colony.adults][which] ?? null;
  },
  'bees that stand still': ([emerging = 0, life = 0]) => emerging * meanLife(allLive(life)),
} as const satisfies Readonly<Record<string, (input: readonly number[]) => number | null>>;

export type WorkedName = keyof typeof worked;

const lossDay = '2025-05-01';

function apart(a: number, b: number): number {
  return Math.abs(a - b) / Math.abs(b);
}
