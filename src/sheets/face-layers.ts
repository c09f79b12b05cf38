/**
 * Where the contents of a face lie when only their shares are known: food arches over the brood, brood
 * in rings with the oldest inside, drone in the lower corners, empty cells in what is left. Cuts are
 * chosen so that the areas are the shares; the places are a guess, and drawn as one.
 */
import type { Content, Shares } from '../hive/contents.ts';
import { type Outline, widthAt } from '../hive/outline.ts';

export interface FaceLayers {
  /** Lower edge of each food at the middle of the face; it sinks toward the ends of the bar by `archMm`. */
  readonly food: readonly { readonly kind: Content; readonly toMm: number }[];
  readonly archMm: number;
  /** Ellipses around one centre, the largest first: semi-axes are `ratio` × and 1 × the radius. */
  readonly brood: readonly { readonly kind: Content; readonly radiusMm: number }[];
  readonly centreMm: number;
  readonly ratio: number;
  /** Drone fills what is under this depth at the middle, and rises by `riseMm` toward the sides; null without drone. */
  readonly droneFromMm: number | null;
  readonly riseMm: number;
  /** Half of the length over which arches are measured. */
  readonly halfMm: number;
}

interface Spot {
  readonly x: number;
  readonly y: number;
}

const foodOrder = ['honey', 'nectar', 'bread'] as const;
const broodOutward = ['emerging', 'sealed', 'larva', 'egg'] as const;
/** Steps of the grid that areas are measured on. */
const steps = 110;
/** Form of the arches and rings: our choice, by eye. */
const archShare = 0.16;
const riseShare = 0.7;
const ratio = 1.35;

/** Layers whose areas inside the outline are the shares; the outline must have something built. */
export function faceLayers(outline: Outline, fullHalfMm: number, shares: Shares): FaceLayers {
  const spots = gridOf(outline);
  const archMm = outline.depthMm * archShare;
  const riseMm = outline.depthMm * riseShare;
  const sag = (spot: Spot) => (spot.x / fullHalfMm) ** 2;
  const food = cut(
    spots,
    (spot) => spot.y - archMm * sag(spot),
    foodOrder.map((kind) => [kind, shares[kind]]),
    spots.length,
  );
  const drone = cut(food.rest, (spot) => -(spot.y + riseMm * sag(spot)), [['drone', shares.drone]], spots.length);
  const centreMm = mean(
    drone.rest.map((spot) => spot.y),
    outline.depthMm / 2,
  );
  const field = (spot: Spot) => Math.hypot(spot.x / ratio, spot.y - centreMm);
  const brood = cut(
    drone.rest,
    field,
    broodOutward.map((kind) => [kind, shares[kind]]),
    spots.length,
  );
  const rim = drone.cuts[0];
  return {
    food: food.cuts.map(({ kind, at }) => ({ kind, toMm: at })),
    archMm,
    brood: brood.cuts.map(({ kind, at }) => ({ kind, radiusMm: at })).reverse(),
    centreMm,
    ratio,
    droneFromMm: rim === undefined ? null : -rim.at,
    riseMm,
    halfMm: fullHalfMm,
  };
}

/** What lies at a spot, in the order of painting: food over brood over drone over empty cells. */
export function contentAt(layers: FaceLayers, spot: Spot): Content {
  const sag = (spot.x / layers.halfMm) ** 2;
  const food = layers.food.find((band) => spot.y - layers.archMm * sag <= band.toMm);
  if (food !== undefined) return food.kind;
  const radius = Math.hypot(spot.x / layers.ratio, spot.y - layers.centreMm);
  const ring = layers.brood.findLast((band) => radius <= band.radiusMm);
  if (layers.droneFromMm !== null && spot.y + layers.riseMm * sag >= layers.droneFromMm) return 'drone';
  return ring === undefined ? 'empty' : ring.kind;
}

/** Even squares of the outline, by their middles. */
export function gridOf(outline: Outline, across = steps): readonly Spot[] {
  const spots: Spot[] = [];
  const wide = Math.max(...outline.levels.map((level) => level.half)) * 2;
  for (let i = 0; i < across; i += 1) {
    const y = ((i + 0.5) / across) * outline.depthMm;
    const half = widthAt(outline, y) / 2;
    for (let j = 0; j < across; j += 1) {
      const x = ((j + 0.5) / across - 0.5) * wide;
      if (Math.abs(x) <= half) spots.push({ x, y });
    }
  }
  return spots;
}

interface Cut {
  readonly kind: Content;
  readonly at: number;
}

/** Sorts spots by a field and cuts them so that each kind gets its share of `whole`. Kinds without a share get no cut. */
function cut(
  spots: readonly Spot[],
  field: (spot: Spot) => number,
  kinds: readonly (readonly [Content, number])[],
  whole: number,
): { cuts: readonly Cut[]; rest: readonly Spot[] } {
  const sorted = spots.map((spot) => ({ spot, at: field(spot) })).sort((a, b) => a.at - b.at);
  const cuts: Cut[] = [];
  let sum = 0;
  for (const [kind, share] of kinds) {
    if (share <= 0) continue;
    sum += share * whole;
    const next = Math.min(sorted.length, Math.round(sum));
    const [a, b] = [sorted[next - 1]?.at, sorted[next]?.at];
    // After the last spot there is nothing to cut off: far enough out to hold the whole outline.
    const beyond = (sorted.at(-1)?.at ?? 0) + 1e3;
    cuts.push({ kind, at: a === undefined ? (b ?? 0) : b === undefined ? beyond : (a + b) / 2 });
  }
  return { cuts, rest: sorted.slice(Math.min(sorted.length, Math.round(sum))).map((entry) => entry.spot) };
}

function mean(values: readonly number[], otherwise: number): number {
  return values.length === 0 ? otherwise : values.reduce((sum, value) => sum + value, 0) / values.length;
}
