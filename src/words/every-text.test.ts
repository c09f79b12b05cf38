/** What every text of the catalogue must satisfy: well-formed slots, one home, and no word that the product must not say. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { english, englishParts } from './en/list.ts';
import { slotForms } from './slot.ts';
import { pieces } from './template.ts';

const all = Object.entries<string>(english);

test('Wd1 every template can be taken apart, and asks only for forms that exist', () => {
  for (const [key, template] of all) {
    for (const piece of pieces(template)) {
      if (piece.kind === 'plain') assert.ok(!/[{}]/.test(piece.text), `${key}: a brace left over`);
      if (piece.kind === 'slot' && piece.form !== null) {
        assert.ok((slotForms as readonly string[]).includes(piece.form), `${key}: form ${piece.form}`);
      }
      if (piece.kind === 'plural') assert.match(piece.many, /[#@]/, `${key}: a plural says its number`);
    }
  }
});

test('Wd1 every key lives in one part of the catalogue', () => {
  const home = new Map<string, string>();
  for (const [part, texts] of Object.entries(englishParts)) {
    for (const key of Object.keys(texts)) {
      assert.equal(home.get(key), undefined, `${key} is in ${home.get(key)} and in ${part}`);
      home.set(key, part);
    }
  }
  assert.equal(home.size, all.length);
});

const mustNotSay: readonly (readonly [RegExp, string])[] = [
  [/!/, 'an exclamation mark'],
  [/\bqueenless\b/i, 'queenless'],
  [/\bsure \d|\bcertain(ly)?\b|\d ?% (sure|chance|likely)/i, 'a chance as a percentage or a certainty'],
  [/weather is safe|safe (weather|to open|temperature|tilt|angle)|\bis safe\b/i, 'safe'],
  [/\b(well done|great|congratulations|excellent|perfect|awesome|nice work|good job)\b/i, 'praise'],
  [/\b(kill|squash|crush|pinch|destroy|poison|medicate|dose|dosage)\b/i, 'killing or a dose'],
  [/(^|[.:;] )(treat|vaporise|dribble|sublimate)\b|\btreat (the|it|this|with|now)\b/i, 'an order to treat'],
  [/\b(foulbrood|nosema|chalkbrood|sacbrood|varroosis|tropilaelaps)\b/i, 'a diagnosis'],
  [/\b(mg|ml|millilitres?|grams?) (of|per)\b/i, 'a dose'],
  [/nothing noticed/i, 'nothing noticed'],
];

test('Wd9 no text says what the product must not say', () => {
  for (const [key, template] of all) {
    for (const [pattern, what] of mustNotSay) assert.ok(!pattern.test(template), `${key} says ${what}: ${template}`);
  }
});

test('Wd9 the patterns of what must not be said do find it', () => {
  const wrong = [
    'The colony is queenless.',
    'Well done.',
    'Go!',
    'She will be back, sure 86 %.',
    'The weather is safe.',
    'Kill the queen.',
    'Treat the colony now.',
    'This is foulbrood.',
    'Give 5 ml per gap.',
    'Nothing noticed.',
  ];
  for (const sentence of wrong)
    assert.ok(
      mustNotSay.some(([pattern]) => pattern.test(sentence)),
      sentence,
    );
});
