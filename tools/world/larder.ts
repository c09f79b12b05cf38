/**
 * Food in the made-up world: what comes in, what is eaten, and where it hangs. Nectar goes over and
 * beside the brood, then outward; it is sealed in a week; the cluster eats what is nearest.
 */
import { type Day, dayOfYear } from '../../src/numbers/day.ts';
import type { Chance } from './chance.ts';
import { broodCells, combBrood, type Face, foodCells, roomOf, sum, sumOf, type WorldComb } from './comb.ts';
import { broodReach } from './laying.ts';
import { settings } from './settings.ts';
import { clamp, flying, nectarOnOffer, type SkyDay } from './sky.ts';
import { adults, fromHeart, row, type Society } from './society.ts';

const { food } = settings;

/** One day of food; returns the net grams of the day (honey to be). */
export function feedDay(society: Society, sky: SkyDay, luck: Chance): number {
  const bees = adults(society);
  const afield =
    sum(society.summer.slice(settings.adults.forageAge)) * 0.9 +
    society.winter * winterAfield(sky.day) +
    sum(society.summer.slice(12, 20)) * 0.35;
  const income = afield * food.perForager * nectarOnOffer(sky) * flying(sky) * luck.between(0.7, 1.3);
  const fed = Math.min(society.fedGrams, 60 + bees * 0.05);
  society.fedGrams -= fed;
  const cluster = sky.highC < 10;
  const broodNow = society.combs.reduce((all, comb) => all + combBrood(comb), 0);
  const eaten =
    sum(society.summer) * food.perBee +
    society.winter * (cluster ? food.perClusterBee : food.perWinterBee) +
    broodNow * food.perBrood;
  bread(society, sky);
  ripen(society, sky);
  const net = income + fed - eaten;
  if (net >= 0) store(society, net / food.perCell, sky.day);
  else eat(society, -net / food.perCell);
  clearNest(society, sky.day);
  carryIn(society, sky);
  return net;
}

export function honeyKg(society: Society): number {
  return (
    (society.combs.reduce((all, comb) => all + comb.faces.reduce((a, f) => a + f.honey + f.nectar, 0), 0) * food.perCell) / 1000
  );
}

function winterAfield(day: Day): number {
  const d = dayOfYear(day);
  return d > 75 && d < 150 ? 0.35 : d > 240 ? 0.2 : 0.05;
}

/** Cells in which food may still hang on a face: over the brood; outside the nest, nearly all. */
function foodRoom(society: Society, comb: WorldComb, face: Face, day: Day): number {
  const all = roomOf(comb);
  const zone = broodReach(society, comb, day) * all;
  return Math.max(0, Math.min(all - zone - 0.04 * all, all - broodCells(face)) - foodCells(face));
}

function store(society: Society, cells: number, day: Day): void {
  let left = cells;
  const faces = fromHeart(society).flatMap((comb) => comb.faces.map((face) => ({ comb, face })));
  for (const pass of [0.3, 1]) {
    for (const { comb, face } of faces) {
      const here = Math.min(left, foodRoom(society, comb, face, day) * pass);
      face.nectar += here;
      left -= here;
      if (left <= 0) return;
    }
  }
  // No room but the brood nest: it is put where brood has emerged and crowds the queen, up to a part; then foragers stay at home.
  for (const { comb, face } of faces) {
    const zone = broodReach(society, comb, day) * roomOf(comb);
    const inside = Math.max(0, foodCells(face) - (roomOf(comb) - zone));
    const here = Math.min(
      left,
      Math.max(0, Math.min(food.crowds * zone - inside, zone * 0.9 - inside - broodCells(face))) * 0.35,
    );
    face.nectar += here;
    left -= here;
  }
}

function eat(society: Society, cells: number): void {
  let left = cells;
  for (const comb of fromHeart(society)) {
    for (const face of comb.faces) {
      const nectar = Math.min(left, face.nectar);
      face.nectar -= nectar;
      left -= nectar;
      const honey = Math.min(left, face.honey);
      face.honey -= honey;
      left -= honey;
    }
    if (left <= 0) return;
  }
}

function ripen(society: Society, sky: SkyDay): void {
  const share = food.ripens * clamp((sky.highC - 5) / 15);
  for (const comb of society.combs) {
    for (const face of comb.faces) {
      const sealed = face.nectar * share;
      face.nectar -= sealed;
      face.honey += sealed;
    }
  }
}

/** Bees carry food that stands in the way of brood outward, while there is season and somewhere to put it. */
function clearNest(society: Society, day: Day): void {
  const d = dayOfYear(day);
  if (d < 80 || d > 240 || adults(society) < 1500) return;
  const combs = row(society);
  const farFirst = [...combs].reverse().flatMap((c) => c.faces.map((f) => ({ c, f })));
  for (const comb of combs) {
    for (const face of comb.faces) {
      const zone = broodReach(society, comb, day) * roomOf(comb);
      const inside = Math.max(0, foodCells(face) - (roomOf(comb) - zone));
      const moved = Math.min(inside * 0.12, face.nectar + face.honey);
      if (moved < 1) continue;
      const out = farFirst.find(({ c, f }) => foodRoom(society, c, f, day) > moved);
      if (out === undefined) continue;
      const nectar = Math.min(moved, face.nectar);
      face.nectar -= nectar;
      face.honey -= moved - nectar;
      out.f.nectar += moved;
    }
  }
}

/** On flying days bees bring honey from far combs to those beside the brood that have none. */
function carryIn(society: Society, sky: SkyDay): void {
  if (sky.highC < 11) return;
  const combs = fromHeart(society);
  const far = [...combs].reverse();
  for (const comb of combs.slice(0, 7)) {
    for (const face of comb.faces) {
      const short = food.beside * roomOf(comb) - face.honey - face.nectar;
      const from = far.find(
        (other) => combs.indexOf(other) > combs.indexOf(comb) + 1 && other.faces[0].honey + other.faces[1].honey > 600,
      );
      if (short <= 0 || from === undefined) continue;
      const source = from.faces[0].honey > from.faces[1].honey ? from.faces[0] : from.faces[1];
      const moved = Math.min(
        short,
        food.carried,
        source.honey * 0.5,
        Math.max(0, roomOf(comb) * 0.9 - broodCells(face) - foodCells(face)),
      );
      source.honey -= moved;
      face.nectar += moved;
    }
  }
}

/** Bee bread follows the brood and the flowers; it hangs at the edge of the brood. */
function bread(society: Society, sky: SkyDay): void {
  const offer = clamp(nectarOnOffer(sky) * 2.2) * flying(sky);
  for (const comb of society.combs) {
    for (const face of comb.faces) {
      const held = broodCells(face);
      const larvae = sumOf(face.worker, 3, 8);
      const want = Math.min(food.breadPerBrood * held + 0.03 * roomOf(comb), 0.18 * roomOf(comb));
      const room = Math.max(0, roomOf(comb) * 0.95 - held - foodCells(face));
      const comes = Math.min(room, Math.max(0, want - face.bread) * 0.3 * offer + larvae * food.breadPerLarva * offer);
      face.bread = Math.max(0, face.bread + comes - larvae * food.breadPerLarva - face.bread * 0.004);
    }
  }
}
