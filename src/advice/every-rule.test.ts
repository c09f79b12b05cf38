/** What every rule must satisfy, on views put together by dice: sane windows, cited numbers, sentences that can be said. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { isFigureKey } from '../figures/book.ts';
import { say, sayChance } from '../words/text.ts';
import { english } from '../words/en/list.ts';
import { acts, type Advice, type Cite, type Saying } from './advice.ts';
import { advise } from './advise.ts';
import { aView, facts, rolledFacts } from './for-tests.ts';
import { rules } from './list.ts';
import type { Facts } from './rule.ts';
import { virginDaysOf } from './view-facts.ts';
import { actsOf, clash, weigh } from './weigh.ts';

const dice = fc.array(fc.nat({ max: 2 ** 30 }), { minLength: 60, maxLength: 60 });
const seed = 20140516;
const runs = 1000;

/** Dice that start over when they run out. */
function factsOf(numbers: readonly number[]): Facts {
  let next = 0;
  return rolledFacts((sides) => (numbers[next++ % numbers.length] ?? 0) % sides);
}

function everyAdvice(check: (advice: Advice, given: Facts) => void): void {
  fc.assert(
    fc.property(dice, (numbers) => {
      const given = factsOf(numbers);
      for (const rule of rules) for (const advice of rule.advise(given)) check(advice, given);
    }),
    { seed, numRuns: runs },
  );
}

function sayings(advice: Advice): readonly Saying[] {
  return [
    advice.say,
    ...advice.reasons,
    ...advice.wouldChange,
    ...advice.forbids.map((forbid) => forbid.why),
    ...(advice.chance === null ? [] : [advice.chance.of]),
  ];
}

function leaves(cite: Cite): readonly Cite[] {
  return cite.kind === 'worked out' ? cite.from.flatMap(leaves) : [cite];
}

test('A1 every rule has a key of its own and says what it is for', () => {
  assert.equal(new Set(rules.map((rule) => rule.key)).size, rules.length);
  for (const rule of rules) assert.match(rule.about, /^[A-Z].*\.$/);
});

test('A1 the dice make every rule speak', () => {
  const spoke = new Set<string>();
  everyAdvice((advice) => spoke.add(advice.rule));
  assert.deepEqual([...spoke].sort(), rules.map((rule) => rule.key).sort());
});

test('A2 every advice is of the view’s colony and day, has a weight in 0…1 and a window that reaches today or later', () => {
  everyAdvice((advice, { view }) => {
    assert.equal(advice.colony, view.colony);
    assert.equal(advice.day, view.day);
    assert.ok(advice.weight > 0 && advice.weight <= 1);
    for (const window of [advice.window, ...advice.forbids.map((forbid) => forbid.window)])
      assert.ok(window.earliest <= window.latest);
    assert.ok(advice.window.latest >= view.day, `${advice.rule} ends ${advice.window.latest} before ${view.day}`);
    assert.ok((acts as readonly string[]).includes(advice.act));
  });
});

test('A3 every advice has a reason and can be said, with every slot filled', () => {
  everyAdvice((advice) => {
    assert.ok(advice.reasons.length > 0 && advice.wouldChange.length > 0, advice.rule);
    for (const saying of sayings(advice)) assert.match(say(saying), /^\S.*\S$/);
    if (advice.chance !== null) sayChance(advice.chance);
  });
});

test('A4 every number, day and place in a sentence comes from a figure or an entry of the view', () => {
  everyAdvice((advice, { view, weather }) => {
    const known = new Set([
      ...view.visits.flatMap((visit) => [visit.entry, ...visit.signs.map((sign) => sign.entry)]),
      ...view.events.map((event) => event.entry),
      ...view.queen.from,
      ...(view.cells?.from ?? []),
      ...(view.solid?.from ?? []),
      ...(weather?.entry === undefined ? [] : [weather.entry]),
    ]);
    for (const saying of sayings(advice)) {
      for (const [name, slot] of Object.entries(saying.slots)) {
        if (!('cite' in slot)) continue;
        const found = leaves(slot.cite);
        assert.ok(found.length > 0, `${saying.key} ${name} cites nothing`);
        for (const cite of found) {
          assert.ok(
            cite.kind === 'figure' ? isFigureKey(cite.key) : cite.kind === 'entry' && known.has(cite.id),
            `${saying.key} ${name}`,
          );
        }
      }
    }
  });
});

test('A4 no text of an advice holds a digit of its own', () => {
  for (const [key, template] of Object.entries<string>(english)) {
    if (/^(advice|sign|temper|temper-note|cells|act|suits|plan|caution)\./.test(key)) assert.doesNotMatch(template, /\d/, key);
  }
});

test('A5 no advice that is given is forbidden by another on the same colony and day', () => {
  fc.assert(
    fc.property(dice, (numbers) => {
      const { kept, silenced } = advise(factsOf(numbers));
      for (const one of kept) {
        for (const other of kept) {
          assert.ok(!clash(one, other), `${one.rule} and ${other.rule}`);
          for (const forbid of one.forbids) {
            const overlaps = forbid.window.earliest <= other.window.latest && other.window.earliest <= forbid.window.latest;
            assert.ok(
              one === other || !overlaps || forbid.act !== other.act,
              `${one.rule} forbids ${other.act} of ${other.rule}`,
            );
          }
        }
      }
      for (const { advice, by } of silenced) assert.ok(kept.includes(by) && clash(advice, by));
    }),
    { seed, numRuns: runs },
  );
});

test('A5 no advice forbids what it asks for itself', () => {
  everyAdvice((advice) => {
    const own = actsOf(advice);
    for (const forbid of advice.forbids) {
      const overlaps = forbid.window.earliest <= advice.window.latest && advice.window.earliest <= forbid.window.latest;
      assert.ok(!overlaps || !own.has(forbid.act), `${advice.rule} forbids its own ${forbid.act}`);
    }
  });
});

test('A6 a sign that means stop silences whatever it forbids, whatever else is the matter', () => {
  fc.assert(
    fc.property(dice, (numbers) => {
      const { kept } = advise(factsOf(numbers));
      const stop = kept.find((advice) => advice.rule === 'stop-sign');
      if (stop === undefined) return;
      assert.equal(kept[0], stop);
      for (const advice of kept) {
        const after = advice.window.earliest > stop.window.latest;
        assert.ok(after || (advice.verb !== 'open' && advice.verb !== 'glance'), advice.rule);
      }
    }),
    { seed, numRuns: runs },
  );
});

test('A7 nothing is opened on a virgin’s days', () => {
  fc.assert(
    fc.property(dice, (numbers) => {
      const given = factsOf(numbers);
      const harm = virginDaysOf(given.view);
      if (harm === null || given.view.day < harm.earliest || given.view.day > harm.latest) return;
      for (const advice of advise(given).kept) {
        const overlaps = advice.window.earliest <= harm.latest && advice.window.latest >= given.view.day;
        assert.ok(
          advice.verb !== 'open' || !overlaps,
          `${advice.rule} opens ${advice.window.earliest} to ${advice.window.latest}`,
        );
      }
    }),
    { seed, numRuns: runs },
  );
});

test('A8 queen cells of a colony without eggs are never to be cut, and no other queen is asked for after one bad day', () => {
  everyAdvice((advice, { view }) => {
    if (view.queen.eggs !== 'seen') assert.notEqual(say(advice.say).includes('thin the'), true, advice.say.key);
    assert.notEqual(advice.act, 'cut queen cells');
    if (advice.act === 'requeen' && advice.rule === 'temper') {
      const bad = view.visits.filter((visit) => visit.temper === 'edgy' || visit.temper === 'stinging');
      assert.ok(new Set(bad.map((visit) => visit.day)).size >= 2);
    }
  });
});

test('A9 never several bare bars, never a bar between brood combs, never a dose', () => {
  everyAdvice((advice) => {
    assert.notEqual(advice.act, 'give several bare bars');
    assert.notEqual(advice.act, 'spread the brood');
    for (const saying of sayings(advice)) assert.doesNotMatch(say(saying), /queenless|\bmg\b|\bml\b|!|safe\b|sure \d/i);
  });
});

test('A10 nothing is advised of a colony that has ended', () => {
  const ended = aView({ ended: { day: '2014-05-01', how: 'died' }, queen: { eggs: 'none seen' } });
  assert.deepEqual(advise(facts(ended)), { kept: [], silenced: [] });
});

test('A11 weighing does not depend on the order in which rules spoke', () => {
  fc.assert(
    fc.property(dice, fc.infiniteStream(fc.nat()), (numbers, stream) => {
      const given = factsOf(numbers);
      const all = rules.flatMap((rule) => rule.advise(given));
      const shuffled = all
        .map((advice) => ({ advice, key: stream.next().value as number }))
        .sort((a, b) => a.key - b.key)
        .map(({ advice }) => advice);
      assert.deepEqual(weigh(shuffled).kept, weigh(all).kept);
    }),
    { seed, numRuns: 300 },
  );
});
