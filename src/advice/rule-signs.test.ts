/** Worked examples of signs that mean stop, and of signs that mean ask. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { say } from '../words/text.ts';
import { aView, cellsOf, facts, range, span, today, total, visit } from './for-tests.ts';
import { advise } from './advise.ts';
import { askSign, stopSign } from './rule-signs.ts';

const manner = { language: 'en', units: 'metric', hours: 24, today } as const;
const seen = (code: string, day = '2014-05-12') => [visit(day, { signs: [{ code, entry: 'sign' }] })];
const authority = { name: 'the county inspector', phone: 'the number in Settings' };

test('A30 a sign that means stop says whom to call, as entered, and never what it is', () => {
  const view = aView({ visits: seen('ropy brown thread') });
  const [called] = stopSign.advise(facts(view, { authority }));
  const [unknown] = stopSign.advise(facts(view));
  assert.ok(called !== undefined && unknown !== undefined);
  assert.equal(
    say(called.say, manner),
    'Stop, move nothing, and call the county inspector, the number in Settings: a ropy brown thread drawn from a cell, seen on 12 May.',
  );
  assert.match(say(unknown.say, manner), /call the bee health authority: .* Its number is not entered yet\.$/);
  assert.ok(called.cautions.includes('suspected illness'));
  assert.equal(
    say(called.reasons[0] ?? called.say, manner),
    'I do not know what it is; the authority and its laboratory can say.',
  );
});

test('A30 it beats everything: swarm cells, room, a visit due, a virgin; only feeding without opening is left', () => {
  const view = aView({
    visits: seen('ropy brown thread'),
    cells: cellsOf(),
    queen: { virginDays: span('2014-05-13', '2014-06-02') },
    totals: { honeyKg: total(range(0.2, 0.3, 0.5)) },
  });
  const { kept, silenced } = advise(facts(view, { authority }));
  assert.equal(kept[0]?.rule, 'stop-sign');
  assert.deepEqual(
    kept.filter((advice) => advice.verb === 'open' || advice.verb === 'glance'),
    [],
  );
  assert.ok(kept.some((advice) => advice.act === 'feed'));
  assert.ok(silenced.some(({ advice, by }) => advice.rule === 'queen-cells' && by.rule === 'stop-sign'));
});

test('A30 a sign to ask about asks, and holds combs where they are until then', () => {
  const [advice] = askSign.advise(facts(aView({ visits: seen('sunken or pierced caps') })));
  assert.ok(advice !== undefined);
  assert.equal(
    say(advice.say, manner),
    'Ask someone who knows bees between 16 and 20 May: sunken or pierced caps, seen on 12 May.',
  );
  assert.deepEqual(
    advice.forbids.map((forbid) => forbid.act),
    ['move combs', 'unite'],
  );
});

test('A30 a note is only a note, and signs of long ago have passed', () => {
  for (const view of [
    aView({ visits: seen('mites on bees') }),
    aView({ visits: seen('ropy brown thread', '2014-01-01') }),
    aView(),
  ]) {
    assert.deepEqual([...stopSign.advise(facts(view)), ...askSign.advise(facts(view))], []);
  }
});
