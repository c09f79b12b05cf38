/** One entry as a plain sentence. It reads bodies carefully, because an entry may be of a newer version than this program knows. */
import type { Entry, Id } from '../../../journal/entry.ts';
import { isDay } from '../../../numbers/day.ts';
import { formatDay } from '../../../words/format-day.ts';
import type { Manner } from '../../../words/say.ts';
import { text, type TextKey } from '../../../words/text.ts';

type Body = Readonly<Record<string, unknown>>;
type Names = Readonly<Record<Id, string>>;

interface Telling {
  readonly body: Body;
  readonly manner: Manner;
  /** The name of what a field points to. */
  readonly named: (field: string) => string;
  readonly textOf: (field: string) => string;
  /** The word of the catalogue for what stands in a field. */
  readonly term: (prefix: string, field: string) => string;
  readonly typed: (value: unknown) => string;
}

type Teller = (telling: Telling) => string;

export function entrySentence(entry: Entry, names: Names, manner: Manner): string {
  const body = record(entry.body);
  const teller = tellers[entry.kind];
  if (teller === undefined || body === null) return text('entry.other', { kind: entry.kind }, manner);
  const tried = (value: unknown): string =>
    typeof value === 'string' || typeof value === 'number' ? String(value) : text('entry.nothing', {}, manner);
  return teller({
    body,
    manner,
    named: (field) => names[String(body[field])] ?? text('entry.unnamed', {}, manner),
    textOf: (field) => tried(body[field]),
    term: (prefix, field) => word(`${prefix}.${String(body[field])}`, String(body[field]), manner),
    typed: (value) => {
      const one = record(value);
      return one === null
        ? text('entry.nothing', {}, manner)
        : `${tried(one['value'])} ${word(`unit-name.${String(one['unit'])}`, String(one['unit']), manner)}`;
    },
  });
}

const tellers: Readonly<Record<string, Teller>> = {
  yard: ({ textOf, manner }) => text('entry.yard', { name: textOf('name') }, manner),
  hive: ({ textOf, typed, body, manner }) =>
    text(
      'entry.hive',
      {
        name: textOf('name'),
        bars: Number(body['bars'] ?? 0),
        width: typed(body['topWidth']),
        depth: typed(body['depth']),
      },
      manner,
    ),
  bay: ({ named, textOf, manner }) => text('entry.bay', { hive: named('hive'), from: textOf('from'), to: textOf('to') }, manner),
  bar: ({ textOf, manner }) => text('entry.bar', { mark: textOf('mark') }, manner),
  comb: ({ manner }) => text('entry.comb', {}, manner),
  placing: ({ body, manner }) => {
    const to = record(body['to']);
    return to?.['kind'] === 'place'
      ? text('entry.placing', { place: String(to['place']) }, manner)
      : text('entry.placing-away', { where: String(to?.['where']) }, manner);
  },
  move: ({ named, body, manner }) => moveSentence(record(body['move']) ?? {}, named('hive'), manner),
  measurement: ({ term, typed, body, manner }) =>
    text('entry.measurement', { what: term('measure', 'what'), value: typed(body['typed']) }, manner),
  observer: ({ textOf, term, manner }) => text('entry.observer', { name: textOf('name'), role: term('role', 'role') }, manner),
  contact: ({ textOf, term, manner }) => text('entry.contact', { role: term('contact', 'role'), name: textOf('name') }, manner),
  note: ({ textOf, manner }) => text('entry.note', { text: textOf('text') }, manner),
  'day-weather': ({ typed, body, manner }) =>
    text('entry.day-weather', { low: typed(body['low']), high: typed(body['high']) }, manner),
  'figure-override': ({ textOf, manner }) =>
    text('entry.figure-override', { figure: textOf('figure'), value: textOf('value'), why: textOf('why') }, manner),
  colony: ({ textOf, term, named, manner }) =>
    text('entry.colony', { name: textOf('name'), origin: term('origin', 'origin'), hive: named('hive') }, manner),
  queen: ({ term, manner }) => text('entry.queen', { mark: term('mark', 'mark') }, manner),
  reign: ({ named, body, manner }) => {
    const change = record(body['change']);
    const ended = change?.['kind'] === 'ended';
    const how = word(`${ended ? 'going' : 'coming'}.${String(change?.['how'])}`, String(change?.['how']), manner);
    return text(ended ? 'entry.reign-ended' : 'entry.reign-began', { colony: named('colony'), how }, manner);
  },
  swarm: ({ body, textOf, named, manner }) => {
    if (body['what'] === 'hived') return text('entry.swarm-hived', { name: textOf('childName') }, manner);
    return body['from'] === null
      ? text('entry.swarm-seen', {}, manner)
      : text(body['what'] === 'left' ? 'entry.swarm-left' : 'entry.swarm-seen-from', { colony: named('from') }, manner);
  },
  split: ({ named, textOf, body, manner }) =>
    text(
      'entry.split',
      {
        from: named('from'),
        child: textOf('childName'),
        count: Array.isArray(body['combs']) ? body['combs'].length : 0,
      },
      manner,
    ),
  unite: ({ named, manner }) => text('entry.unite', { from: named('from'), into: named('into') }, manner),
  'colony-ended': ({ named, term, manner }) =>
    text('entry.colony-ended', { colony: named('colony'), how: term('end', 'how') }, manner),
  visit: ({ named, term, body, manner }) => {
    const said = body['sentence'];
    const kind = term('visit', 'visitKind');
    return typeof said === 'string' && said !== ''
      ? text('entry.visit-said', { sentence: said }, manner)
      : text('entry.visit', { colony: named('colony'), kind }, manner);
  },
  reading: ({ named, body, textOf, manner }) => {
    const face = Array.isArray(body['faces']) ? record(body['faces'][0]) : null;
    const eighths = (value: unknown): string => (typeof value === 'number' ? String(value) : text('entry.not-read', {}, manner));
    return text(
      'entry.reading',
      { hive: named('hive'), place: textOf('place'), brood: eighths(face?.['brood8']), food: eighths(face?.['food8']) },
      manner,
    );
  },
  look: ({ named, term, manner }) => text('entry.look', { hive: named('hive'), flight: term('write.flight', 'flight') }, manner),
  'comb-fell': ({ named, textOf, term, manner }) =>
    text(
      'entry.comb-fell',
      { colony: named('colony'), place: textOf('place'), what: term('fallen', 'what'), done: term('fallen-done', 'done') },
      manner,
    ),
  'combs-joined': ({ named, body, manner }) =>
    text('entry.combs-joined', { hive: named('hive'), places: listed(body['bars'], 'place').join(', ') }, manner),
  'combs-parted': ({ named, body, term, manner }) => {
    const slots = { hive: named('hive'), count: Array.isArray(body['places']) ? body['places'].length : 0 };
    return body['stopped'] === null
      ? text('entry.combs-parted', slots, manner)
      : text('entry.combs-parted-stopped', { ...slots, why: term('stop-reason', 'stopped') }, manner);
  },
  'comb-piece': ({ named, textOf, body, manner }) => {
    const to = record(body['to']);
    const where = String(to?.['where']);
    const said =
      to?.['kind'] === 'place'
        ? text('entry.piece-to-place', { place: String(to['place']) }, manner)
        : word(`away.${where}`, where, manner);
    return text('entry.comb-piece', { hive: named('hive'), place: textOf('place'), share: textOf('share8'), to: said }, manner);
  },
  'bee-escape': ({ named, body, manner }) =>
    text(body['what'] === 'set' ? 'entry.bee-escape-set' : 'entry.bee-escape-taken out', { colony: named('colony') }, manner),
  feeding: ({ named, term, typed, body, manner }) =>
    body['amount'] === null
      ? text('entry.feeding', { colony: named('colony'), what: term('food', 'what') }, manner)
      : text(
          'entry.feeding-amount',
          { colony: named('colony'), what: term('food', 'what'), amount: typed(body['amount']) },
          manner,
        ),
  'advice-issued': ({ named, manner }) => text('entry.advice-issued', { colony: named('colony') }, manner),
  'forecast-issued': ({ named, manner }) => text('entry.forecast-issued', { colony: named('colony') }, manner),
  correction: ({ textOf, manner }) => text('entry.correction', { why: textOf('why') }, manner),
  void: ({ textOf, manner }) => text('entry.void', { why: textOf('why') }, manner),
};

/** A term of the catalogue, or the value itself where the catalogue has none. */
export function word(key: string, otherwise: string, manner: Manner): string {
  if (isDay(otherwise)) return formatDay(otherwise, manner);
  try {
    return text(key as TextKey, {}, manner);
  } catch {
    return otherwise;
  }
}

function record(value: unknown): Body | null {
  return typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Body) : null;
}

function listed(value: unknown, field: string): readonly string[] {
  return Array.isArray(value) ? value.map((one) => String(record(one)?.[field])) : [];
}

const moveKinds = ['take', 'put', 'swap', 'turn', 'shift', 'follower', 'spacer'] as const;

function moveSentence(move: Body, hive: string, manner: Manner): string {
  const kind = moveKinds.find((each) => each === move['do']);
  const said = (field: string): string => String(move[field]);
  const place = said('place');
  switch (kind) {
    case undefined:
      return text('entry.other', { kind: 'move' }, manner);
    case 'take':
      return text('entry.move-take', { hive, place, where: word(`away.${said('to')}`, said('to'), manner) }, manner);
    case 'put': {
      const what = String(record(move['what'])?.['kind']);
      return text('entry.move-put', { hive, place, what: word(`entry.move-what.${what}`, what, manner) }, manner);
    }
    case 'swap':
      return text('entry.move-swap', { hive, place, with: said('with') }, manner);
    case 'shift':
      return text('entry.move-shift', { hive, place, by: said('by') }, manner);
    case 'spacer':
      return text('entry.move-spacer', { hive, place, width: said('widthMm') }, manner);
    case 'turn':
    case 'follower':
      return text(`entry.move-${kind}`, { hive, place }, manner);
  }
}
