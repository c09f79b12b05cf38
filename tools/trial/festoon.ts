/**
 * The model's own choice as a policy: a cloud of particles for the colony, corrected by what each opening showed
 * and told what was done, decides each day by the rule that the round goes by (`colony/engine/choice.ts`). It
 * knows nothing of the worlds; its figures are the printed ones.
 */
import { type ChoiceConstants, choiceConstants, opensToday, reasonsToOpen } from '../../src/colony/engine/choice.ts';
import { type EngineConstants, engineConstants, unknownGround } from '../../src/colony/engine/constants.ts';
import type { Happening } from '../../src/colony/engine/happening.ts';
import { part, particleSize } from '../../src/colony/engine/particle.ts';
import { type Crowd, crowdOf, engineSetup, type Left, meet, type Seen } from '../../src/colony/engine/run.ts';
import { printedBook, value } from '../../src/figures/book.ts';
import { dayNumber } from '../../src/numbers/day.ts';
import { begin, type Cloud, goOn } from '../../src/numbers/particle-filter.ts';
import { type Act, firstDay, relieved } from './hive.ts';
import type { Chooser, Policy } from './policies.ts';
import type { Opening } from './reader.ts';

const firstNumber = dayNumber(firstDay);
const particles = 500;
/** Cells of the troughs before anybody has looked: the first opening says. */
const someTrough = { built: 45_000, most: 90_000 } as const;

/** `choice` for trials of the rule itself. */
export function festoon(name = 'festoon', choice: ChoiceConstants = choiceConstants(printedBook)): Policy {
  return { name, begin: (seed) => chooserOf(choice, seed) };
}

interface Common {
  readonly constants: EngineConstants;
  readonly crowd: Crowd;
  /** Clouds of a colony of which nothing is known, by day number. */
  readonly unknown: Map<number, Cloud>;
}

let common: Common | null = null;

/** Worked out once for all colonies: they differ in what is told of them alone. */
function commonOf(): Common {
  common ??= {
    constants: engineConstants(printedBook, { ...unknownGround, comb: someTrough }),
    crowd: { ...crowdOf(printedBook), wide: particles, usual: particles },
    unknown: new Map(),
  };
  return common;
}

const commonSeed = 4711;

function unknownColony(day: number): Cloud {
  const { constants, unknown } = commonOf();
  const found = unknown.get(day);
  if (found !== undefined) return found;
  const setup = engineSetup(constants, printedBook);
  const cloud = goOn(setup, begin(setup, day - value(printedBook, 'engine-start-days'), particles, commonSeed), day, commonSeed);
  unknown.set(day, cloud);
  return cloud;
}

function chooserOf(choice: ChoiceConstants, seed: number): Chooser {
  const { constants, crowd } = commonOf();
  const told = new Map<number, readonly Happening[]>();
  const setup = engineSetup({ ...constants, ground: { ...constants.ground, told } }, printedBook);
  let left: Left | null = null;
  let today: Cloud | null = null;
  const days: number[] = [];
  return {
    opens: (day, { lastDay, last }) => {
      if (left === null) return true;
      today = goOn(setup, today ?? left.cloud, firstNumber + day, seed);
      const daysSince = lastDay === null ? null : day - lastDay;
      if (daysSince !== null && daysSince < choice.soonest) return false;
      const looks = { days, honeyKg: last?.honeyKg ?? null };
      return opensToday(choice, daysSince, reasonsToOpen(setup.constants, today, choice, looks));
    },
    opened: (day, opening, acts) => {
      const number = firstNumber + day;
      const before: Left = left === null ? firstSeen(number, opening) : { ...left, cloud: today ?? left.cloud };
      left = meet(setup, before, { day: number, visit: `${day}`, seen: seenAt(opening) }, crowd, seed).left;
      today = left.cloud;
      told.set(number, happeningsOf(opening, acts));
      days.push(number);
    },
  };
}

/** A trough is counted when it is first opened: from then on all particles have its comb. */
function firstSeen(day: number, opening: Opening): Left {
  const cloud = unknownColony(day);
  const values = cloud.values.slice();
  for (let at = 0; at < values.length; at += particleSize) {
    values[at + part.comb] = opening.built;
    values[at + part.combMost] = opening.most;
  }
  return { cloud: { ...cloud, values }, visits: 0, info: null };
}

function seenAt(opening: Opening): Seen {
  return {
    bees: { count: opening.bees },
    sealed: { count: opening.sealed },
    open: { count: opening.open },
    honeyKg: { count: opening.honeyKg },
    built: { cells: opening.built },
    brood: { eggs: opening.eggs, youngest: opening.youngest, share: 1 },
    cells: { cells: opening.cells, share: 1 },
    queen: { seen: opening.queenSeen, share: 1 },
  };
}

export function happeningsOf(opening: Opening, acts: readonly Act[]): readonly Happening[] {
  return acts.flatMap((act): readonly Happening[] => {
    if (act.kind === 'feed') return [{ kind: 'fed', kg: act.kg }];
    if (act.kind === 'give queen') return [{ kind: 'queen given' }];
    if (act.kind === 'bars') return [{ kind: 'bars', cells: opening.most * (1 + act.bars / barsAt(opening)) }];
    const part = { bees: relieved.bees, brood: relieved.brood, food: 0, comb: 0, queen: 'stayed' } as const;
    return [{ kind: 'cells cut' }, { kind: 'part left', ...part }];
  });
}

/** Bars of a trough: a full comb of these has some 6 700 cells. */
function barsAt(opening: Opening): number {
  return Math.max(1, Math.round(opening.most / 6700));
}
