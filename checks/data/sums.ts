/** Published intervals for counted shares. */
import type { Check } from '../check.ts';

/** Score interval without continuity correction, shares as printed. */
const rows = [
  { hits: 81, of: 263, lo: 0.2553, hi: 0.3662 },
  { hits: 15, of: 148, lo: 0.0624, hi: 0.1605 },
  { hits: 0, of: 20, lo: 0, hi: 0.1611 },
  { hits: 1, of: 29, lo: 0.0061, hi: 0.1718 },
] as const;

export const sumChecks: readonly Check[] = rows.flatMap(({ hits, of, lo, hi }) =>
  (
    [
      ['lo95', lo],
      ['hi95', hi],
    ] as const
  ).map(([read, expected]): Check => ({
    id: `share-${hits}-of-${of}-${read}`,
    topic: 'sums',
    what: `${hits} of ${of}: ${read === 'lo95' ? 'low' : 'high'} end, percent`,
    origin: { kind: 'published', source: 'newcombe-1998', where: 'table I, score method', sureness: 'from memory' },
    ask: { kind: 'sum', sum: 'pattern', input: { occupied: hits, cells: of }, read },
    expected: 100 * expected,
    unit: 'percent',
    tolerance: 0.0051,
    why: 'half of the last digit printed',
    circular: false,
  })),
);
