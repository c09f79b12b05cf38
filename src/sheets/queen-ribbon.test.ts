/** The ribbon of the queen's chances against chances that are given: areas, steps, words, lanes. What it looks like is for the eye. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { madeUpDay, madeUpForeseen, madeUpVisits } from '../colony/foreseen.contract.ts';
import { type QueenState, queenStates } from '../colony/queen-state.ts';
import { addDays, type Day } from '../numbers/day.ts';
import { drawnFaults, faultOf, flatten, idFaults, inside, type Spot } from './drawn.contract.ts';
import { queenRibbon, type RibbonOptions, type RibbonRow } from './queen-ribbon.ts';

const from = '2014-04-01';
const words = Object.fromEntries(queenStates.map((state) => [state, state])) as Record<QueenState, string>;
const base: RibbonOptions = {
  width: 360,
  height: 130,
  from,
  to: addDays(from, 60),
  today: addDays(from, 40),
  todayLabel: 'today',
  dayLabel: (day) => day.slice(5),
  label: 'The queen',
  prefix: 'q',
  words,
  visits: [],
  harmful: [],
  harmWord: 'harm',
  telling: null,
  tellingWord: 'tells',
};

function chances(part: Partial<Record<QueenState, number>>): readonly number[] {
  return queenStates.map((state) => part[state] ?? 0);
}

const days = (n: number, of: (i: number) => Partial<Record<QueenState, number>>): readonly RibbonRow[] =>
  Array.from({ length: n + 1 }, (_, i) => ({ day: addDays(from, i), chances: chances(of(i)) }));

interface Area {
  readonly state: string;
  readonly shape: readonly Spot[];
  readonly area: number;
}

function areasOf(svg: string): readonly Area[] {
  return [...svg.matchAll(/<path class="state" data-state="([^"]+)" d="([^"]+)"/g)].map((found) => {
    const shape = flatten(found[2] ?? '')[0] ?? [];
    const twice = shape.reduce((sum, [x, y], i) => {
      const [nextX, nextY] = shape[(i + 1) % shape.length] ?? [x, y];
      return sum + x * nextY - nextX * y;
    }, 0);
    return { state: found[1] ?? '', shape, area: Math.abs(twice) / 2 };
  });
}

const areaOf = (svg: string, state: QueenState) =>
  areasOf(svg).reduce((sum, one) => (one.state === state ? sum + one.area : sum), 0);

test('D10 the areas of the states are their chances times the days, behind and ahead together', () => {
  const { svg } = queenRibbon(
    days(60, (i) => ({ laying: 1 - i / 60, virgin: i / 120, none: i / 120 })),
    base,
  );
  const all = (base.width - 2) * base.height;
  const near = (got: number, want: number) => assert.ok(Math.abs(got / all - want) < 0.005, `${got / all} for ${want}`);
  near(areaOf(svg, 'laying'), 0.5);
  near(areaOf(svg, 'virgin'), 0.25);
  near(areaOf(svg, 'none'), 0.25);
});

test('D10 two rows of one day make a step: on its two sides the chances are those before and after the visit', () => {
  const day = addDays(from, 20);
  const before = { laying: 0.5, none: 0.5 };
  const rows = [
    ...days(20, () => before),
    { day, chances: chances({ laying: 1 }) },
    { day: base.to, chances: chances({ laying: 1 }) },
  ];
  const { svg } = queenRibbon(rows, { ...base, today: null });
  const all = (base.width - 2) * base.height;
  assert.ok(Math.abs(areaOf(svg, 'laying') / all - (0.5 / 3 + 2 / 3)) < 0.005);
});

test('D10 what lies behind today has whole edges, what lies ahead has dots', () => {
  const { svg } = queenRibbon(
    days(60, () => ({ laying: 1 })),
    base,
  );
  const dashes = [...svg.matchAll(/<path class="state"[^>]*>/g)].map((found) => found[0].includes('dasharray'));
  assert.deepEqual(dashes, [false, true]);
});

test('D10 a word stands inside the part of its own state; a state too thin for its word is handed back to be named beside it', () => {
  const { svg, unnamed } = queenRibbon(
    days(60, () => ({ laying: 0.6, virgin: 0.31, none: 0.09 })),
    { ...base, today: null },
  );
  const found = [...svg.matchAll(/<text class="word" x="([^"]+)" y="([^"]+)"[^>]*>([^<]+)</g)];
  assert.deepEqual(
    found.map((one) => one[3]),
    ['laying', 'virgin'],
  );
  for (const [, x, y, word] of found) {
    const own = areasOf(svg).find((one) => one.state === word);
    assert.ok(own !== undefined && inside(own.shape, [Number(x), Number(y) - 4]), word);
  }
  assert.deepEqual(unnamed, ['none']);
});

test('D10 a state that was hardly ever likely is neither drawn nor named', () => {
  const { svg, unnamed } = queenRibbon(
    days(60, () => ({ laying: 0.99, failing: 0.01 })),
    base,
  );
  assert.equal(areaOf(svg, 'failing'), 0);
  assert.deepEqual(unnamed, []);
});

test('D10 harmful days that touch are one double rule, cut to the ribbon; the telling day has its wedge, but not outside it', () => {
  const rows = days(60, () => ({ laying: 1 }));
  const window = (earliest: Day, latest: Day) => ({ earliest, latest });
  const { svg } = queenRibbon(rows, {
    ...base,
    harmful: [
      window(addDays(from, 30), addDays(from, 36)),
      window(addDays(from, 34), addDays(from, 40)),
      window(addDays(from, 55), addDays(from, 90)),
    ],
    telling: addDays(from, 45),
  });
  const rules = [...(/class="harm" d="([^"]+)"/.exec(svg)?.[1] ?? '').matchAll(/M(\S+) \S+H([\d.]+)/g)];
  assert.equal(rules.length, 4);
  const perDay = (base.width - 2) / 60;
  assert.ok(Math.abs(Number(rules[0]?.[2]) - Number(rules[0]?.[1]) - 10 * perDay) < 0.1);
  assert.ok(Math.abs(Number(rules[2]?.[2]) - (base.width - 1)) < 0.1);
  assert.ok(svg.includes('class="telling"'));
  assert.ok(!queenRibbon(rows, { ...base, telling: addDays(base.to, 1) }).svg.includes('class="telling"'));
});

test('D10 the word of the telling day stays in the drawing wherever the day lies, below its wedge where it has no room beside', () => {
  const rows = days(60, () => ({ laying: 1 }));
  const tellingWord = 'a look tells, from 20 May';
  const heights = new Set<string>();
  for (let day = 0; day <= 60; day += 1) {
    const { svg } = queenRibbon(rows, { ...base, textSize: 20.5, telling: addDays(from, day), tellingWord });
    const [, x, anchor] = /<text x="([^"]+)"[^>]*text-anchor="(start|end)"[^>]*>a look tells/.exec(svg) ?? [];
    const long = tellingWord.length * 20.5 * 0.5;
    const left = anchor === 'end' ? Number(x) - long : Number(x);
    assert.ok(left >= 0 && left + long <= base.width, `day ${day}: ${left} to ${left + long}`);
    heights.add(/height="([^"]+)"/.exec(svg)?.[1] ?? '');
  }
  assert.equal(heights.size, 2);
});

test('D5 ribbons of nothing, of one day and of a whole story are well-formed, name no colour and answer their references', () => {
  const told = madeUpForeseen().line.map(({ day, queen }) => ({ day, chances: queen }));
  const axis = { from: addDays(madeUpDay, -48), to: addDays(madeUpDay, 28), today: madeUpDay, visits: madeUpVisits };
  for (const rows of [[], told.slice(0, 1), told])
    for (const textSize of [13, 20.5]) {
      const { svg } = queenRibbon(rows, { ...base, ...axis, textSize, harmWord: 'a < b' });
      assert.equal(faultOf(svg), null);
      assert.deepEqual([...drawnFaults(svg), ...idFaults(svg)], []);
    }
});
