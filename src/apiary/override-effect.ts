/**
 * What a figure of the keeper's own would change in this yard today, before it is written down: told numbers that move,
 * and advice that comes or goes, by the plain rules. Nothing is kept.
 */
import type { Saying } from '../advice/advice.ts';
import { type Apiary, pictureOf, type Picture } from '../apiary.ts';
import { bookOf } from '../colony/book-of.ts';
import type { ColonyView } from '../colony/view.ts';
import type { Id } from '../journal/entry.ts';
import type { Day } from '../numbers/day.ts';
import type { Range } from '../numbers/range.ts';

export interface OwnFigure {
  /** Its key in the handbook. */
  readonly figure: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

export const effectNumbers = ['adults', 'sealed', 'honeyKg', 'laying', 'emptyInBrood'] as const;
export type EffectNumber = (typeof effectNumbers)[number];

export interface ColonyEffect {
  readonly colony: Id;
  readonly name: string;
  readonly moved: readonly { readonly what: EffectNumber; readonly was: Range; readonly would: Range }[];
  readonly gone: readonly Saying[];
  readonly come: readonly Saying[];
}

/** Colonies in which something would change; none where nothing does. */
export function overrideEffect(apiary: Apiary, day: Day, own: OwnFigure): readonly ColonyEffect[] {
  const { figure: key, ...rest } = own;
  const overrides = [...apiary.state.overrides, { key, ...rest, entry: 'tried' }];
  const state = { ...apiary.state, overrides };
  const [was, would] = [pictureOf(apiary, day, 0), pictureOf({ ...apiary, state, book: bookOf(state) }, day, 0)];
  const before = new Map(was.colonies.map((view) => [view.colony, view]));
  return would.colonies.flatMap((view): ColonyEffect[] => {
    const old = before.get(view.colony);
    if (old === undefined || view.ended !== null) return [];
    const moved = effectNumbers.flatMap((what) => movedIn(what, numberOf(old, what), numberOf(view, what)));
    const [said, says] = [sayingsOf(was, view.colony), sayingsOf(would, view.colony)];
    const gone = said.filter((one) => !says.some((other) => same(one, other)));
    const come = says.filter((one) => !said.some((other) => same(one, other)));
    return moved.length + gone.length + come.length === 0 ? [] : [{ colony: view.colony, name: view.name, moved, gone, come }];
  });
}

function numberOf(view: ColonyView, what: EffectNumber): Range | null {
  return what === 'laying' ? view.layingPerDay : view.totals[what].total;
}

/** Less than this part of the larger number is not worth a line. */
const least = 0.01;

function movedIn(what: EffectNumber, was: Range | null, would: Range | null): ColonyEffect['moved'] {
  if (was === null || would === null) return [];
  const differs = (['low', 'likely', 'high'] as const).some(
    (end) => Math.abs(was[end] - would[end]) > least * Math.max(Math.abs(was[end]), Math.abs(would[end])),
  );
  return differs ? [{ what, was, would }] : [];
}

function sayingsOf({ advice }: Picture, colony: Id): readonly Saying[] {
  return advice.filter((one) => one.colony === colony).map(({ say }) => say);
}

function same(a: Saying, b: Saying): boolean {
  return a.key === b.key && JSON.stringify(a.slots, withoutCites) === JSON.stringify(b.slots, withoutCites);
}

/** Where a number comes from is no change of what is said. */
function withoutCites(key: string, value: unknown): unknown {
  return key === 'cite' ? undefined : value;
}
