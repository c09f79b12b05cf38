/**
 * A visit in the made-up yard: the keeper opens a hive, reads bars, gives and takes bars, closes. It
 * turns what an eye sees into entries, and does to the world what the keeper does to the hive.
 */
import type { VisitBody, VisitKind } from '../../src/colony/visit.ts';
import { addDays, type Day, dayOfYear } from '../../src/numbers/day.ts';
import { makeRoomAt, takeHoney } from './acts.ts';
import { type Chance, chanceOf } from './chance.ts';
import { combBrood, combFood, roomOf, type WorldComb } from './comb.ts';
import { type Eye, type Look, readBar, whereQueen, whereSealed } from './observe.ts';
import { atOf, type Clock, type Scribe } from './scribe.ts';
import { settings } from './settings.ts';
import type { SkyDay } from './sky.ts';
import { adults, row, type Society } from './society.ts';

/** A colony in somebody's care, with what the journal knows of it. */
export interface Charge {
  readonly name: string;
  readonly society: Society;
  readonly hive: string;
  readonly bay: string;
  /** Last place that its bay may reach. */
  readonly limit: number;
  /** Grams of food that are left to it at harvest. */
  readonly leave: number;
  lastRead: Day | null;
  due: Day | null;
  readonly known: Set<string>;
}

export interface Person {
  readonly id: string;
  readonly eye: Eye;
}

export interface VisitPlan {
  readonly kind: VisitKind;
  readonly clock: Clock;
  readonly by: Person;
  /** Places that stay shut; the rest is read from the follower inwards unless `fromEntrance`. */
  readonly shut?: readonly number[];
  readonly fromEntrance?: boolean;
  readonly fine?: boolean;
  readonly brushed?: boolean;
  /** A hundred cells of sealed brood are counted on the best comb. */
  readonly count?: boolean;
  readonly room?: 'as needed' | 'none';
  /** A bare bar hung at this place, among the combs. */
  readonly bareAt?: number;
  /** Ripe combs at the end of the row, or food combs whatever they hold. */
  readonly harvest?: 'ripe' | 'much';
  readonly cellsCut?: boolean;
  readonly signs?: readonly { readonly place: number; readonly code: string }[];
  /** Signs of the whole hive. */
  readonly hiveSigns?: readonly string[];
  readonly says?: string;
  /** A second person who reads these places too. */
  readonly second?: { readonly by: Person; readonly places: readonly number[] };
  readonly straight?: VisitBody['straight'];
  readonly notes?: VisitBody['temperNotes'];
}

export interface Visited {
  readonly end: Clock;
  readonly readings: ReadonlyMap<number, string>;
  readonly queenSeen: boolean;
  readonly eggsSeen: boolean;
  readonly given: readonly number[];
}

export function visit(scribe: Scribe, charge: Charge, plan: VisitPlan, sky: SkyDay, seed: number): Visited {
  const luck = chanceOf(seed, `visit|${charge.name}|${plan.clock.day}`);
  const label = `${charge.name}|${plan.clock.day}|${plan.kind}`;
  const places = placesToRead(charge.society, plan);
  meetCombs(scribe, charge, plan, places);
  const read = readAll(scribe, charge, plan, places, label, luck);
  const end: Clock = { day: plan.clock.day, minute: read.minute + 3 };
  const before = charge.society.to;
  const bars = before - charge.society.from + 1;
  const taken = plan.harvest === undefined ? [] : harvest(scribe, charge, plan, end);
  const moved = taken.length > 0 ? { given: [], inserted: null } : giveRoom(scribe, charge, plan, end);
  const given = moved.given.filter((place) => place > before);
  const body: VisitBody = {
    visit: scribe.id(`visit|${label}`),
    colony: scribe.id(`colony|${charge.name}`),
    hive: scribe.id(`hive|${charge.hive}`),
    visitKind: plan.kind,
    began: atOf(plan.clock),
    ended: atOf(end),
    order: plan.fromEntrance === true ? 'from the entrance' : 'from the follower',
    barsCounted: charge.society.to - charge.society.from + 1,
    followerAfter: charge.society.to,
    given: moved.inserted === null ? given : [],
    taken,
    beesBars: beesOnBars(charge.society, luck),
    straight: plan.straight ?? null,
    temper: temperOf(charge.society, sky, plan, luck),
    temperNotes: [...(plan.notes ?? [])],
    smokeMinutes: plan.kind === 'glance' ? null : luck.whole(15, 35),
    cellsCut: plan.cellsCut === undefined ? null : plan.cellsCut,
    signs: [...(plan.hiveSigns ?? [])],
    sentence: plan.says ?? sentence(charge, [places.length, bars], read, { given, inserted: moved.inserted, taken }),
  };
  scribe.write('visit', end, plan.by.id, body, { label });
  charge.lastRead = plan.clock.day;
  return { end, readings: read.entries, queenSeen: read.queenSeen, eggsSeen: read.eggsSeen, given };
}

function placesToRead(society: Society, plan: VisitPlan): number[] {
  const last = plan.kind === 'glance' ? Math.max(society.from, lastComb(society) - 1) : society.from;
  const end = plan.kind === 'glance' ? lastComb(society) : society.to;
  const all: number[] = [];
  for (let place = end; place >= last; place -= 1) if (plan.shut?.includes(place) !== true) all.push(place);
  return plan.fromEntrance === true ? all.reverse() : all;
}

function lastComb(society: Society): number {
  return row(society).at(-1)?.place ?? society.from;
}

/** A comb that the journal does not know yet is written down before it is read. */
function meetCombs(scribe: Scribe, charge: Charge, plan: VisitPlan, places: readonly number[]): void {
  for (const comb of row(charge.society)) {
    if (!places.includes(comb.place) || charge.known.has(comb.id)) continue;
    charge.known.add(comb.id);
    const since = charge.lastRead;
    const born = since === null || comb.begun <= since ? null : { earliest: since, latest: plan.clock.day };
    scribe.write(
      'comb',
      plan.clock,
      plan.by.id,
      { comb: scribe.id(`comb|${comb.id}`), ...(born === null ? {} : { born }) },
      { label: comb.id },
    );
    placing(scribe, charge, comb, plan.clock, plan.by.id);
  }
}

export function placing(scribe: Scribe, charge: Charge, comb: WorldComb, clock: Clock, by: string): void {
  scribe.write(
    'placing',
    clock,
    by,
    {
      comb: scribe.id(`comb|${comb.id}`),
      to: { kind: 'place', hive: scribe.id(`hive|${charge.hive}`), place: comb.place, facing: 'as built' },
    },
    { label: `${comb.id}|${clock.day}|${comb.place}` },
  );
}

interface AllRead {
  minute: number;
  readonly entries: Map<number, string>;
  queenSeen: boolean;
  eggsSeen: boolean;
  cells: number;
}

function readAll(
  scribe: Scribe,
  charge: Charge,
  plan: VisitPlan,
  places: readonly number[],
  label: string,
  luck: Chance,
): AllRead {
  const society = charge.society;
  const season = plan.clock.day.slice(5) > '04-20' && plan.clock.day.slice(5) < '09-01';
  const look: Look = {
    brushed: plan.brushed === true,
    fine: plan.fine === true,
    cells: plan.kind !== 'glance' && (season || (society.queen?.mated ?? null) === null),
    queenOn: plan.kind === 'glance' ? null : whereQueen(society, 0.38, luck),
    countOn: plan.count === true ? whereSealed(society) : null,
    light: luck.pick(['sun', 'sun', 'shade', 'dull']),
  };
  const out: AllRead = {
    minute: plan.clock.minute + 2,
    entries: new Map(),
    queenSeen: false,
    eggsSeen: false,
    cells: 0,
  };
  for (const place of places) {
    const comb = society.combs.find((one) => one.place === place) ?? null;
    readOne(scribe, charge, plan, { place, comb, look, label, luck, by: plan.by, out, second: false });
    if (plan.second?.places.includes(place) === true) {
      readOne(scribe, charge, plan, {
        place,
        comb,
        look: { ...look, fine: false, countOn: null },
        label,
        luck,
        by: plan.second.by,
        out,
        second: true,
      });
    }
  }
  return out;
}

interface One {
  readonly place: number;
  readonly comb: WorldComb | null;
  readonly look: Look;
  readonly label: string;
  readonly luck: Chance;
  readonly by: Person;
  readonly out: AllRead;
  readonly second: boolean;
}

function readOne(scribe: Scribe, charge: Charge, plan: VisitPlan, one: One): void {
  const { place, comb, look, by, out } = one;
  const seen = readBar(charge.society, comb, by.eye, look, one.luck);
  const extra = (plan.signs ?? []).filter((sign) => sign.place === place && !one.second).map((sign) => sign.code);
  const entry = scribe.write(
    'reading',
    { day: plan.clock.day, minute: out.minute },
    by.id,
    {
      visit: scribe.id(`visit|${one.label}`),
      hive: scribe.id(`hive|${charge.hive}`),
      place,
      ...(comb === null ? {} : { comb: scribe.id(`comb|${comb.id}`) }),
      ...seen,
      signs: [...seen.signs, ...extra],
    },
    { label: `${one.label}|${place}|${by.eye.name}` },
  );
  out.minute += comb === null ? 1 : one.luck.whole(1, 2);
  if (one.second) return;
  out.entries.set(place, entry.id);
  out.queenSeen ||= seen.queen === 'seen';
  out.eggsSeen ||= seen.eggs === 'seen';
  out.cells += (seen.cells?.open ?? 0) + (seen.cells?.sealed ?? 0);
}

/** Bars that are nearly without comb: bare ones, and those begun. */
export function bareBars(society: Society): number {
  return society.to - society.from + 1 - society.combs.filter((comb) => comb.built > 0.45).length;
}

function giveRoom(scribe: Scribe, charge: Charge, plan: VisitPlan, end: Clock): { given: number[]; inserted: number | null } {
  const society = charge.society;
  if (plan.bareAt !== undefined) {
    const at = plan.bareAt;
    const moved = makeRoomAt(society, at);
    for (const { comb } of moved) if (charge.known.has(comb.id)) placing(scribe, charge, comb, end, plan.by.id);
    return { given: [], inserted: at };
  }
  if (plan.room === 'none' || plan.kind === 'glance') return { given: [], inserted: null };
  const doy = dayOfYear(plan.clock.day);
  const want = doy < 105 || doy > 230 ? 0 : adults(society) > 14000 ? 2 : 1;
  const given: number[] = [];
  while (bareBars(society) < want && society.to < charge.limit) {
    society.to += 1;
    given.push(society.to);
  }
  return { given, inserted: null };
}

/** Combs at the end of the row, three ripe ones at most, while enough stays behind; with them go the bare bars behind them. */
function harvest(scribe: Scribe, charge: Charge, plan: VisitPlan, end: Clock): number[] {
  const society = charge.society;
  const bareEnd = society.to;
  const taken: WorldComb[] = [];
  const much = plan.harvest === 'much';
  while (taken.length < (much ? 8 : 3)) {
    const food = society.combs.reduce((all, comb) => all + combFood(comb), 0);
    const comb = food * settings.food.perCell < charge.leave ? null : takeHoney(society, much ? 0 : 0.4);
    if (comb === null) break;
    taken.push(comb);
  }
  const nearest = Math.min(...taken.map((comb) => comb.place));
  if (taken.length === 0) return [];
  society.to = nearest - 1;
  for (const [i, comb] of taken.entries()) {
    if (!charge.known.has(comb.id)) continue;
    scribe.write('placing', { day: end.day, minute: end.minute + 6 + i }, plan.by.id, {
      comb: scribe.id(`comb|${comb.id}`),
      to: { kind: 'away', where: 'tub' },
    });
  }
  return Array.from({ length: bareEnd - nearest + 1 }, (_, i) => nearest + i);
}

function beesOnBars(society: Society, luck: Chance): number {
  const bars = adults(society) / (settings.adults.perDm2 * 16 * 0.8);
  const most = society.combs.filter((comb) => comb.built > 0.15).length + 1;
  return Math.max(0.5, Math.min(most, Math.round(bars * Math.exp(luck.normal(0, 0.12)) * 2) / 2));
}

function temperOf(society: Society, sky: SkyDay, plan: VisitPlan, luck: Chance): VisitBody['temper'] {
  if (plan.kind === 'glance' && luck.happens(0.4)) return null;
  const weather = sky.rainMm > 1 ? 0.15 : sky.windMs > 7 ? 0.08 : 0;
  const x = society.temper + weather + (society.queen === null ? 0.12 : 0) + luck.normal(0, 0.09);
  return x < 0.32 ? 'calm' : x < 0.55 ? 'lively' : x < 0.8 ? 'edgy' : 'stinging';
}

function sentence(
  charge: Charge,
  [opened, bars]: readonly [number, number],
  read: AllRead,
  did: { given: readonly number[]; inserted: number | null; taken: readonly number[] },
): string {
  const parts = [`${charge.name}: ${opened} of ${bars} bars read`];
  parts.push(read.queenSeen ? 'queen seen' : read.eggsSeen ? 'eggs seen, queen not' : 'no eggs seen');
  if (read.cells > 0) parts.push(`${read.cells} queen ${read.cells === 1 ? 'cell' : 'cells'}`);
  if (did.given.length > 0) parts.push(did.given.length === 1 ? 'one bare bar given' : `${did.given.length} bare bars given`);
  if (did.inserted !== null) parts.push(`a bare bar hung at place ${did.inserted}`);
  if (did.taken.length > 0) parts.push('honey taken');
  return `${parts.join('; ')}.`;
}

/** When to come again, by what is usual and what was seen. */
export function nextDue(charge: Charge, day: Day, luck: Chance): Day {
  const d = dayOfYear(day);
  const young = (charge.society.queen?.mated ?? null) === null;
  const base = d < 120 ? luck.whole(11, 14) : d < 190 ? luck.whole(10, 13) : d < 235 ? luck.whole(13, 17) : luck.whole(15, 20);
  return addDays(day, young && charge.society.orphaned > 0 ? Math.min(base, 9) : base);
}

/** Combs in the middle of the brood, for a split. */
export function broodPlaces(society: Society): readonly number[] {
  return row(society)
    .filter((comb) => combBrood(comb) > 0.2 * 2 * roomOf(comb))
    .map((comb) => comb.place);
}
