/** Worked examples of queen cells: open, sealed, perhaps gone, supersedure, emergency, the only ones. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { say } from '../words/text.ts';
import { aView, cellsOf, facts, span, today, visit } from './for-tests.ts';
import { queenCells } from './rule-queen-cells.ts';

const manner = { language: 'en', units: 'metric', hours: 24, today } as const;
const counts = (open: number, sealed: number) => ({ open, sealed, torn: 0, emerged: 0 });

test('A22 open swarm cells leave the days until the first is sealed', () => {
  const [advice] = queenCells.advise(facts(aView({ cells: cellsOf() })));
  assert.ok(advice !== undefined);
  assert.equal(
    say(advice.say, manner),
    'Split, or give room and thin the swarm cells at places 3 and 4 between 16 and 17 May: after that a swarm may leave.',
  );
  assert.deepEqual(
    advice.reasons.map((reason) => say(reason, manner)),
    [
      'Queen cells seen at places 3 and 4: 6 open, 0 sealed.',
      'The first of them is sealed between 18 and 20 May.',
      'A swarm would leave between 18 and 22 May, later in bad weather.',
      'A swarm leaves when the first cell is sealed, about 8.5 days after its egg was laid.',
    ],
  );
});

test('A22 with sealed cells it is now or the swarm', () => {
  const [advice] = queenCells.advise(facts(aView({ cells: cellsOf({ counts: counts(3, 1) }) })));
  assert.ok(advice !== undefined);
  assert.equal(
    say(advice.say, manner),
    'Split between 16 and 17 May, or expect the swarm: sealed swarm cells hang at places 3 and 4.',
  );
});

test('A22 when the days on which it would leave have begun, the swarm may be gone: a glance, and no cell is cut', () => {
  const cells = cellsOf({ counts: counts(3, 4), leaves: span('2014-05-12', '2014-05-16') });
  const [advice] = queenCells.advise(facts(aView({ cells })));
  assert.equal(advice?.verb, 'glance');
  assert.match(say(advice.say, manner), /the swarm may have left\.$/);
  assert.deepEqual(
    advice.forbids.map((forbid) => forbid.act),
    ['cut queen cells'],
  );
});

test('A22 supersedure and emergency cells are left alone, and so are the only cells of a colony without eggs', () => {
  const cases = [
    [
      cellsOf({ likelyKind: 'supersedure', places: [5] }),
      'seen',
      /Leave the queen cells at place 5 alone .* replace its own queen/,
    ],
    [cellsOf({ likelyKind: 'emergency' }), 'seen', /Leave the hive and the queen cells .* give a new queen/],
    [cellsOf(), 'none seen', /no eggs were seen, and these may be the only way to a queen/],
  ] as const;
  for (const [cells, eggs, sentence] of cases) {
    const [advice] = queenCells.advise(facts(aView({ cells, queen: { eggs } })));
    assert.ok(advice !== undefined);
    assert.match(say(advice.say, manner), sentence);
    assert.equal(advice.act, 'wait');
    assert.ok(advice.forbids.some((forbid) => forbid.act === 'cut queen cells'));
  }
});

test('A22 where eggs were not looked for, they are looked for before any cell is touched', () => {
  const [advice] = queenCells.advise(facts(aView({ cells: cellsOf(), queen: { eggs: 'not looked' } })));
  assert.ok(advice !== undefined);
  assert.match(say(advice.say, manner), /^Look for eggs between 16 and 17 May before any queen cell/);
  assert.deepEqual(
    advice.forbids.map((forbid) => forbid.act),
    ['cut queen cells'],
  );
});

test('A22 cells that were cut since are not spoken of', () => {
  const events = [{ day: '2014-05-12', entry: 'cut', event: { kind: 'cells cut' } }] as const;
  assert.deepEqual(queenCells.advise(facts(aView({ cells: cellsOf(), events, visits: [visit('2014-05-12')] }))), []);
});

test('A22 after a swarm that the journal tells of, the cells hold the next queen: hive and cells are left alone', () => {
  const event = { kind: 'swarm left', window: span('2014-05-12'), child: null, hived: false } as const;
  const events = [{ day: '2014-05-12', entry: 'left', event }];
  const [advice] = queenCells.advise(facts(aView({ cells: cellsOf({ counts: counts(0, 4) }), events })));
  assert.equal(advice?.verb, 'leave shut');
  assert.match(say(advice.say, manner), /alone between 16 and 29 May: the swarm has left, and the next queen is in them\.$/);
  assert.ok(advice.reasons.some((reason) => say(reason, manner) === 'The swarm left on 12 May.'));
});
