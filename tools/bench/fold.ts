/**
 * How long the fold of 100 000 entries takes beside JSON.parse of the same file, in one run: the
 * ratio is what counts, because it does not hang on the machine. The entries are readings and notes of
 * the invented yard told again and again under new ids; they are folded by all kinds of the program.
 */
import { readFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { allKinds } from '../../src/apiary/kinds.ts';
import { emptyColonies } from '../../src/colony/state.ts';
import type { Entry } from '../../src/journal/entry.ts';
import { foldJournal } from '../../src/journal/fold.ts';
import { inOrder } from '../../src/journal/order.ts';

export interface FoldBench {
  readonly entries: number;
  readonly parseMs: number;
  readonly foldMs: number;
  readonly ratio: number;
  /** The same entries in the order of a shuffled arrival, sorting included. */
  readonly shuffledRatio: number;
  readonly faults: number;
}

/** The whole yard once, then its readings again and again until there are enough: ids differ, the rest is real. */
function manyLines(count: number): readonly string[] {
  const own = readFileSync('examples/ferry-road.jsonl', 'utf8')
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line) as Entry);
  const again = own.filter((entry) => entry.kind === 'reading' || entry.kind === 'note' || entry.kind === 'day-weather');
  const many = [...own];
  for (let n = 0; many.length < count; n += 1) {
    const entry = again[n % again.length] as Entry;
    many.push({ ...entry, id: `00000000-0000-4000-8000-${String(n).padStart(12, '0')}` });
  }
  return inOrder(many).map((entry) => JSON.stringify(entry));
}

export function benchFold(count = 100_000): FoldBench {
  const lines = manyLines(count);
  const text = `[${lines.join(',')}]`;
  const parseMs = middleMs(() => JSON.parse(text) as unknown);
  const entries = JSON.parse(text) as Entry[];
  const step = 7919;
  const shuffled = entries.map((_, i) => entries[(i * step) % entries.length] as Entry);
  let faults = 0;
  const foldMs = middleMs(() => (faults = foldJournal(entries, allKinds, emptyColonies).faults.length));
  const shuffledMs = middleMs(() => foldJournal(shuffled, allKinds, emptyColonies));
  return { entries: entries.length, parseMs, foldMs, ratio: foldMs / parseMs, shuffledRatio: shuffledMs / parseMs, faults };
}

/** The middle one of five: the first is slow for reasons of the machine. */
function middleMs(work: () => unknown): number {
  const times = Array.from({ length: 5 }, () => {
    const start = performance.now();
    work();
    return performance.now() - start;
  });
  return times.sort((a, b) => a - b)[2] ?? 0;
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const { entries, parseMs, foldMs, ratio, shuffledRatio, faults } = benchFold();
  console.log(
    `fold: ${entries} entries, JSON.parse ${parseMs.toFixed(0)} ms, fold ${foldMs.toFixed(0)} ms, ratio ${ratio.toFixed(2)} (at most 3)`,
  );
  console.log(`fold: in shuffled order ratio ${shuffledRatio.toFixed(2)}; ${faults} faults`);
}
