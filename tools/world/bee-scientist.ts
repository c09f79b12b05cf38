/**
 * Reads a journal as a bee scientist would and says what cannot be true of bees. It uses published days
 * and round bounds (sources in docs/spec/demo.md) and none of the program's estimates; observers' errors
 * are allowed for. An empty answer is no proof that the journal is true.
 */
import type { Entry } from '../../src/journal/entry.ts';
import type { Day } from '../../src/numbers/day.ts';
import { type CaseFile, caseFiles, type CaseVisit, mainSheets, pairs } from './case-notes.ts';
import { beesOfBar, brood8, broodCellsSeen, builtOf, type Doubt, doubt, food8 } from './doubt.ts';
import { afterHiving, outlives, queensPower, season, withoutQueen } from './doubts-of-brood.ts';
import { cellOrder, swarms } from './doubts-of-cells.ts';

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

function foodEighths(visit: CaseVisit): number {
  return mainSheets(visit).reduce((all, sheet) => all + food8(sheet) * builtOf(sheet), 0);
}

/** In a yard near flowering trees the food grows from mid-May to early July, and shrinks from October to April. */
function flow(file: CaseFile): readonly Doubt[] {
  const whole = file.visits.filter((visit) => visit.whole);
  const near = (from: Day, to: Day): CaseVisit | undefined => whole.find((visit) => visit.day >= from && visit.day <= to);
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
    return bars !== null && (bars < least || bars > most) ? [doubt('strength out of range', visit, `${bars} bars of bees`)] : [];
  });
}

/** Bees come from sealed brood alone: no more than were there, and half again, and the brood that could emerge since. */
function newBees(file: CaseFile): readonly Doubt[] {
  return pairs({ ...file, visits: file.visits.filter((visit) => visit.whole && visit.body.beesBars !== null) }, 25).flatMap(
    ({ before, after }) => {
      const could = 1.5 * (before.body.beesBars ?? 0) * beesOfBar + 0.9 * broodCellsSeen(before) + 1500;
      const are = (after.body.beesBars ?? 0) * beesOfBar;
      return are > could
        ? [doubt('bees from nowhere', after, `${Math.round(are)} bees, at most ${Math.round(could)} could be`)]
        : [];
    },
  );
}

function afterEnd(file: CaseFile): readonly Doubt[] {
  const { ended } = file;
  return ended === null
    ? []
    : file.visits.filter((visit) => visit.day > ended).map((visit) => doubt('visit after the end', visit, `ended ${ended}`));
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
      const degF = high === undefined || high === null ? null : high.unit === 'degF' ? high.value : high.value * 1.8 + 32;
      return degF !== null && degF >= 56
        ? []
        : [{ code: 'opened in the cold' as const, entry: e.id, day: e.at.slice(0, 10), found: `${degF ?? 'no'} degF` }];
    });
}
