/**
 * A record of forecasts made up from closed forms, for tests of words, drawings and screens: bees foretold well,
 * honey no better than "as last time", sealed brood too few to say. Nothing of the program uses it.
 */
import { addDays } from '../numbers/day.ts';
import type { ForecastRecord, RecordRow, RecordScore } from './record.ts';

export function madeUpRecord(colony: string | null = null): ForecastRecord {
  return {
    colony,
    year: null,
    years: [2013, 2014],
    waiting: 3,
    scores: [
      scoreOf('bees', 7, rowsOf(24, 7, 14_000, 0.16), [0.14, 0.19, 0.13, 0.2], true),
      scoreOf('bees', 21, rowsOf(22, 21, 15_000, 0.3), [0.27, 0.31, 0.25, 0.38], true),
      scoreOf('sealed', 21, rowsOf(6, 21, 9_000, 0.4), [0.36, 0.35, 0.33, 0.37], null),
      scoreOf('honeyKg', 21, rowsOf(22, 21, 7, 0.5), [0.46, null, null, 0.41], false),
    ],
  };
}

type Off = readonly [engine: number, challenger: number | null, blend: number | null, last: number];

function scoreOf(
  what: RecordScore['what'],
  horizonDays: number,
  rows: readonly RecordRow[],
  [engine, challenger, blend, last]: Off,
  isBetter: boolean | null,
): RecordScore {
  const inside = rows.filter((row) => row.low <= row.came && row.came <= row.high).length;
  const logRmse = { engine, challenger, blend, 'as last time': last };
  return { what, horizonDays, n: rows.length, inside, logRmse, isBetter, shown: blend === null ? 'engine' : 'blend', rows };
}

/** What came swings about what was forecast; every fifth or so falls outside. */
function rowsOf(n: number, horizonDays: number, size: number, off: number): readonly RecordRow[] {
  return Array.from({ length: n }, (_, i) => {
    const issuedOn = addDays('2013-06-01', i * 13);
    const likely = size * (1 + 0.4 * Math.sin(i / 3));
    return {
      colony: 'colony-1',
      issuedOn,
      forDay: addDays(issuedOn, horizonDays),
      low: likely * Math.exp(-1.3 * off),
      likely,
      high: likely * Math.exp(1.3 * off),
      lastTime: likely * 0.9,
      came: likely * Math.exp(off * 1.6 * Math.sin(i * 2.4)),
    };
  });
}
