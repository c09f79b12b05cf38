/**
 * Reads a journal as a bee scientist would and says what cannot be true of bees. It uses published days
 * and round bounds (sources in docs/spec/demo.md) and none of the program's estimates; observers' errors
 * are allowed for. An empty answer is no proof that the journal is true.
 */
import type { Entry } from '../../src/journal/entry.ts';
import { type Day, daysBetween } from '../../src/numbers/day.ts';
import {
  type CaseFile,
  caseFiles,
  type CaseVisit,
  mainSheets,
  pairs,
  type QueenEvent,
  type Sheet,
} from './case-notes.ts';

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
const cellsOfComb = 6950;
const mostEggs = 2200;
/** A bar of bees, both faces: 1 200 to 2 100 are published for combs of this size. */
const beesOfBar = 1650;

export function examine(journal: readonly Entry[]): readonly Doubt[] {
  const files = caseFiles(journal);
  return [
    ...files.flatMap((file) => [
      ...faces(file),
      ...afterHiving(file),
      ...withoutQueen(file),
      ...outlives(file),
      ...queensPower(file),
      ...season(file),
      ...flow(file),
      ...strength(file),
      ...newBees(file),
      ...cellOrder(file),
      ...swarms(file),
      ...afterEnd(file),
      ...combs(file),
    ]),
    ...cold(journal),
  ];
}

function doubt(code: Doubt['code'], at: Sheet | CaseVisit, found: string): Doubt {
  return { code, entry: at.entry.id, day: at.entry.at.slice(0, 10), found };
}

export function broodCellsSeen(visit: CaseVisit): number {
  return mainSheets(visit).reduce((all, sheet) => all + (brood8(sheet) / 8) * cellsOfComb * builtOf(visit, sheet), 0);
}

function brood8(sheet: Sheet): number {
  return sheet.body.faces.reduce((all, face) => all + (face.brood8 ?? 0), 0) / (sheet.body.faces.length > 1 ? 2 : 1);
}

function food8(sheet: Sheet): number {
  return sheet.body.faces.reduce((all, face) => all + (face.food8 ?? 0), 0) / (sheet.body.faces.length > 1 ? 2 : 1);
}

function builtOf(_visit: CaseVisit, sheet: Sheet): number {
  return (sheet.body.built8 ?? 8) / 8;
}

function faces(file: CaseFile): readonly Doubt[] {
  return file.visits.flatMap((visit) =>
    visit.sheets.flatMap((sheet) => [
      ...(brood8(sheet) + food8(sheet) > 8
        ? [doubt('more than a face', sheet, `${brood8(sheet)} + ${food8(sheet)} eighths`)]
        : []),
      ...(sheet.body.youngest === 'none' && brood8(sheet) > 0.5
        ? [doubt('brood without a stage', sheet, 'brood, but no stage of it')]
        : []),
    ]),
  );
}

/** Bare bars: the first egg cannot be older than the swarm's stay. Larvae hatch on day 3, are sealed on day 8 at the earliest. */
function afterHiving(file: CaseFile): readonly Doubt[] {
  const hived = file.hivedAsSwarm;
  if (hived === null) return [];
  return file.visits.flatMap((visit) => {
    const days = daysBetween(hived.day, visit.day);
    const first: Readonly<Record<string, number>> = { egg: 0, 'young larva': 3, larva: 5, sealed: 8, none: 0 };
    const early = visit.sheets.filter(
      (sheet) =>
        (first[sheet.body.youngest ?? 'none'] ?? 0) > days ||
        (days < 9 && sheet.body.faces.some((f) => (f.drone8 ?? 0) > 0)),
    );
    const wax =
      mainSheets(visit).reduce(
        (all, sheet) => all + (sheet.body.built8 ?? (sheet.body.combClass === 'bare' ? 0 : 8)),
        0,
      ) / 8;
    return [
      ...early.map((sheet) =>
        doubt('stage too early after hiving', sheet, `${sheet.body.youngest ?? ''} ${days} days after hiving`),
      ),
      ...(wax > 1 + days * 0.6 ? [doubt('comb too soon', visit, `${wax.toFixed(1)} combs in ${days} days`)] : []),
    ];
  });
}

/** Days without a laying queen: from her going to the first day on which another could lay. */
function lastGone(file: CaseFile, day: Day): { event: QueenEvent; days: number } | null {
  const before = file.queens.filter((one) => one.latest < day);
  const gone = before.filter((one) => one.what === 'gone').sort((a, b) => (a.latest < b.latest ? 1 : -1))[0];
  if (gone === undefined || before.some((one) => one.what === 'came' && one.latest >= gone.latest)) return null;
  return { event: gone, days: daysBetween(gone.latest, day) };
}

/** Eggs hatch by day 3; a queen raised from what was left lays after 12 days at the earliest (with swarm cells at hand), 14 else. */
function withoutQueen(file: CaseFile): readonly Doubt[] {
  return file.visits.flatMap((visit) => {
    const gone = lastGone(file, visit.day);
    if (gone === null || gone.days <= 4 || gone.days >= 12) return [];
    return visit.sheets
      .filter((sheet) => sheet.body.eggs === 'seen' && !sheet.body.signs.includes('several eggs in a cell'))
      .map((sheet) => doubt('eggs without a queen', sheet, `${gone.days} days after the queen went`));
  });
}

/** What she left emerges, about a twenty-first part a day: all worker brood is gone in three weeks and a day. */
function outlives(file: CaseFile): readonly Doubt[] {
  return file.visits.flatMap((visit) => {
    const gone = lastGone(file, visit.day);
    if (gone === null || !visit.whole || file.disturbed.some((day) => day >= gone.event.latest && day < visit.day))
      return [];
    const raised = file.queens.some(
      (one) => one.what === 'raised' && one.day >= gone.event.latest && one.day <= visit.day,
    );
    const before = file.visits
      .filter((one) => one.whole && one.day <= gone.event.latest && daysBetween(one.day, gone.event.latest) < 15)
      .at(-1);
    const workers = visit.sheets.some((sheet) => sheet.body.signs.length > 0);
    if (before === undefined || raised || workers) return [];
    const share = broodCellsSeen(visit) / Math.max(1, broodCellsSeen(before));
    const left = 1 - gone.days / 21;
    const inThreeWeeks = gone.days >= 4 && gone.days <= 18 && (share > left + 0.3 || share < left * 0.25);
    const fails = inThreeWeeks || (gone.days > 23 && gone.days < 30 && share > 0.08 && !layingAgain(visit));
    return fails
      ? [doubt('brood outlives its queen', visit, `${Math.round(share * 100)} % of the brood ${gone.days} days after`)]
      : [];
  });
}

function layingAgain(visit: CaseVisit): boolean {
  return visit.sheets.some((sheet) => sheet.body.eggs === 'seen' || sheet.body.youngest === 'young larva');
}

/** All ages together: 21 days of laying at the most; and between two whole visits no more than the days allow. */
function queensPower(file: CaseFile): readonly Doubt[] {
  const whole = { ...file, visits: file.visits.filter((visit) => visit.whole) };
  const grown = pairs(whole, 25).filter(
    ({ before, after, days }) =>
      broodCellsSeen(after) > 1.25 * broodCellsSeen(before) + mostEggs * days &&
      !file.disturbed.some((day) => day >= before.day && day <= after.day),
  );
  return [
    ...file.visits
      .filter((visit) => broodCellsSeen(visit) > mostEggs * 21)
      .map((visit) => doubt('more brood than a queen lays', visit, `${Math.round(broodCellsSeen(visit))} cells`)),
    ...grown.map(({ after, days }) =>
      doubt('more brood than a queen lays', after, `${Math.round(broodCellsSeen(after))} cells after ${days} days`),
    ),
  ];
}

/** Brood is at its greatest between May and July, small in October and March, nearly none in December and January. */
function season(file: CaseFile): readonly Doubt[] {
  const doubts: Doubt[] = [];
  const winter = file.visits.filter(
    (visit) => ['11', '12', '01', '02'].includes(visit.day.slice(5, 7)) && broodCellsSeen(visit) > 3000,
  );
  doubts.push(
    ...winter.map((visit) =>
      doubt('brood out of season', visit, `${Math.round(broodCellsSeen(visit))} cells in winter`),
    ),
  );
  const steady = file.hivedAsSwarm === null && file.swarmsLeft.length === 0 && file.disturbed.length === 0;
  const year = file.visits.filter((visit) => visit.whole && visit.day < '2014-01-01');
  const most = [...year].sort((a, b) => broodCellsSeen(b) - broodCellsSeen(a))[0];
  if (!steady || most === undefined || year.length < 6) return doubts;
  if (most.day < '2013-05-01' || most.day > '2013-07-31')
    doubts.push(doubt('brood out of season', most, `the most brood on ${most.day}`));
  const april = year.find((visit) => visit.day < '2013-05-01');
  if (april !== undefined && broodCellsSeen(april) > 0.75 * broodCellsSeen(most))
    doubts.push(doubt('no spring growth', april, 'as much in April as at the peak'));
  const october = year.filter((visit) => visit.day >= '2013-10-05');
  return [
    ...doubts,
    ...october
      .filter((visit) => broodCellsSeen(visit) > 0.5 * broodCellsSeen(most))
      .map((visit) => doubt('brood out of season', visit, 'as in summer')),
  ];
}

function foodEighths(visit: CaseVisit): number {
  return mainSheets(visit).reduce((all, sheet) => all + food8(sheet) * builtOf(visit, sheet), 0);
}

/** In a yard near flowering trees the food grows from mid-May to early July, and shrinks from October to April. */
function flow(file: CaseFile): readonly Doubt[] {
  const whole = file.visits.filter((visit) => visit.whole);
  const near = (from: Day, to: Day): CaseVisit | undefined =>
    whole.find((visit) => visit.day >= from && visit.day <= to);
  const taken = (from: CaseVisit, to: CaseVisit): boolean =>
    file.visits.some((visit) => visit.day >= from.day && visit.day <= to.day && visit.body.taken.length > 0);
  const may = near('2013-05-06', '2013-05-25');
  const july = [...whole].reverse().find((visit) => visit.day >= '2013-06-20' && visit.day <= '2013-07-12');
  const october = file.visits.filter((visit) => visit.day >= '2013-09-20' && visit.day <= '2013-11-01').at(-1);
  const april = near('2014-03-01', '2014-04-15');
  const doubts: Doubt[] = [];
  if (may !== undefined && july !== undefined && !taken(may, july) && foodEighths(july) < 1.3 * foodEighths(may)) {
    doubts.push(doubt('no honey from the flow', july, `${foodEighths(july)} after ${foodEighths(may)} eighths`));
  }
  if (october !== undefined && april !== undefined && foodEighths(april) > foodEighths(october) * 1.1)
    doubts.push(doubt('food grew in winter', april, `${foodEighths(april)} eighths`));
  return doubts;
}

/** Bars of bees by month, least and most, in this kind of trough (McLellan 1978; Harris 2009, 2010: 5 000 to 40 000 bees and more). */
const barsByMonth: Readonly<Record<string, readonly [number, number]>> = {
  '03': [1, 11],
  '04': [1.5, 15],
  '05': [1, 20],
  '06': [2, 25],
  '07': [0.5, 25],
  '08': [0.5, 24],
  '09': [2, 21],
  '10': [2, 19],
};

function strength(file: CaseFile): readonly Doubt[] {
  return file.visits.flatMap((visit) => {
    const [least, most] = barsByMonth[visit.day.slice(5, 7)] ?? [0, 12];
    const bars = visit.body.beesBars;
    return bars !== null && (bars < least || bars > most)
      ? [doubt('strength out of range', visit, `${bars} bars of bees`)]
      : [];
  });
}

/** Bees come from sealed brood alone: no more than were there, and half again, and the brood that could emerge since. */
function newBees(file: CaseFile): readonly Doubt[] {
  return pairs(
    { ...file, visits: file.visits.filter((visit) => visit.whole && visit.body.beesBars !== null) },
    25,
  ).flatMap(({ before, after }) => {
    const could = 1.5 * (before.body.beesBars ?? 0) * beesOfBar + 0.9 * broodCellsSeen(before) + 1500;
    const are = (after.body.beesBars ?? 0) * beesOfBar;
    return are > could
      ? [doubt('bees from nowhere', after, `${Math.round(are)} bees, at most ${Math.round(could)} could be`)]
      : [];
  });
}

function cellsOf(visit: CaseVisit): { open: number; sealed: number; torn: number; emerged: number } {
  const all = { open: 0, sealed: 0, torn: 0, emerged: 0 };
  for (const { body } of mainSheets(visit))
    for (const key of ['open', 'sealed', 'torn', 'emerged'] as const) all[key] += body.cells?.[key] ?? 0;
  return all;
}

/** An open cell is sealed within 6 days of being seen, and none has emerged sooner than 7 days after the first sealed one could be. */
function cellOrder(file: CaseFile): readonly Doubt[] {
  return pairs(file, 8).flatMap(({ before, after, days }) => {
    const was = cellsOf(before);
    const is = cellsOf(after);
    const none =
      was.open + was.sealed + was.torn + was.emerged === 0 &&
      before.whole &&
      before.sheets.some((sheet) => sheet.body.cellsLooked !== 'not looked');
    const doubts: Doubt[] = [];
    if (is.emerged > 0 && none)
      doubts.push(doubt('cells out of order', after, `emerged ${days} days after none was there`));
    if (is.emerged > 0 && was.open > 0 && was.sealed === 0 && days < 6)
      doubts.push(doubt('cells out of order', after, `open, and emerged ${days} days later`));
    if (was.open > 2 && was.sealed === 0 && is.open >= was.open && is.sealed === 0 && days > 6)
      doubts.push(doubt('cells out of order', after, `still open after ${days} days`));
    return doubts;
  });
}

/** A prime swarm goes when the first cell is sealed: there were cells shortly before, and sealed ones just after. */
function swarms(file: CaseFile): readonly Doubt[] {
  return file.swarmsLeft.flatMap(({ entry, day }) => {
    const before = file.visits.filter((visit) => visit.day < day && daysBetween(visit.day, day) <= 10).at(-1);
    const after = file.visits.find((visit) => visit.day > day && daysBetween(day, visit.day) <= 5);
    const bare = before !== undefined && cellsOf(before).open + cellsOf(before).sealed === 0;
    const unsealed = after !== undefined && cellsOf(after).sealed + cellsOf(after).emerged === 0;
    return bare || unsealed
      ? [
          {
            code: 'swarm without cells' as const,
            entry: entry.id,
            day,
            found: bare ? 'none before' : 'none sealed after',
          },
        ]
      : [];
  });
}

function afterEnd(file: CaseFile): readonly Doubt[] {
  const { ended } = file;
  return ended === null
    ? []
    : file.visits
        .filter((visit) => visit.day > ended)
        .map((visit) => doubt('visit after the end', visit, `ended ${ended}`));
}

/** Wax stays: a comb that was built is not smaller at the next look, beyond what an eye may err. */
function combs(file: CaseFile): readonly Doubt[] {
  const last = new Map<string, number>();
  return file.visits.flatMap((visit) =>
    visit.sheets.flatMap((sheet) => {
      const { comb, built8 } = sheet.body;
      if (comb === undefined || built8 === undefined || built8 === null) return [];
      const was = last.get(comb) ?? 0;
      last.set(comb, Math.max(was, built8));
      return built8 < was - 1 ? [doubt('comb shrank', sheet, `${built8} after ${was} eighths`)] : [];
    }),
  );
}

/** A careful keeper lifts brood at 13 degC (56 degF) and above. */
function cold(journal: readonly Entry[]): readonly Doubt[] {
  const typed = new Map(
    journal
      .filter((e) => e.kind === 'day-weather')
      .map((e) => [e.at.slice(0, 10), (e.body as { high: { value: number; unit: string } | null }).high]),
  );
  return journal
    .filter((e) => e.kind === 'visit')
    .flatMap((e) => {
      const high = typed.get(e.at.slice(0, 10));
      const degF =
        high === undefined || high === null ? null : high.unit === 'degF' ? high.value : high.value * 1.8 + 32;
      return degF !== null && degF >= 56
        ? []
        : [{ code: 'opened in the cold' as const, entry: e.id, day: e.at.slice(0, 10), found: `${degF ?? 'no'} degF` }];
    });
}
