/** The order of the round, and the hours that suit opening. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { printedBook } from '../figures/book.ts';
import { openingText } from '../words/opening-text.ts';
import { plainManner } from '../words/say.ts';
import { anAdvice, span, today, weatherOf } from './for-tests.ts';
import { planRound } from './plan.ts';
import { suitsOpening, temperatureAt } from './suits-opening.ts';

const yard = ['alder', 'birch', 'hazel', 'linden', 'rowan', 'willow'].map((colony) => ({ colony }));

test('A40 the longest need comes first, what is ahead after it, then what is left shut, then nothing due', () => {
  const round = planRound(
    yard,
    [
      anAdvice('alder'),
      anAdvice('birch', { window: span('2014-05-09', today) }),
      anAdvice('hazel', { verb: 'leave shut', act: 'wait', weight: 0.93, window: span(today, '2014-06-02') }),
      anAdvice('linden', { window: span('2014-05-18', '2014-05-20'), weight: 0.9 }),
      anAdvice('rowan', { rule: 'stop-sign', act: 'call the authority', verb: 'leave shut', weight: 1 }),
    ],
    today,
    printedBook,
  );
  assert.deepEqual(
    round.map((stop) => [stop.colony, stop.verb, stop.turnsUp]),
    [
      ['rowan', 'leave shut', '2014-05-21'],
      ['birch', 'open', null],
      ['alder', 'open', null],
      ['linden', 'no visit', '2014-05-18'],
      ['hazel', 'leave shut', '2014-06-03'],
      ['willow', 'no visit', null],
    ],
  );
});

test('A40 a colony that is fed without opening while it is left shut keeps both: the food first, the verb leave shut', () => {
  const shut = anAdvice('alder', { verb: 'leave shut', act: 'wait', weight: 0.93, window: span(today, '2014-06-02') });
  const feed = anAdvice('alder', { verb: 'no visit', act: 'feed', weight: 0.97 });
  const [stop] = planRound([{ colony: 'alder' }], [shut, feed], today, printedBook);
  assert.deepEqual([stop?.verb, stop?.first, stop?.more, stop?.turnsUp], ['leave shut', feed, [shut], '2014-06-03']);
});

test('A42 the curve meets the typed ends: warmest at 15 h, coldest twelve hours from it', () => {
  assert.equal(temperatureAt(15, 8, 24, 15), 24);
  assert.ok(Math.abs(temperatureAt(3, 8, 24, 15) - 8) < 1e-9);
  assert.ok(Math.abs(temperatureAt(9, 8, 24, 15) - 16) < 1e-9);
});

test('A42 hours that suit opening are said as such, never as safe; unknown asks for the temperatures', () => {
  const said = (low: number | null, high: number | null): string =>
    openingText(suitsOpening(weatherOf(low, high), printedBook), plainManner);
  assert.equal(said(11, 24), 'Suits opening 10 to 17 h: 19 °C to 24 °C.');
  assert.equal(said(4, 18), 'Suits opening 12 to 17 h: 16 °C to 18 °C.');
  assert.equal(said(2, 13), 'Suits a glance 11 to 17 h, 10 °C to 13 °C; no hour suits lifting brood.');
  assert.equal(said(-5, 6), 'No hour of today suits opening.');
  assert.match(said(null, 24), /^I do not know/);
  assert.equal(suitsOpening(null, printedBook), null);
  assert.equal(
    openingText(suitsOpening({ ...weatherOf(11, 24), windMs: 9 }, printedBook)),
    'No hour of today suits opening: too much wind.',
  );
  assert.equal(
    openingText(suitsOpening({ ...weatherOf(11, 24), rainMm: 6 }, printedBook)),
    'No hour of today suits opening: rain.',
  );
});
