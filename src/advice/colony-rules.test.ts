/** Worked examples of rules of the whole colony: after a change, weak, ready to split, the queen's years, young colonies. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { ColonyView } from '../colony/view.ts';
import { say } from '../words/text.ts';
import { aView, bareBar, cellsOf, comb, facts, range, span, today, total, visit } from './for-tests.ts';
import { afterChange } from './rule-after-change.ts';
import { markQueen, oldQueen } from './rule-queen-years.ts';
import { splitReady } from './rule-split-ready.ts';
import { weakColony } from './rule-weak-colony.ts';
import { youngColony } from './rule-young-colony.ts';
import type { Rule } from './rule.ts';

const manner = { language: 'en', units: 'metric', hours: 24, today } as const;
type Change = Parameters<typeof aView>[0];
type Event = ColonyView['events'][number]['event'];
const said = (rule: Rule, change: Change): readonly string[] =>
  rule.advise(facts(aView(change))).map((advice) => say(advice.say, manner));
const on = (day: string, event: Event): ColonyView['events'] => [{ day, entry: 'change', event }];
const parted = (queenSide: 'stayed' | 'went' | 'unknown'): Event => ({ kind: 'split off', child: 'b', queenSide, combs: [] });
const began = (queenSide: 'stayed' | 'went' | 'unknown'): Event => ({ kind: 'split from', parent: 'a', queenSide, combs: [] });
const oneComb = [comb(1, { honey: 0.5 }), comb(2, { sealed: 0.3, egg: 0.1 }), bareBar(3)];
const opened = { visits: [visit('2014-05-12')] };

test('A60 a split with the queen’s side unknown: both sides are looked at when eggs tell', () => {
  const both = [parted('unknown'), began('unknown')].map((event) =>
    said(afterChange, { ...opened, events: on('2014-05-14', event) }),
  );
  assert.deepEqual(both[0], [
    'Look for eggs on this side between 17 and 19 May: nobody knows on which side of the split the queen is.',
  ]);
  assert.deepEqual(both[1], both[0]);
});

test('A60 the side without the queen is looked at for cells and then left; the side with her is owed nothing', () => {
  const side = (event: Event) => said(afterChange, { ...opened, events: on('2014-05-14', event) });
  assert.deepEqual(side(parted('went')), ['See between 18 and 21 May whether queen cells are begun, then leave this hive shut.']);
  assert.deepEqual(side(began('stayed')), side(parted('went')));
  assert.deepEqual([side(parted('stayed')), side(began('went'))], [[], []]);
});

test('A60 after a union and a queen given one look is owed; once it was made, or its days are past, none', () => {
  const union = (day: string, visits = opened.visits) =>
    said(afterChange, { visits, events: on(day, { kind: 'took in', from: 'b' }) });
  assert.deepEqual(union('2014-05-12'), [
    'Look between 19 and 26 May whether one queen lays, and close up what was left of the other hive.',
  ]);
  assert.deepEqual(union('2014-05-05', [visit('2014-05-14')]), []);
  assert.deepEqual(union('2014-04-20'), []);
  const given: Event = { kind: 'queen began', queen: 'q', how: 'introduced' };
  assert.deepEqual(said(afterChange, { ...opened, events: on('2014-05-10', given) }), [
    'Look for eggs of the new queen between 18 and 24 May; with eggs seen, close at once.',
  ]);
  assert.deepEqual(said(afterChange, { ...opened, events: on('2014-05-10', { ...given, how: 'found' }) }), []);
});

const bees = (likely: number) => ({ totals: { adults: total(range(likely * 0.8, likely, likely * 1.2)) } });
const october = { day: '2014-10-04', visits: [visit('2014-09-20')] };

test('A61 few bees before the cold: think of uniting, health first', () => {
  assert.deepEqual(said(weakColony, { ...october, ...bees(5000) }), [
    'Think of uniting this colony between 4 and 25 October: it has 5,000 (4,000 to 6,000) bees, few for the cold.',
  ]);
  assert.deepEqual(said(weakColony, { ...october, ...bees(9000) }), []);
  assert.deepEqual(said(weakColony, bees(5000)), [], 'in May a colony may be small');
  assert.deepEqual(
    said(weakColony, { ...october, ...bees(5000), began: span('2014-09-01') }),
    [],
    'a young one is small by nature',
  );
});

test('A61 with a sign on record nothing is united', () => {
  const visits = [visit('2014-09-20', { signs: [{ code: 'twisted or yellow larvae', entry: 'sign' }] })];
  const [advice] = weakColony.advise(facts(aView({ ...october, visits, ...bees(5000) })));
  assert.deepEqual([advice?.verb, advice?.forbids.map(({ act }) => act)], ['no visit', ['unite']]);
});

const broodful = [1, 2, 3, 4, 5, 6, 7, 8].map((place) => comb(place, { sealed: 0.35, egg: 0.1 }));
const strong = { ...bees(26_000), bars: broodful };

test('A62 a strong colony could be split, and both halves’ outcome is said', () => {
  const [advice] = splitReady.advise(facts(aView({ ...opened, ...strong })));
  assert.equal(advice && say(advice.say, manner), 'This colony could be split between 16 and 23 May.');
  const reasons = advice?.reasons.map((reason) => say(reason, manner)) ?? [];
  assert.ok(reasons.some((reason) => /The side without the queen raises one: first eggs .* and no new bees/.test(reason)));
  assert.ok(reasons.some((reason) => /If she is not seen, both sides get eggs/.test(reason)));
});

test('A62 not with little brood, nor small, nor with cells, nor lately parted, nor late in the year', () => {
  const none = (change: Change) => assert.deepEqual(said(splitReady, { ...opened, ...strong, ...change }), []);
  none({ bars: oneComb });
  none(bees(12_000));
  none({ cells: cellsOf() });
  none({ events: on('2014-04-20', parted('stayed')) });
  none({ day: '2014-09-01' });
  none({ queen: { state: 'virgin' } });
});

const raised = (day: string, how: 'raised here' | 'came with the swarm' = 'raised here') => ({
  queenSince: span(day),
  events: on(day, { kind: 'queen began', queen: 'q', how }),
});

test('A63 a queen raised here who has laid for a while is marked in the colour of her year, at the next visit', () => {
  assert.deepEqual(said(markQueen, raised('2014-04-01')), [
    'At the next visit mark the queen, if she is met: green is the colour of her year.',
  ]);
  assert.equal(said(markQueen, { ...raised('2014-04-01'), queenMark: 'none' }).length, 1);
  const none = (change: Change) => assert.deepEqual(said(markQueen, { ...raised('2014-04-01'), ...change }), []);
  none({ queenMark: 'green' });
  none({ ...raised('2014-05-10') });
  none({ ...raised('2014-04-01', 'came with the swarm') });
  none({ queenSince: null });
  none({ queenSince: span('2013-12-20', '2014-02-02') });
  none({ queen: { state: 'virgin' } });
});

test('A64 a queen in her third season: a successor is thought of, and nobody is told to kill her', () => {
  assert.deepEqual(said(oldQueen, { queenSince: span('2012-05-01') }), [
    'Think of a successor for this queen: this is at least season 3 of hers.',
  ]);
  assert.equal(said(oldQueen, { queenMark: 'yellow' }).length, 1, 'yellow was the colour of 2012');
  assert.deepEqual(said(oldQueen, { queenMark: 'red' }), []);
  assert.deepEqual(said(oldQueen, { queenSince: span('2013-05-01'), queenMark: 'yellow' }), []);
  assert.deepEqual(said(oldQueen, { queenSince: null }), []);
});

const young = { origin: 'split', began: span('2014-03-20'), visits: [visit('2014-05-14')] } as const;

test('A65 a split with one comb of brood at seven weeks is behind, and is helped from a sound colony', () => {
  const [advice] = youngColony.advise(facts(aView({ ...young, bars: oneComb })));
  assert.equal(
    advice && say(advice.say, manner),
    'Give this young colony a comb of sealed brood between 16 and 23 May, without its bees’ queen.',
  );
  assert.ok(advice?.cautions.includes('suspected illness'));
});

test('A65 not before its time, not with enough, not with a comb that nobody read, not where eggs are missing', () => {
  const none = (change: Change) => assert.deepEqual(said(youngColony, { ...young, bars: oneComb, ...change }), []);
  none({ began: span('2014-04-20') });
  none({ bars: [...oneComb, comb(4, { sealed: 0.3 })] });
  none({ bars: [...oneComb, { ...comb(4, {}), kind: 'unknown', shares: null }] });
  none({ queen: { eggs: 'none seen' } });
  none({ origin: 'swarm' });
});
