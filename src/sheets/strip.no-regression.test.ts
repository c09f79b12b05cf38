/** One strip with everything in it, kept as a file: it says that the drawing changed, not that it is wrong. */
import assert from 'node:assert/strict';
import { readFileSync, writeFileSync } from 'node:fs';
import { test } from 'node:test';
import type { BarView } from '../colony/view.ts';
import { bareShares, type Ink } from '../hive/contents.ts';
import { strip } from './strip.ts';
import { withTheme } from './themes.ts';

const kept = new URL('./kept/lens-strip.svg', import.meta.url);

const base: BarView = {
  place: 1,
  comb: 'c',
  mark: null,
  widthMm: 35,
  kind: 'comb',
  built: 1,
  shares: {
    ...bareShares,
    honey: 0.2,
    nectar: 0.1,
    bread: 0.1,
    empty: 0.1,
    emerging: 0.1,
    sealed: 0.1,
    larva: 0.1,
    egg: 0.1,
    drone: 0.1,
  },
  ink: 'seen',
  bees: 0.6,
  cells: null,
  queenSeen: false,
  readOn: null,
  spot: null,
};

const bars: readonly BarView[] = (['seen', 'worked out', 'guessed'] as readonly Ink[])
  .flatMap((ink) => [ink, ink])
  .map((ink, i): BarView => ({ ...base, place: i + 1, ink, built: 1 - i * 0.12 }))
  .concat([
    { ...base, place: 7, cells: { open: 1, sealed: 1, torn: 1, emerged: 1 }, queenSeen: true, widthMm: 38 },
    { ...base, place: 8, kind: 'unknown', shares: null, bees: null },
    { ...base, place: 9, kind: 'bare', built: 0, shares: null, bees: null },
  ]);

test('D4 a strip with every ink, mark and lens is drawn as it was when last looked at', () => {
  const svg = strip(bars, {
    density: 'far',
    width: 360,
    height: 124,
    hiveBars: 24,
    bay: { from: 1, to: 10 },
    entrance: 'first',
    label: 'Every ink',
    lens: { from: 2, to: 8 },
    current: 5,
    numbers: true,
    prefix: 'kept',
    topWidthMm: 420,
    depthMm: 300,
    wallAngleDeg: 22,
    sideGapMm: 8,
    floorGapMm: 20,
    barWidthMm: 35,
  });
  const now = `${withTheme(svg, 'paper')}\n`;
  if (process.env['FESTOON_KEEP'] === '1') writeFileSync(kept, now);
  assert.equal(now, readFileSync(kept, 'utf8'), 'look at build/gallery.html; when it is better, run once with FESTOON_KEEP=1');
});
