/** What a figure of one's own would change: the numbers that hang on it, the advice that comes or goes, and nothing kept. */
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { demoDay, pictureOf, readJournal } from '../apiary.ts';
import { printed } from '../figures/book.ts';
import type { FigureKey } from '../figures/list.ts';
import type { Entry } from '../journal/entry.ts';
import { overrideEffect } from './override-effect.ts';

const entries = readFileSync('examples/ferry-road.jsonl', 'utf8')
  .trim()
  .split('\n')
  .map((line) => JSON.parse(line) as Entry);
const apiary = readJournal(entries, demoDay);
const tried = (figure: FigureKey, times: number) => {
  const { value, low, high } = printed(figure);
  return overrideEffect(apiary, demoDay, { figure, value: value * times, low: low * times, high: high * times });
};

test('R47 twice the honey on an area is twice the honey of every colony, and nothing else moves but advice on food', () => {
  const effects = tried('honey-kg-per-dm2-cm', 2);
  assert.equal(effects.length, pictureOf(apiary, demoDay).round.length);
  for (const { moved } of effects) {
    assert.deepEqual(
      moved.map(({ what }) => what),
      ['honeyKg'],
    );
    const [honey] = moved;
    assert.ok(Math.abs(honey!.would.likely / honey!.was.likely - 2) < 0.02, JSON.stringify(honey));
  }
});

test('R47 advice that goes and comes is told, and matches what the picture says with the figure written down', () => {
  const figure = 'check-interval-swarm';
  const { value, low, high } = printed(figure);
  const own = { figure, value: value * 3, low: low * 3, high: high * 3 } as const;
  const effects = overrideEffect(apiary, demoDay, own);
  const last = entries.at(-1)!;
  const written: Entry = {
    ...last,
    id: '00000000-0000-7000-8000-00000000ffff',
    at: demoDay,
    noted: '2014-05-16T20:00:00Z',
    kind: 'figure-override',
    version: 1,
    body: { ...own, why: 'tried' },
  };
  const then = pictureOf(readJournal([...entries, written], demoDay), demoDay);
  const keys = (colony: string) => then.advice.filter((one) => one.colony === colony).map(({ say }) => say.key);
  assert.ok(effects.some(({ gone }) => gone.length > 0));
  for (const { colony, come } of effects) for (const { key } of come) assert.ok(keys(colony).includes(key), key);
});

test('R47 the figure as it is changes nothing, and the yard is as before', () => {
  const before = JSON.stringify(pictureOf(apiary, demoDay));
  assert.deepEqual(tried('honey-kg-per-dm2-cm', 1), []);
  tried('honey-kg-per-dm2-cm', 3);
  assert.equal(JSON.stringify(pictureOf(apiary, demoDay)), before);
});
