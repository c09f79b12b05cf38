/** Worked examples of rules of the nest: honey in the way, bare bars, crossed comb, robbers, order for winter, the first look. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { BarView, ColonyView } from '../colony/view.ts';
import { say } from '../words/text.ts';
import { aView, bareBar, comb, facts, today, visit, weatherOf } from './for-tests.ts';
import { autumnOrder } from './rule-autumn-order.ts';
import { bareBars } from './rule-bare-bars.ts';
import { crossedComb } from './rule-crossed-comb.ts';
import { honeyBarrier } from './rule-honey-barrier.ts';
import { robbers } from './rule-robbers.ts';
import { springLook } from './rule-spring-look.ts';
import { visitDue } from './rule-visit-due.ts';
import type { Facts, Rule } from './rule.ts';

const manner = { language: 'en', units: 'metric', hours: 24, today } as const;
type Change = Parameters<typeof aView>[0];
const said = (rule: Rule, change: Change, more: Partial<Facts> = {}): readonly string[] =>
  rule.advise(facts(aView(change), more)).map((advice) => say(advice.say, manner));

const brood = (place: number): BarView => comb(place, { sealed: 0.4, larva: 0.1, egg: 0.1 });
const honey = (place: number, share = 0.9): BarView => comb(place, { honey: share });

test('A50 a bare bar beyond full honey is moved to the edge of the brood, and no other is given', () => {
  const bars = [honey(1), brood(2), brood(3), honey(4), honey(5), bareBar(6)];
  const [advice] = honeyBarrier.advise(facts(aView({ bars })));
  assert.equal(
    advice && say(advice.say, manner),
    'Move the bare bar of place 6 to place 4, at the edge of the brood, between 16 and 20 May.',
  );
  assert.deepEqual(
    advice?.forbids.map(({ act }) => act),
    ['give a bare bar'],
  );
});

test('A50 nothing is said of honey that she can pass, of a bar at the brood, of a comb that nobody read, or out of season', () => {
  const far = [brood(2), brood(3), honey(4), bareBar(5)];
  assert.equal(said(honeyBarrier, { bars: far }).length, 1);
  assert.deepEqual(said(honeyBarrier, { bars: [brood(2), honey(3, 0.5), bareBar(4)] }), []);
  assert.deepEqual(said(honeyBarrier, { bars: [brood(2), bareBar(3), honey(4)] }), []);
  assert.deepEqual(said(honeyBarrier, { bars: [brood(2), honey(3), { ...honey(4), kind: 'unknown', shares: null }] }), []);
  assert.deepEqual(said(honeyBarrier, { bars: far, day: '2014-11-10' }), []);
});

test('A50 in a hive entered at the last place the brood’s edge is on the other side', () => {
  const bars = [bareBar(3), honey(4), brood(5), brood(6)];
  assert.deepEqual(said(honeyBarrier, { bars, entrance: 'last' }), [
    'Move the bare bar of place 3 to place 4, at the edge of the brood, between 16 and 20 May.',
  ]);
});

test('A51 more than two bare bars: the outer ones out', () => {
  const bars = [brood(1), honey(2), bareBar(3), bareBar(4), bareBar(5), bareBar(6)];
  assert.deepEqual(said(bareBars, { bars }), [
    'Take out 2 bare bars, at places 5 and 6, and bring the follower board up, between 16 and 20 May.',
  ]);
});

test('A51 two are enough to build on, a hived swarm has them all, and what nobody looked at is not bare', () => {
  const four = [brood(1), bareBar(2), bareBar(3), bareBar(4)];
  assert.equal(said(bareBars, { bars: four }).length, 1);
  assert.deepEqual(said(bareBars, { bars: four.slice(0, 3) }), []);
  const hived = { day: '2014-05-10', entry: 'hived', event: { kind: 'swarm hived', parent: null } } as const;
  assert.deepEqual(said(bareBars, { bars: four, events: [hived] }), []);
  const unknown = four.map((bar): BarView => (bar.kind === 'bare' ? { ...bar, kind: 'unknown' } : bar));
  assert.deepEqual(said(bareBars, { bars: unknown }), []);
  assert.deepEqual(
    said(bareBars, { bars: [bareBar(1), bareBar(2), brood(3), bareBar(4), bareBar(5), honey(6)] }),
    [],
    'none is outermost',
  );
});

const joined: ColonyView['joined'] = [{ id: 'set', how: 'across bars', places: [8, 9] }];

test('A52 old combs that have grown together are cut apart on a cool morning, new ones parted while they are soft', () => {
  assert.deepEqual(said(crossedComb, { joined }), [
    'Cut the combs at places 8 and 9 apart on a cool morning between 16 May and 6 June, one bar at a time.',
  ]);
  const bars = [brood(7), comb(8, { nectar: 0.3 }, 0.2), comb(9, {}, 0.1)].map((bar) => ({ ...bar, readOn: '2014-05-14' }));
  assert.deepEqual(said(crossedComb, { joined, bars }), [
    'Part the combs at places 8 and 9 between 16 and 20 May, while they are soft and light.',
  ]);
});

test('A52 on a hot day crossed comb is left alone, and nothing heavy is moved', () => {
  const [advice] = crossedComb.advise(facts(aView({ joined }), { weather: weatherOf(20, 34) }));
  assert.equal(
    advice && say(advice.say, manner),
    'Leave the crossed comb alone today: the day is hot, and warm comb tears by its own weight.',
  );
  assert.deepEqual(
    [advice?.verb, advice?.forbids.map(({ act }) => act)],
    ['no visit', ['bend comb straight', 'move combs', 'take honey']],
  );
});

test('A52 crossed comb seen at a glance, new comb on the walls, and nothing where all was straight', () => {
  const glanced = (straight: 'straight' | 'crossed', day: string) => ({ visits: [visit(day, { kind: 'glance', straight })] });
  assert.equal(said(crossedComb, glanced('crossed', '2014-05-14')).length, 1);
  assert.deepEqual(said(crossedComb, glanced('straight', '2014-05-14')), []);
  const attached: BarView = { ...comb(10, {}, 0.2), attached: 'attached', readOn: '2014-05-14' };
  assert.deepEqual(said(crossedComb, { bars: [brood(9), attached] }), [
    'Free the new combs at place 10 from the walls between 16 and 20 May, while they are soft.',
  ]);
  assert.deepEqual(
    said(crossedComb, { bars: [brood(9), { ...attached, built: 1 }] }),
    [],
    'old comb on the walls is cut when it is lifted',
  );
  assert.deepEqual(said(crossedComb, { joined, day: '2014-12-10' }), [], 'not in the cold');
});

test('A53 after robbers were seen the hive stays shut for days, inside or out', () => {
  const inside = { visits: [visit('2014-05-15', { temperNotes: ['robbing about'] })] };
  assert.deepEqual(said(robbers, inside), [
    'Keep this hive shut and its entrance narrow until 17 May; leave nothing sweet about.',
  ]);
  const look = (day: string) =>
    ({ day, entry: 'look', event: { kind: 'look', seen: ['robbing'], flight: 'many', pollenIn: null } }) as const;
  assert.equal(said(robbers, { events: [look('2014-05-16')] }).length, 1);
  assert.deepEqual(said(robbers, { events: [look('2014-05-10')] }), []);
  assert.deepEqual(said(robbers, {}), []);
});

const october = { day: '2014-10-04', visits: [visit('2014-09-20')] };

test('A54 before winter an empty comb between bees and stores is moved beyond them', () => {
  const bars = [brood(1), brood(2), comb(3, {}), honey(4), honey(5)];
  assert.deepEqual(said(autumnOrder, { ...october, bars }), [
    'Close the row between 4 and 8 October: move what is empty at place 3 outward, beyond the honey.',
  ]);
  assert.deepEqual(
    said(autumnOrder, { ...october, bars: [brood(1), brood(2), honey(3), comb(4, {})] }),
    [],
    'it is outside already',
  );
});

test('A54 stores on both sides of the brood are brought to one', () => {
  const bars = [honey(1), brood(2), brood(3), honey(4)];
  assert.deepEqual(said(autumnOrder, { ...october, bars }), [
    'Bring the honey at place 1 over to the side of the other stores between 4 and 8 October.',
  ]);
});

test('A54 nothing is said in summer, nor when the combs were read long ago', () => {
  const bars = [brood(1), comb(2, {}), honey(3)];
  assert.deepEqual(said(autumnOrder, { bars }), []);
  assert.deepEqual(said(autumnOrder, { ...october, visits: [visit('2014-08-01')], bars }), []);
  assert.equal(said(autumnOrder, { ...october, bars }).length, 1);
});

test('A55 after the cold months the first look is asked for once, by this rule and not by the usual one', () => {
  const spring = { day: '2014-04-08', visits: [visit('2013-09-20')] };
  assert.deepEqual(said(springLook, spring), [
    'Open between 8 and 29 April, on the first mild day: the first look of the year, last opened on 20 September 2013.',
  ]);
  assert.deepEqual(said(visitDue, spring), []);
  assert.deepEqual(said(springLook, { day: '2014-04-08', visits: [visit('2014-04-01')] }), []);
  assert.deepEqual(said(springLook, { day: '2014-01-08', visits: [visit('2013-09-20')] }), [], 'not in winter');
});
