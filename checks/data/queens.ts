/** Queens, losses and swarms: days from more than one source each. */
import type { FigureKey } from '../../src/figures/list.ts';
import type { Check, Origin } from '../check.ts';

const pages = (where: string): Origin => ({ kind: 'published', source: 'queen-pages', where, sureness: 'read in a second source' });
const connor = (where: string): Origin => (
  { kind: 'published', source: 'connor-colony-development', where, sureness: 'read in a second source' }
);

function range(id: string, what: string, figure: FigureKey, expected: number, unit: string, origin: Origin, differs?: string): Check {
  return {
    id, topic: 'queens and swarms', what, origin, ask: { kind: 'range', figure }, expected, unit, tolerance: 0, why: 'in the range',
    circular: false,
    ...(differs === undefined ? {} : { differs }),
  };
}

const colours = [[2024, 'green'], [2025, 'blue'], [2026, 'white'], [2027, 'yellow'], [2028, 'red']] as const;

export const queenChecks: readonly Check[] = [
  {
    id: 'egg-to-egg', topic: 'queens and swarms', what: 'from a queen\'s egg to her first egg', origin: connor('16 + 7 + 2 + 3'),
    ask: { kind: 'worked', name: 'queen egg to egg', input: [] }, expected: 28, unit: 'd', tolerance: 2,
    why: 'his sum is in whole days with an older bride; ours rests on timed first eggs', circular: false,
  },
  {
    id: 'latest-virgin', topic: 'queens and swarms', what: 'latest virgin after a loss, raised from an egg of that day',
    origin: pages('timetable of a split left to itself: up to 16'), ask: { kind: 'worked', name: 'latest after a loss', input: [0] },
    expected: 16, unit: 'd', tolerance: 0, why: 'whole days', circular: false,
  },
  {
    id: 'earliest-virgin', topic: 'queens and swarms', what: 'earliest virgin after a loss, raised from an old larva',
    origin: pages('10.5 or less means old larvae'), ask: { kind: 'worked', name: 'earliest virgin after a loss', input: [] },
    expected: 10.5, unit: 'd', tolerance: 0.5, why: 'ours counts whole days', circular: false,
  },
  {
    id: 'loss-dated', topic: 'queens and swarms', what: 'queen taken on 1 May, eggs of that day in the nest: latest virgin',
    origin: pages('16 days from a fresh egg'),
    ask: { kind: 'sum', sum: 'queen-loss', input: { youngestStage: 'egg', seenOn: '2025-05-01' }, read: 'virginEmergesLatest' },
    expected: '2025-05-17', unit: 'day', tolerance: 0, why: 'whole days', circular: false,
  },
  {
    id: 'no-rescue-dated', topic: 'queens and swarms', what: 'open brood gone nine days after the last egg: no hope without cells',
    origin: pages('all brood sealed by day 9 to 10'),
    ask: { kind: 'sum', sum: 'queen-loss', input: { youngestStage: 'egg', seenOn: '2025-05-01' }, read: 'hopelessFrom' },
    expected: '2025-05-10', unit: 'day', tolerance: 1, why: 'pages say 9 to 10', circular: false,
  },
  range('split-emerges-early', 'a split left to itself: virgin from day 11', 'emergency-queen-emerges', 11, 'd', pages('11 to 13')),
  range('split-emerges-late', 'a split left to itself: virgin by day 13', 'emergency-queen-emerges', 13, 'd', pages('11 to 13')),
  range('split-eggs-early', 'a split left to itself: eggs from day 20', 'emergency-first-eggs', 20, 'd', pages('20 to 28')),
  range('split-eggs-late', 'a split left to itself: eggs by day 28', 'emergency-first-eggs', 28, 'd', pages('20 to 28')),
  range('first-egg-early', 'first eggs 8 days after emerging', 'queen-first-egg-age', 8, 'd', pages('8 to 14')),
  range('first-egg-late', 'first eggs 14 days after emerging', 'queen-first-egg-age', 14, 'd', pages('8 to 14')),
  range('mate-ready-late', 'ready to mate at 7 days', 'queen-mate-ready-age', 7, 'd', connor('7')),
  range('sealed-day-8', 'a queen cell is sealed on day 8', 'queen-sealing-age', 8, 'd', pages('grafting timetable: 8 to 9')),
  range('sealed-day-9', 'a queen cell is sealed on day 9', 'queen-sealing-age', 9, 'd', pages('grafting timetable: 8 to 9')),
  range('emerges-day-15', 'a queen emerges on day 15', 'queen-emerging-age', 15, 'd', pages('15 to 16, 17 when cool')),
  range('emerges-day-17', 'a queen emerges on day 17 when cool', 'queen-emerging-age', 17, 'd', pages('15 to 16, 17 when cool')),
  range(
    'laying-workers-four-weeks', 'laying workers within a course of four weeks', 'laying-workers-onset', 28, 'd',
    { kind: 'published', source: 'miller-ratnieks-2001', where: 'length of the study', sureness: 'read in the abstract' },
  ),
  { ...range('swarm-ninth-day', 'the swarm leaves on the ninth day', 'swarm-leaves-at-sealing', 9, 'd', pages('ninth day')),
  circular: true },
  range(
    'swarm-share-example', 'a worked example lets 60 of 100 bees leave', 'swarm-share', 0.6, 'share',
    { kind: 'published', source: 'school-swarm-sum', where: 'swarm takes 60 %', sureness: 'read in a second source' },
  ),
  {
    id: 'swarm-share-mean', topic: 'queens and swarms', what: 'the same example against the measured mean',
    origin: { kind: 'published', source: 'school-swarm-sum', where: 'swarm takes 60 %', sureness: 'read in a second source' },
    ask: { kind: 'figure', figure: 'swarm-share' }, expected: 0.6, unit: 'share', tolerance: 0.05, why: '5 of 100', circular: false,
    differs: 'measured swarms took 75 of 100 workers: of 30 000 bees 7 500 stay, not 12 000',
  },
  range('swarm-cells-low', 'a swarm may have four cells', 'swarm-cells-count', 4, 'cells', pages('4 to 20')),
  range('swarm-cells-high', 'a swarm may have twenty cells', 'swarm-cells-count', 20, 'cells', pages('4 to 20')),
  ...colours.map(([year, colour]): Check => ({
    id: `mark-${year}`, topic: 'queens and swarms', what: `colour of the queens of ${year}`,
    origin: { kind: 'published', source: 'mark-colour-pages', where: 'row of five', sureness: 'read in a second source' },
    ask: { kind: 'sum', sum: 'mark-colour', input: { year }, read: 'colour' }, expected: colour, unit: 'colour', tolerance: 0,
    why: 'a word', circular: false,
  })),
];
