/** Lengths of hives in print, cavities and combs worked apart, and closed forms against the polygon. */
import type { Check } from '../check.ts';

const plan = { kind: 'published', source: 'bfd-journal', where: 'plan of issue 93', sureness: 'read in the source' } as const;
const apart = { kind: 'worked apart', how: 'the same closed forms with an arithmetic of their own' } as const;

/** A hive length: bars, width, printed length. */
function length(bars: number, barWidthMm: number, expected: number): Check {
  return {
    id: `hive-length-${barWidthMm}`,
    topic: 'wood and comb',
    what: `inside length for ${bars} bars of ${barWidthMm} mm and 10 mm to spare`,
    origin: plan,
    ask: {
      kind: 'sum',
      sum: 'hive-box',
      read: 'innerLengthMm',
      input: { floorWidthMm: 200, heightMm: 300, wallAngleDeg: 30, bars, barWidthMm, expansionMm: 10 },
    },
    expected,
    unit: 'mm',
    tolerance: 0,
    why: 'whole millimetres',
    circular: false,
  };
}

const cavities = [
  { angle: 25, floor: 200, height: 250, top: 433.2, area: 7.914, litres: 2.77 },
  { angle: 30, floor: 200, height: 250, top: 488.7, area: 8.608, litres: 3.013 },
  { angle: 30, floor: 200, height: 300, top: 546.4, area: 11.196, litres: 3.919 },
] as const;

const cavityChecks: readonly Check[] = cavities.flatMap(({ angle, floor, height, top, area, litres }) => {
  const input = { floorWidthMm: floor, heightMm: height, wallAngleDeg: angle, bars: 27, barWidthMm: 35, expansionMm: 10 };
  const row = (read: string, expected: number, unit: string, tolerance: number): Check => ({
    id: `cavity-${angle}-${height}-${read.toLowerCase()}`,
    topic: 'wood and comb',
    what: `walls at ${angle}°, floor ${floor} mm, ${height} mm high: ${read}`,
    origin: apart,
    ask: { kind: 'sum', sum: 'hive-box', input, read },
    expected,
    unit,
    tolerance,
    why: 'the table rounds its last digit',
    circular: false,
  });
  return [
    row('topWidthMm', top, 'mm', 0.05),
    row('crossSectionDm2', area, 'dm²', 0.0005),
    row('litresPerBar', litres, 'L', 0.0005),
  ];
});

const combs = [
  {
    id: 'shallow-bare',
    size: [380, 230, 15, 0, 0],
    rows: { bottomMm: 256.743, faceDm2: 7.32255, centroidMm: 107.58, perimeterMm: 1112.97, secondMomentCm4: 31877 },
  },
  {
    id: 'shallow-gaps',
    size: [380, 230, 15, 8, 20],
    rows: {
      attachmentMm: 363.44,
      bottomMm: 250.9,
      faceDm2: 6.4505,
      centroidMm: 98.59,
      perimeterMm: 1049.15,
      secondMomentCm4: 23440,
    },
  },
  {
    id: 'middle-bare',
    size: [440, 280, 22.5, 0, 0],
    rows: { bottomMm: 208.04, faceDm2: 9.0726, centroidMm: 123.3, perimeterMm: 1254.18, secondMomentCm4: 56743 },
  },
  {
    id: 'middle-gaps',
    size: [440, 280, 22.5, 8, 20],
    rows: {
      attachmentMm: 422.682,
      bottomMm: 207.291,
      faceDm2: 8.18964,
      centroidMm: 115.184,
      perimeterMm: 1192.816,
      secondMomentCm4: 44337,
      'depthOfShareMm.0.mm': 51,
      'depthOfShareMm.1.mm': 108.4,
      'depthOfShareMm.2.mm': 175.5,
    },
  },
  {
    id: 'deep-bare',
    size: [480, 300, 30, 0, 0],
    rows: { bottomMm: 133.59, faceDm2: 9.20385, centroidMm: 121.772, perimeterMm: 1306.41, secondMomentCm4: 61695 },
  },
  {
    id: 'deep-gaps',
    size: [480, 300, 30, 8, 20],
    rows: {
      attachmentMm: 461.53,
      bottomMm: 138.21,
      faceDm2: 8.3963,
      centroidMm: 114.84,
      perimeterMm: 1246.37,
      secondMomentCm4: 49541,
      'depthOfShareMm.0.mm': 48.4,
      'depthOfShareMm.1.mm': 104.7,
      'depthOfShareMm.2.mm': 174.6,
    },
  },
] as const;

/** A row that was printed wrongly, and how one sees it. */
const slips: Readonly<Record<string, { readonly differs: string }>> = {
  'deep-gaps attachmentMm': {
    differs: 'printed 46.153 cm; by hand 48 − 1.6 / cos 30° = 46.1525, so its last digit was rounded the wrong way',
  },
};

const combChecks: readonly Check[] = combs.flatMap(({ id, size, rows }) => {
  const [topWidthMm, depthMm, wallAngleDeg, sideGapMm, floorGapMm] = size;
  return Object.entries(rows).map(([read, expected]): Check => ({
    id: `comb-${id}-${read.replaceAll('.', '-').toLowerCase()}`,
    topic: 'wood and comb',
    what: `comb ${topWidthMm} × ${depthMm} mm, walls at ${wallAngleDeg}°, gaps ${sideGapMm} and ${floorGapMm}: ${read}`,
    origin: apart,
    ask: { kind: 'sum', sum: 'comb-face', input: { topWidthMm, depthMm, wallAngleDeg, sideGapMm, floorGapMm }, read },
    expected,
    unit: read.endsWith('Dm2') ? 'dm²' : read.endsWith('Cm4') ? 'cm⁴' : 'mm',
    tolerance: lastDigit(expected),
    why: 'half of the last digit printed',
    circular: false,
    ...slips[`${id} ${read}`],
  }));
});

/** Half of the last digit of a printed number, with a fiftieth of it for the rounding of the machine. */
function lastDigit(printed: number): number {
  const decimals = `${printed}`.split('.')[1]?.length ?? 0;
  // Lengths were printed in centimetres to a hundredth or finer, so that even a whole number of millimetres has a tenth behind it.
  return 0.51 * 10 ** -Math.max(decimals, printed > 1000 ? 0 : 1);
}

const polygonChecks: readonly Check[] = combs.map(({ id, size }): Check => ({
  id: `polygon-${id}`,
  topic: 'wood and comb',
  what: `closed forms of the comb ${id.replace('-', ', ')} against the polygon of its corners`,
  origin: { kind: 'worked apart', how: 'shoelace sums over the corners' },
  ask: { kind: 'worked', name: 'closed form against polygon', input: size },
  expected: 0,
  unit: 'of the value',
  tolerance: 1e-12,
  why: 'rounding of the machine',
  circular: false,
}));

const spacingChecks: readonly Check[] = [
  {
    id: 'spacing-european',
    topic: 'wood and comb',
    what: 'distance of natural combs of European bees',
    origin: { kind: 'common practice' },
    ask: { kind: 'range', figure: 'bar-width' },
    expected: 35,
    unit: 'mm',
    tolerance: 0,
    why: 'in the range',
    circular: false,
  },
  {
    id: 'spacing-african',
    topic: 'wood and comb',
    what: 'distance of natural combs of an African race',
    origin: {
      kind: 'published',
      source: 'ethiopia-spacing-2019',
      where: '33.70, standard deviation 1.84',
      sureness: 'read in the source',
    },
    ask: { kind: 'figure', figure: 'bar-width-african' },
    expected: 33.7,
    unit: 'mm',
    tolerance: 1.84,
    why: 'one standard deviation of their nests',
    circular: false,
  },
  {
    id: 'bee-space-african',
    topic: 'wood and comb',
    what: 'bee space of the same African race',
    origin: {
      kind: 'published',
      source: 'ethiopia-spacing-2019',
      where: '10.04, standard deviation 2.23',
      sureness: 'read in the source',
    },
    ask: { kind: 'range', figure: 'bee-space' },
    expected: 10.04,
    unit: 'mm',
    tolerance: 0,
    why: 'in the range',
    circular: false,
    differs: "ours is for European bees and is the builders' rule",
  },
  {
    id: 'wax-natural-nest',
    topic: 'wood and comb',
    what: 'wax of a dm² of both faces: 2.5 pounds on 27 square feet of face',
    origin: { kind: 'published', source: 'nova-nest', where: '2.5 pounds of wax', sureness: 'read in a second source' },
    ask: { kind: 'range', figure: 'wax-per-dm2' },
    expected: 0.00904,
    unit: 'kg/dm2',
    tolerance: 0,
    why: 'in the range',
    circular: false,
  },
];

export const woodChecks: readonly Check[] = [
  length(27, 35, 955),
  length(27, 32, 874),
  ...cavityChecks,
  ...combChecks,
  ...polygonChecks,
  ...spacingChecks,
];
