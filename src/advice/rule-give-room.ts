/**
 * Room: one bare bar at the edge of the brood before the queen runs out of cells. It leaves out where honey
 * is stored and the order of empty combs. The day on which cells run out is the colony room's sum.
 */
import type { RoomReading } from '../colony/view.ts';
import { value } from '../figures/book.ts';
import { addDays, earlier, later } from '../numbers/day.ts';
import type { Celsius } from '../numbers/units.ts';
import { holds, type Window, windowOf } from '../numbers/window.ts';
import type { Advice, Cite, Forbid, Saying } from './advice.ts';
import { daySlot, figureNumber, fromEntries, numberSlot, placeSlot, placesSlot, rangeSlot, saying, windowSlot } from './cited.ts';
import type { Facts, Rule } from './rule.ts';
import { inBuildingSeason } from './season.ts';
import { broodEdge, broodPlaces, lastOpening, nestEntries, outsideHarm, weatherCite } from './view-facts.ts';
import { weights } from './weights.ts';

export const giveRoom: Rule = {
  key: 'give-room',
  about: 'Gives one bare bar at the edge of the brood before the queen runs out of empty cells.',
  advise: (facts) => {
    const { view, book } = facts;
    const room = view.room;
    const edge = broodEdge(view, book);
    if (room === null || room.fullOn === null || edge === null || !inBuildingSeason(facts)) return [];
    if (daysLeft(room) > value(book, 'room-warn-days')) return [];
    if (unbuiltBars(facts) >= value(book, 'most-unbuilt-bars')) return [];
    const found = outsideHarm(facts, barWindow(facts, room, room.fullOn));
    if (found === null) return [];
    if (edge < 1 || edge > view.hiveBars) return [troughFull(facts, room, found)];
    const low = facts.weather?.lowC ?? null;
    const cold = low !== null && low < value(book, 'room-least-night') && holds(found, view.day);
    return [cold ? holdBack(facts, low, weatherCite(facts)) : giveBar(facts, room, edge, found)];
  },
};

function giveBar(facts: Facts, room: RoomReading, edge: number, found: Window): Advice {
  const { view } = facts;
  const gone = daysLeft(room) === 0;
  const place = placeSlot(edge, nestCite(facts));
  return {
    rule: 'give-room',
    colony: view.colony,
    day: view.day,
    verb: 'open',
    act: 'give a bare bar',
    places: [edge],
    window: found,
    say: gone
      ? saying('room.say-none', { place, window: windowSlot(found, nestCite(facts)) })
      : saying('room.say', { place, ...when(facts, room, found) }),
    reasons: [...reasons(facts, room), saying('room.lead', { days: figureNumber(facts.book, 'bar-draw-days', 'days') })],
    chance: null,
    wouldChange: [
      saying('room.change-nectar'),
      saying('room.change-cold', { least: figureNumber(facts.book, 'room-least-night', 'degC') }),
    ],
    forbids: barForbids(facts, found),
    cautions: ['stings', 'smoker'],
    weight: gone ? weights.roomGone : weights.room,
  };
}

function troughFull(facts: Facts, room: RoomReading, found: Window): Advice {
  const { view } = facts;
  return {
    rule: 'give-room',
    colony: view.colony,
    day: view.day,
    verb: 'open',
    act: 'open',
    places: [],
    window: found,
    say: saying('room.full', when(facts, room, found)),
    reasons: [...reasons(facts, room), saying('room.full-why', { bars: numberSlot(view.hiveBars, 'bars', nestCite(facts)) })],
    chance: null,
    wouldChange: [saying('room.change-nectar')],
    forbids: barForbids(facts, found),
    cautions: ['stings', 'smoker', 'lifting'],
    weight: weights.room,
  };
}

/** Cold nights: the bar waits, and says so. */
function holdBack({ view, book }: Facts, low: Celsius, typedBy: Cite): Advice {
  const tonight = windowOf(view.day);
  const lowSlot = numberSlot(low, 'degC', typedBy);
  const least = figureNumber(book, 'room-least-night', 'degC');
  return {
    rule: 'give-room',
    colony: view.colony,
    day: view.day,
    verb: 'no visit',
    act: 'wait',
    places: [],
    window: tonight,
    say: saying('room.hold', { low: lowSlot, least }),
    reasons: [saying('room.hold-why')],
    chance: null,
    wouldChange: [saying('room.hold-change', { least })],
    forbids: (['give a bare bar', 'give several bare bars'] as const).map((act) => ({
      act,
      window: tonight,
      why: saying('room.hold-why'),
    })),
    cautions: [],
    weight: weights.holdBar,
  };
}

function barForbids({ book }: Facts, found: Window): readonly Forbid[] {
  return [
    {
      act: 'give several bare bars',
      window: found,
      why: saying('room.several', { n: figureNumber(book, 'most-unbuilt-bars', 'bars') }),
    },
    { act: 'spread the brood', window: found, why: saying('room.spread') },
  ];
}

function reasons(facts: Facts, room: RoomReading): readonly Saying[] {
  const { view, book } = facts;
  const cite = nestCite(facts);
  const opened = lastOpening(view);
  const seen =
    opened === null
      ? []
      : [
          saying('room.seen', {
            places: placesSlot(broodPlaces(view, book), cite),
            day: daySlot(opened.day, { kind: 'entry', id: opened.entry }),
          }),
        ];
  return [
    ...seen,
    saying('room.flow', {
      emerging: rangeSlot(room.emergingPerDay, 'per day', cite),
      laid: rangeSlot(room.laidPerDay, 'per day', cite),
      nectar: rangeSlot(room.nectarPerDay, 'per day', cite),
    }),
    saying('room.empty', { cells: rangeSlot(room.empty, 'cells', cite) }),
    ...(room.fullOn === null ? [] : [saying('room.runs-out', { window: windowSlot(room.fullOn, cite) })]),
  ];
}

function when(facts: Facts, room: RoomReading, found: Window): Saying['slots'] {
  const cite = nestCite(facts);
  return { window: windowSlot(found, cite), days: numberSlot(daysLeft(room), 'days', cite) };
}

/** Whole days for which the likely number of empty cells lasts at the likely rates; endless when they do not get fewer. */
function daysLeft({ empty, laidPerDay, nectarPerDay, emergingPerDay }: RoomReading): number {
  const fewerPerDay = laidPerDay.likely + nectarPerDay.likely - emergingPerDay.likely;
  if (empty.likely <= 0) return 0;
  return fewerPerDay <= 0 ? Infinity : Math.floor(empty.likely / fewerPerDay);
}

/** From the day a bar has to hang in so that it is drawn in time, to a few days after the cells likely run out. */
function barWindow({ view, book }: Facts, room: RoomReading, fullOn: Window): Window {
  const likely = later(fullOn.earliest, addDays(view.day, daysLeft(room)));
  const earliest = later(view.day, addDays(likely, -value(book, 'bar-draw-days')));
  const latest = earlier(fullOn.latest, addDays(likely, value(book, 'act-soon-days')));
  return { earliest, latest: later(earliest, latest) };
}

function unbuiltBars({ view, book }: Facts): number {
  const least = value(book, 'unbuilt-share');
  return view.bars.filter((bar) => bar.kind === 'bare' || (bar.kind === 'comb' && bar.built < least)).length;
}

function nestCite(facts: Facts): Cite {
  return fromEntries(nestEntries(facts.view), 'bar-draw-days', 'worker-sealed-days');
}
