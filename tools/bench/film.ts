/** A film of sixty visits to twenty bars drawn at phone and table width; beside it one of fifteen, to show the growth. */
import type { BarView } from '../../src/colony/view.ts';
import { bareShares } from '../../src/hive/contents.ts';
import { addDays } from '../../src/numbers/day.ts';
import { film, type FilmStrip } from '../../src/sheets/film.ts';
import { middle } from './timed.ts';

const bars = Array.from({ length: 20 }, (_, i): BarView => {
  const shares = { ...bareShares, empty: 0.3, sealed: 0.4, honey: 0.3 };
  const seen = { ink: 'seen', bees: null, cells: null, queenSeen: false, readOn: '2013-04-01', spot: null } as const;
  return { place: i + 1, comb: `c${i}`, mark: null, widthMm: 35, kind: 'comb', built: 1, shares, ...seen };
});

function visits(count: number): readonly FilmStrip[] {
  return Array.from({ length: count }, (_, i) => {
    const day = addDays('2013-04-01', i * 7);
    const frame = { visit: day, day, kind: 'usual', by: 'o', bars, follower: bars.length + 1, event: null } as const;
    return { frame, date: day, note: null };
  });
}

const trough = { topWidthMm: 450, depthMm: 300, wallAngleDeg: 22, sideGapMm: 8, floorGapMm: 20 };
const shape = { ...trough, frameHeight: 64, hiveBars: 24, entrance: 'first', label: 'A colony', barWidthMm: 35 } as const;
const runs = 9;

for (const width of [360, 860]) {
  const ms = (count: number): number => middle(runs, () => film(visits(count), { ...shape, width }));
  const [few, all] = [ms(15), ms(60)];
  console.log(
    `60 visits × 20 bars at ${width} px: ${all.toFixed(0)} ms (at most 150), ${(all / few).toFixed(1)} times 15 visits`,
  );
}
