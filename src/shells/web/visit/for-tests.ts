/** A visit that has just begun, for the tests of this room. Nothing outside tests uses it. */
import type { Beginning } from './draft.ts';

export const stamp = { noted: '2014-05-16T18:05:00Z', at: '2014-05-16T14:05' } as const;

export function uuid(n: number): string {
  return `00000000-0000-7000-8000-${String(n).padStart(12, '0')}`;
}

/** Ids 1 to 6 are taken by it. */
export function beginningOf(change: Partial<Beginning> = {}): Beginning {
  return {
    visit: uuid(1),
    entry: uuid(2),
    yard: uuid(3),
    by: uuid(4),
    colony: uuid(5),
    hive: uuid(6),
    began: stamp.at,
    visitKind: 'usual',
    order: 'from the follower',
    bay: { from: 1, to: 5, follower: 'last' },
    hiveBars: 8,
    brushed: false,
    combs: [],
    gaps: [],
    joined: [],
    foretold: null,
    ...change,
  };
}
