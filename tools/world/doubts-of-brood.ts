/**
 * What cannot be true of brood and queens: stages too early after hiving, eggs and brood without a queen, more
 * than a queen lays, a nest out of season. Days are those of development, bounds are round.
 */
import { type Day, daysBetween } from '../../src/numbers/day.ts';
import { type CaseFile, type CaseVisit, mainSheets, pairs, type QueenEvent } from './case-notes.ts';
import { broodCellsSeen, type Doubt, doubt, mostEggs } from './doubt.ts';

/** Bare bars: the first egg cannot be older than the swarm's stay. Larvae hatch on day 3, are sealed on day 8 at the earliest. */
export function afterHiving(file: CaseFile): readonly Doubt[] {
  const hived = file.hivedAsSwarm;
  if (hived === null) return [];
  return file.visits.flatMap((visit) => {
    const days = daysBetween(hived.day, visit.day);
    const first: Readonly<Record<string, number>> = { egg: 0, 'young larva': 3, larva: 5, sealed: 8, none: 0 };
    const early = visit.sheets.filter(
      (sheet) =>
        (first[sheet.body.youngest ?? 'none'] ?? 0) > days || (days < 9 && sheet.body.faces.some((f) => (f.drone8 ?? 0) > 0)),
    );
    const wax =
      mainSheets(visit).reduce((all, sheet) => all + (sheet.body.built8 ?? (sheet.body.combClass === 'bare' ? 0 : 8)), 0) / 8;
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
export function withoutQueen(file: CaseFile): readonly Doubt[] {
  return file.visits.flatMap((visit) => {
    const gone = lastGone(file, visit.day);
    if (gone === null || gone.days <= 4 || gone.days >= 12) return [];
    return visit.sheets
      .filter((sheet) => sheet.body.eggs === 'seen' && !sheet.body.signs.includes('several eggs in a cell'))
      .map((sheet) => doubt('eggs without a queen', sheet, `${gone.days} days after the queen went`));
  });
}

/** What she left emerges, about a twenty-first part a day: all worker brood is gone in three weeks and a day. */
export function outlives(file: CaseFile): readonly Doubt[] {
  return file.visits.flatMap((visit) => {
    const gone = lastGone(file, visit.day);
    if (gone === null || !visit.whole || file.disturbed.some((day) => day >= gone.event.latest && day < visit.day)) return [];
    const raised = file.queens.some((one) => one.what === 'raised' && one.day >= gone.event.latest && one.day <= visit.day);
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
export function queensPower(file: CaseFile): readonly Doubt[] {
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
export function season(file: CaseFile): readonly Doubt[] {
  const doubts: Doubt[] = [];
  const winter = file.visits.filter(
    (visit) => ['11', '12', '01', '02'].includes(visit.day.slice(5, 7)) && broodCellsSeen(visit) > 3000,
  );
  doubts.push(
    ...winter.map((visit) => doubt('brood out of season', visit, `${Math.round(broodCellsSeen(visit))} cells in winter`)),
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
