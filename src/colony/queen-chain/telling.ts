/**
 * When a look would tell most of the queen, and when it would do harm. A look is reckoned as one at all combs that
 * notes eggs, the youngest stage and whether there are cells; what it tells is by how much the doubt is expected to
 * shrink whether she lays, one is to come, she is spent, or there is no hope. Days ahead are as if nobody looked before.
 */
import { value } from '../../figures/book.ts';
import { addDays, type Day } from '../../numbers/day.ts';
import { broodSince } from './brood-since.ts';
import { type Belief, eachCell, emptyBelief } from './filter.ts';
import { emptyLook, lookLogDensity, type QueenLook, stages } from './seen.ts';
import type { QueenState } from '../queen-state.ts';
import { chainStates, stateIndex } from './states.ts';
import { type QueenModel, through } from './story.ts';

export interface Harm {
  readonly from: Day;
  readonly to: Day;
  readonly why: HarmWhy;
}

export const harmWhys = ['virgin', 'new queen laying', 'introduced'] as const;
export type HarmWhy = (typeof harmWhys)[number];

export interface Ahead {
  readonly nextTellingDay: Day | null;
  readonly harmfulDays: readonly Harm[];
}

/** `looked`: somebody looked on that day, so that looking again then tells nothing new. */
export function lookAhead(model: QueenModel, belief: Belief, on: Day, looked: boolean): Ahead {
  const horizon = Math.round(value(model.book, 'queen-state-horizon-days'));
  const days: { day: Day; gain: number; harms: readonly HarmWhy[] }[] = [];
  const table = outcomeTable(model);
  let now = belief;
  for (let ahead = 0; ahead <= horizon; ahead += 1) {
    const day = addDays(on, ahead);
    if (ahead > 0) now = through(model, now, day);
    days.push({ day, gain: ahead === 0 && looked ? 0 : gainOf(model, now, table), harms: harmsOf(model, now) });
  }
  const most = Math.max(0, ...days.filter(({ harms }) => harms.length === 0).map(({ gain }) => gain));
  const least = Math.max(value(model.book, 'queen-state-telling-gain'), most * value(model.book, 'queen-state-telling-share'));
  const telling = days.find(({ gain, harms }) => gain >= least && harms.length === 0);
  return { nextTellingDay: telling?.day ?? null, harmfulDays: harmWhys.flatMap((why) => windowsOf(days, why)) };
}

/** Reasons to leave the hive shut, where they are likely enough together. */
function harmsOf({ chain, book }: QueenModel, belief: Belief): readonly HarmWhy[] {
  const rest = value(book, 'new-laying-rest-days');
  const chance: Record<HarmWhy, number> = { virgin: 0, 'new queen laying': 0, introduced: 0 };
  eachCell(chain, belief, (state, daysIn, _, part) => {
    if (chainStates[state]!.reported === 'virgin') chance.virgin += part;
    if (state === stateIndex['new queen laying'] && daysIn < rest) chance['new queen laying'] += part;
    if (state === stateIndex.introduced) chance.introduced += part;
  });
  // A virgin or already a beginner: together they make the day a bad one, and it bears the name of the likeliest.
  const least = value(book, 'queen-state-harm-chance');
  const together = harmWhys.reduce((sum, why) => sum + chance[why], 0);
  if (together < least) return [];
  const most = Math.max(...harmWhys.map((why) => chance[why]));
  return harmWhys.filter((why) => chance[why] >= Math.min(least, most));
}

function windowsOf(days: readonly { readonly day: Day; readonly harms: readonly HarmWhy[] }[], why: HarmWhy): readonly Harm[] {
  const windows: Harm[] = [];
  days.forEach(({ day, harms }, index) => {
    if (!harms.includes(why)) return;
    const last = windows.at(-1);
    const goesOn = last !== undefined && last.to === days[index - 1]?.day;
    if (goesOn) windows[windows.length - 1] = { ...last, to: day };
    else windows.push({ from: day, to: day, why });
  });
  return windows;
}

/** What a look can come back with: eggs or else the youngest stage, and what cells. */
const cellsSeen = [
  { open: 0, sealed: 0, torn: 0, emerged: 0 },
  { open: 2, sealed: 0, torn: 0, emerged: 0 },
  { open: 1, sealed: 2, torn: 0, emerged: 0 },
  { open: 0, sealed: 0, torn: 1, emerged: 1 },
] as const;

const outcomes: readonly QueenLook[] = stages.flatMap((youngest) =>
  cellsSeen.map((cells) => ({
    ...emptyLook,
    eggs: youngest === 'egg' ? ('seen' as const) : ('none seen' as const),
    youngest,
    cells,
  })),
);

/** Chances of each outcome for each cell of a belief, flat: a few outcomes stand for all, so they are evened to sum to 1. */
export function outcomeTable({ chain, seen, brood }: QueenModel): Float64Array {
  const all = emptyBelief(chain);
  all.chances.fill(1);
  const table = new Float64Array(all.chances.length * outcomes.length);
  eachCell(chain, all, (state, daysIn, since, _, cell) => {
    const there = broodSince(brood, state, daysIn, since);
    const part = table.subarray(cell * outcomes.length, (cell + 1) * outcomes.length);
    outcomes.forEach((outcome, i) => (part[i] = Math.exp(lookLogDensity(seen, state, daysIn, there, outcome))));
    const sum = part.reduce((a, b) => a + b, 0);
    part.forEach((one, i) => (part[i] = one / sum));
  });
  return table;
}

/** She lays; one is to come; she is spent; there is no hope. */
const kindCount = 4;
/** Reported states between which nothing is done differently, by place in their list. */
const kinds: Readonly<Record<QueenState, number>> = {
  laying: 0,
  'new queen laying': 0,
  'cells open': 1,
  'cells sealed': 1,
  virgin: 1,
  failing: 2,
  'drone layer': 2,
  none: kindCount - 1,
  'laying workers': kindCount - 1,
};
const kindOf = chainStates.map(({ reported }) => kinds[reported]);

/** Expected loss of entropy, nats, among the kinds of states, by one full look. */
export function gainOf({ chain }: QueenModel, belief: Belief, table: Float64Array): number {
  const joint = new Float64Array(kindCount * outcomes.length);
  eachCell(chain, belief, (state, _, __, chance, cell) => {
    const at = cell * outcomes.length;
    for (let i = 0; i < outcomes.length; i += 1) joint[i * kindCount + kindOf[state]!]! += chance * table[at + i]!;
  });
  const before = Array.from({ length: kindCount }, (_, kind) =>
    outcomes.reduce((sum, __, i) => sum + joint[i * kindCount + kind]!, 0),
  );
  const after = outcomes.reduce((sum, _, i) => sum + unsettled(joint.subarray(i * kindCount, (i + 1) * kindCount)), 0);
  return Math.max(0, unsettled(before) - after);
}

/** Entropy of parts, times what they sum to. */
function unsettled(parts: ArrayLike<number>): number {
  const sum = Array.from(parts).reduce((a, b) => a + b, 0);
  return Array.from(parts).reduce((all, part) => all - (part > 0 ? part * Math.log(part / sum) : 0), 0);
}
