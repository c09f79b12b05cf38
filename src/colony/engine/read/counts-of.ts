/**
 * What a visit counted, as counts of the model: bees, sealed and open brood, honey, built cells. A bar that was
 * not opened is not an empty bar: the count is of the combs opened, and goes with the share of the whole that was
 * to be expected on them. Combs never read, between combs that are known, are taken to be as full as the others.
 */
import { type FigureBook, value } from '../../../figures/book.ts';
import { beesOnFace } from '../../../hive/bees-on-face.ts';
import { addDays } from '../../../numbers/day.ts';
import { addApart, type Range } from '../../../numbers/range.ts';
import type { CombReading } from '../../comb-history.ts';
import { eightOfTen } from '../../split-contents.ts';
import type { Visit } from '../../state.ts';
import { isLearner } from '../../visits-of.ts';
import type { Seen } from '../run.ts';
import type { Built } from '../seen/built.ts';
import type { Count } from '../seen/counts.ts';
import { type AmountName, amountsExpected, amountsRead } from './bar-amounts.ts';
import { builtOf, combsBefore, lastReading, type RecordBook, type Trough, troughOn } from './record-book.ts';

/** One place of the trough at a visit: what was read now, what was known before; neither for a comb never read. */
interface Place {
  readonly now: CombReading | null;
  readonly before: CombReading | null;
  /** What it holds by the reading, and what it should by what was known before; worked out when first asked for. */
  readonly holds: () => Readonly<Record<AmountName, Range | null>> | null;
  readonly expected: () => Readonly<Record<AmountName, number | null>> | null;
}

export function countsOf(records: RecordBook, visit: Visit, hand: 0 | 1): Seen {
  const trough = troughOn(records, visit.day);
  if (trough === null) return {};
  const places = placesOf(records, visit, trough);
  const bees = beesOf(records, visit, places, hand);
  const bars = barsOf(records, visit, trough, hand);
  const sealed = amountOf(records, places, 'sealed', hand);
  const open = amountOf(records, places, 'open', hand);
  const honeyKg = amountOf(records, places, 'honeyKg', hand);
  const built = builtBy(records, trough, places);
  return {
    ...(bees === null ? {} : { bees }),
    ...(bars === null ? {} : { bars }),
    ...(sealed === null ? {} : { sealed: worked(sealed, records.book) }),
    ...(open === null ? {} : { open: worked(open, records.book) }),
    ...(honeyKg === null ? {} : { honeyKg }),
    ...(built === null ? {} : { built }),
  };
}

/** Every comb that hung there when the visit began, those read at it, and gaps between them. */
function placesOf(records: RecordBook, visit: Visit, trough: Trough): readonly Place[] {
  const read = records.byVisit.get(visit.id) ?? [];
  const place = (now: CombReading | null, before: CombReading | null): Place => ({
    now,
    before,
    holds: once(() => (now === null ? null : amountsRead(records, trough, now))),
    expected: once(() => (before === null ? null : amountsExpected(records, trough, before, visit.day))),
  });
  const rows = new Map<number, Place>();
  for (const [at, comb] of combsBefore(records, visit.day)) {
    const before = lastReading(records, comb.id, visit.day, visit.id);
    if (before !== null || comb.built !== 0) rows.set(at, place(null, before));
  }
  for (const now of read) rows.set(now.row.body.place, place(now, lastReading(records, now.row.comb, visit.day, visit.id)));
  if (rows.size === 0) return [];
  const [first, last] = [Math.min(...rows.keys()), Math.max(...rows.keys())];
  return Array.from({ length: last - first + 1 }, (_, i) => rows.get(first + i) ?? place(null, null));
}

function once<T>(work: () => T): () => T {
  let done: { readonly value: T } | null = null;
  return () => (done ??= { value: work() }).value;
}

function amountOf(records: RecordBook, places: readonly Place[], what: AmountName, hand: 0 | 1): Count | null {
  const read = places.map(({ holds }) => holds()?.[what] ?? null);
  const found = read.flatMap((range) => range ?? []);
  if (found.length === 0) return null;
  const share = shareOpened(
    read.map((range) => range !== null),
    () => places.map(({ expected }) => expected()?.[what] ?? null),
  );
  return share < value(records.book, 'engine-least-share') ? null : counted(found, share, hand, saidShare(read, places));
}

/** Parts err apart by their rounding, those that were only said to be as expected together. */
function counted(parts: readonly Range[], share: number, hand: 0 | 1, asExpected = 0): Count {
  const { likely, high } = addApart(parts);
  const rounding = likely > 0 ? Math.log(high / likely) / eightOfTen : 0;
  return {
    count: likely,
    hand,
    ...(share < 1 ? { share } : {}),
    ...(rounding > 0 ? { rounding } : {}),
    ...(asExpected > 0 ? { asExpected } : {}),
  };
}

/** Of what was read, the share on combs that were only said to be as expected; of nothing read, 1 where all were. */
function saidShare(read: readonly (Range | null)[], places: readonly Place[]): number {
  const said = places.map(({ now }) => now?.row.body.method === 'as expected');
  const amounts = read.map((range) => range?.likely ?? 0);
  const all = amounts.reduce((a, b) => a + b, 0);
  const part = amounts.reduce((sum, amount, i) => (said[i] === true ? sum + amount : sum), 0);
  return all > 0 ? part / all : Number(places.every(({ now }, i) => now === null || said[i] === true));
}

/** Of what was to be expected of all combs, the part on those that were read; combs of which nothing is known count as the mean.
 * What was expected is worked out only where some were left shut. */
export function shareOpened(opened: readonly boolean[], expectedOf: () => readonly (number | null)[]): number {
  if (opened.every(Boolean)) return 1;
  const expected = expectedOf();
  const known = expected.flatMap((one) => one ?? []);
  const sum = known.reduce((a, b) => a + b, 0);
  const mean = sum > 0 ? sum / known.length : 1;
  const weights = expected.map((one) => (sum > 0 ? (one ?? mean) : 1));
  const all = weights.reduce((a, b) => a + b, 0);
  const part = weights.reduce((a, b, i) => (opened[i] === true ? a + b : a), 0);
  return all > 0 ? part / all : 0;
}

/**
 * Stages are worked out from one area of brood: sealed and open err by the split, and weigh half each so that one
 * reading does not count twice.
 */
function worked(count: Count, book: FigureBook): Count {
  const half = value(book, 'engine-capped-noise');
  return { ...count, rounding: Math.hypot(count.rounding ?? 0, value(book, 'stage-split-error'), half) };
}

/** From the faces that were covered; bars with bees counted at the same visit say of how many these are. */
function beesOf(records: RecordBook, visit: Visit, places: readonly Place[], hand: 0 | 1): Count | null {
  const covered = places.map(({ now }) => now?.read.bees ?? null);
  const read = covered.flatMap((share) => share ?? []);
  if (read.length === 0) return null;
  const bars = visit.closed?.body.beesBars ?? null;
  const parts = places.flatMap(({ holds }) => holds()?.bees ?? []);
  const withBees = read.filter((share) => share > 0).length;
  const share =
    bars !== null && bars > 0
      ? Math.min(1, withBees / bars)
      : shareOpened(
          covered.map((one) => one !== null),
          () => places.map(({ expected }) => expected()?.bees ?? null),
        );
  if (share < value(records.book, 'engine-least-share')) return null;
  const full = read.length >= barsBefore(records, visit) && read.every((one) => one === 1);
  return { ...counted(parts, share, hand), ...(full ? { atLeast: true } : {}) };
}

function barsOf(records: RecordBook, visit: Visit, trough: Trough, hand: 0 | 1): Count | null {
  const bars = visit.closed?.body.beesBars ?? null;
  if (bars === null || isLearner(records.state, visit.by)) return null;
  const { book } = records;
  const cover = value(book, 'bees-bar-cover');
  const count = beesOnFace(trough.measures.fullFaceDm2, 2 * bars, value(book, 'bees-per-dm2')) * cover;
  return { count, hand, ...(bars >= barsBefore(records, visit) ? { atLeast: true } : {}) };
}

/** Bars of the bay when the visit began. */
function barsBefore(records: RecordBook, visit: Visit): number {
  const trough = troughOn(records, addDays(visit.day, -1));
  return trough === null ? Infinity : trough.to - trough.from + 1;
}

/** Null where nobody read how much is built. */
function builtBy(records: RecordBook, trough: Trough, places: readonly Place[]): Built | null {
  if (!places.some(({ now }) => now !== null && now.built !== null)) return null;
  const readings = places.map(({ now, before }) => now ?? before);
  const shares = readings.map((reading) => (reading === null ? 0 : builtOf(reading, records.book)));
  const cells = shares.reduce((a, b) => a + b, 0) * trough.cellsPerBar;
  return { cells, ...(readings.includes(null) ? { atLeast: true } : {}) };
}
