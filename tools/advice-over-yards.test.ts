/**
 * Advice over whole yards: random ones of lawful shape, and the demo yard day by day. What must hold for
 * every colony on every day, read from the journal through the front door.
 */
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { acts, type Advice, type Cite, type Saying } from '../src/advice/advice.ts';
import { advise } from '../src/advice/advise.ts';
import { rules } from '../src/advice/list.ts';
import { clash } from '../src/advice/weigh.ts';
import { demoDay, pictureOf, readJournal } from '../src/apiary.ts';
import { foreseeAll, toldOf } from '../src/apiary/foresee.ts';
import { isFigureKey } from '../src/figures/book.ts';
import { sampleYard } from '../src/colony/for-tests.ts';
import type { Entry } from '../src/journal/entry.ts';
import { readLines } from '../src/journal/lines.ts';
import { addDays, type Day } from '../src/numbers/day.ts';
import type { Manner } from '../src/words/say.ts';
import { slotForms, slotText } from '../src/words/slot.ts';
import { say, sayChance } from '../src/words/text.ts';
import { randomYard } from './world/yards.ts';

interface Case {
  readonly entries: readonly Entry[];
  readonly days: readonly Day[];
}

const yards: readonly Case[] = Array.from({ length: 12 }, (_, seed) => ({
  entries: randomYard(seed + 1, { hives: 5, years: 1, visitsPerYear: 14, from: '2013-03-20' }),
  days: [3, 30, 47, 68, 90, 121, 160, 200, 260].map((days) => addDays('2013-03-20', days + seed)),
}));

const demoEntries = readLines(readFileSync('examples/ferry-road.jsonl', 'utf8')).flatMap((line) =>
  line.ok ? [line.value as Entry] : [],
);
/** Days of the demo yard: through both seasons, with the days on which something is the matter. */
const demoDays: readonly Day[] = [
  '2013-04-19',
  '2013-05-29',
  '2013-06-02',
  '2013-06-20',
  '2013-06-15',
  '2013-06-28',
  '2013-06-30',
  '2013-07-03',
  '2013-07-14',
  '2013-08-05',
  '2013-09-17',
  '2013-09-28',
  '2013-12-07',
  '2014-02-27',
  '2014-04-10',
  '2014-04-28',
  '2014-05-06',
  demoDay,
  '2014-05-22',
];
const demo: Case = { entries: demoEntries, days: demoDays };

/** A nucleus that does not get on: one comb with brood at seven weeks, every bar read. */
const nucleus: Case = (() => {
  const yard = sampleYard();
  const hive = yard.hive('2013-05-01');
  const colony = yard.colony('2013-05-01', hive, { origin: 'nucleus' });
  const bars = { 1: { food: 6 }, 2: { brood: 3, food: 2, eggs: 'seen' }, 3: { food: 1 } } as const;
  yard.visit('2013-06-20', colony, hive, bars, { followerAfter: 3 });
  return { entries: yard.entries, days: ['2013-06-22'] };
})();

interface Advised {
  readonly day: Day;
  readonly kept: readonly Advice[];
  /** Kept and silenced. */
  readonly all: readonly Advice[];
  /** Every entry of the journal. */
  readonly ids: ReadonlySet<string>;
}

/** Every colony of all yards on its days, advised and weighed, once for all tests. */
const advised: readonly Advised[] = [...yards, demo, nucleus].flatMap(({ entries, days }) => {
  const ids = new Set(entries.map((entry) => entry.id));
  return days.flatMap((day) => {
    const apiary = readJournal(entries, day);
    // The model speaks on one day: it lives every colony through, which takes its seconds.
    const told = day === demoDay ? toldOf(foreseeAll(apiary, day)) : undefined;
    const picture = pictureOf(apiary, day, undefined, told);
    const authority = apiary.state.contacts.get('authority') ?? null;
    const rest = { book: apiary.book, weather: picture.weather, latitude: picture.yard?.latitude ?? null, authority };
    return picture.colonies.map((view) => {
      const { kept, silenced } = advise({ ...rest, view });
      return { day, kept, all: [...kept, ...silenced.map(({ advice }) => advice)], ids };
    });
  });
});

function sayings(advice: Advice): readonly Saying[] {
  const said = [advice.say, ...advice.reasons, ...advice.wouldChange, ...advice.forbids.map((forbid) => forbid.why)];
  return advice.chance === null ? said : [...said, advice.chance.of];
}

function leaves(cite: Cite): readonly Cite[] {
  return cite.kind === 'worked out' ? cite.from.flatMap(leaves) : [cite];
}

/** The sentence without what its slots put in, in whichever form: what is left must hold no digit. */
function withoutSlots(saying: Saying, manner: Manner): string {
  const forms = Object.values(saying.slots).flatMap((slot) => [null, ...slotForms].map((form) => slotText(slot, form, manner)));
  const bare = forms.flatMap((text) => [text, text.replace(/ (kg|°C|%|per day)$/, '')]);
  return [...new Set(bare)]
    .sort((a, b) => b.length - a.length)
    .reduce((left, text) => left.replaceAll(text, ''), say(saying, manner));
}

test('A5 over many yards no advice is forbidden by another on the same colony and day', () => {
  advised.forEach(({ kept }) => {
    for (const one of kept) {
      for (const other of kept) {
        assert.ok(!clash(one, other), `${one.rule} and ${other.rule}`);
        if (one === other) continue;
        for (const { act, window } of one.forbids) {
          const overlaps = window.earliest <= other.window.latest && other.window.earliest <= window.latest;
          assert.ok(!overlaps || act !== other.act, `${one.rule} forbids ${act} of ${other.rule}`);
        }
      }
    }
  });
});

test('A4 over many yards every number of every sentence comes from a figure or an entry of the journal', () => {
  advised.forEach(({ all, ids, day }) => {
    for (const saying of all.flatMap(sayings)) {
      for (const [name, slot] of Object.entries(saying.slots)) {
        if (!('cite' in slot)) continue;
        const cites = leaves(slot.cite);
        assert.ok(cites.length > 0, `${saying.key} ${name}`);
        for (const cite of cites) {
          if (cite.kind === 'entry') assert.ok(ids.has(cite.id), `${saying.key} ${name} cites ${cite.id}`);
          if (cite.kind === 'figure') assert.ok(isFigureKey(cite.key), `${saying.key} ${name}`);
        }
      }
      const manner: Manner = { language: 'en', units: 'metric', hours: 24, today: day };
      assert.doesNotMatch(withoutSlots(saying, manner), /\d/, say(saying, manner));
    }
  });
});

const mustNotSay =
  /queenless|!|\b(sure|safe|mg|ml|dose|dosage|kill|squash|poison|medicate|vaporise)\b|foulbrood|nosema|varroos|nothing noticed/i;

test('A9 over many yards no sentence says what the program must not say, in either unit', () => {
  advised.forEach(({ all, day }) => {
    for (const units of ['metric', 'US'] as const) {
      const manner: Manner = { language: 'en', units, hours: 12, today: day };
      for (const advice of all) {
        const said = sayings(advice).map((saying) => say(saying, manner));
        if (advice.chance !== null) said.push(sayChance(advice.chance, manner));
        for (const sentence of said) assert.doesNotMatch(sentence, mustNotSay);
        assert.notEqual(advice.act, 'give several bare bars');
        assert.notEqual(advice.act, 'spread the brood');
        assert.ok((acts as readonly string[]).includes(advice.act) && advice.window.latest >= day);
      }
    }
  });
});

test('A12 over these yards every rule speaks, so that the promises above are not empty', () => {
  const spoke = new Map<string, number>();
  advised.forEach(({ all }) => all.forEach((advice) => spoke.set(advice.rule, (spoke.get(advice.rule) ?? 0) + 1)));
  assert.deepEqual([...spoke.keys()].sort(), rules.map((rule) => rule.key).sort(), JSON.stringify([...spoke]));
});
