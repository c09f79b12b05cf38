/** A nest as the first screen shows it: invented, drawn by the same sheets as everything else. */
import type { Content, Shares } from '../../../hive/contents.ts';
import type { BarView } from '../../../colony/view.ts';
import { strip } from '../../../sheets/strip.ts';

const bars = 16;
const trough = { topWidthMm: 460, depthMm: 300, wallAngleDeg: 22, sideGapMm: 8, floorGapMm: 20 } as const;

/** From the entrance inwards: stores, the brood nest with its oldest brood at the edge, stores, new comb. */
const combs: readonly (readonly [built: number, held: Partial<Record<Content, number>>])[] = [
  [0.95, { honey: 0.6, bread: 0.15 }],
  [1, { honey: 0.3, bread: 0.15, emerging: 0.15, sealed: 0.25 }],
  [1, { honey: 0.18, bread: 0.1, sealed: 0.3, larva: 0.2, egg: 0.08 }],
  [1, { honey: 0.12, bread: 0.08, sealed: 0.2, larva: 0.22, egg: 0.24 }],
  [1, { honey: 0.14, bread: 0.08, sealed: 0.28, larva: 0.16, egg: 0.14, drone: 0.05 }],
  [1, { honey: 0.22, bread: 0.1, emerging: 0.25, sealed: 0.2 }],
  [0.95, { honey: 0.45, nectar: 0.15, bread: 0.08, drone: 0.12 }],
  [0.85, { honey: 0.45, nectar: 0.4 }],
  [0.5, { nectar: 0.5 }],
  [0.25, {}],
];

export function sampleStrip(label: string): string {
  const hung = combs.map(([built, held], n): BarView => {
    const sum = Object.values(held).reduce((total, share) => total + share, 0);
    const shares: Shares = {
      honey: 0,
      nectar: 0,
      bread: 0,
      drone: 0,
      emerging: 0,
      sealed: 0,
      larva: 0,
      egg: 0,
      ...held,
      empty: 1 - sum,
    };
    return {
      place: n + 1,
      comb: null,
      mark: null,
      widthMm: 35,
      kind: 'comb',
      built,
      shares,
      ink: 'seen',
      bees: 0.8,
      cells: null,
      queenSeen: n === 3,
      readOn: null,
      spot: null,
    };
  });
  return strip(hung, {
    ...trough,
    density: 'near',
    width: 360,
    height: 130,
    hiveBars: bars,
    bay: { from: 1, to: 12 },
    entrance: 'first',
    label,
  });
}
