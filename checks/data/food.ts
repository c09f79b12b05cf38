/** Honey of full combs and what wintering hives lost on scales. */
import type { Check, Origin } from '../check.ts';

const news = (where: string): Origin => ({ kind: 'published', source: 'bbka-news', where, sureness: 'read in a second source' });

function perDay(id: string, what: string, expected: number, origin: Origin, differs?: string): Check {
  return {
    id,
    topic: 'food',
    what,
    origin,
    ask: { kind: 'range', figure: 'winter-use-per-day' },
    expected,
    unit: 'kg/d',
    tolerance: 0,
    why: 'in the range',
    circular: false,
    ...(differs === undefined ? {} : { differs }),
  };
}

export const foodChecks: readonly Check[] = [
  {
    id: 'honey-british-comb',
    topic: 'food',
    what: 'honey of a dm² of comb 25 mm thick: a British deep comb holds 2.27 kg',
    origin: news('just over 2 kg on 6.96 dm²'),
    ask: { kind: 'worked', name: 'honey of a square decimetre', input: [2.5] },
    expected: 0.326,
    unit: 'kg/dm2',
    tolerance: 0.02,
    why: '6 of 100: the thickness of their comb is not given',
    circular: false,
  },
  {
    id: 'honey-american-comb',
    topic: 'food',
    what: 'honey of a dm² of comb 25 mm thick: an American deep comb holds 3 kg',
    origin: news('about 3 kg on 8.87 dm²'),
    ask: { kind: 'worked', name: 'honey of a square decimetre', input: [2.5] },
    expected: 0.338,
    unit: 'kg/dm2',
    tolerance: 0.02,
    why: '6 of 100: the thickness of their comb is not given',
    circular: false,
  },
  {
    id: 'honey-eighth-rule',
    topic: 'food',
    what: 'honey of a dm² of comb 25 mm thick by the eighth rule',
    origin: { kind: 'published', source: 'zander-eighths', where: '250 g on both faces', sureness: 'read in a second source' },
    ask: { kind: 'worked', name: 'honey of a square decimetre', input: [2.5] },
    expected: 0.25,
    unit: 'kg/dm2',
    tolerance: 0.02,
    why: '6 of 100',
    circular: false,
    differs: 'the rule is for food as found, not all sealed and full; ours is for sealed honey',
  },
  perDay('winter-sweden', '32 colonies in the south of Sweden, mean of 3.5 °C', 0.039, {
    kind: 'published',
    source: 'norrstrom-2021',
    where: '39 g a day, standard deviation 13',
    sureness: 'read in the abstract',
  }),
  perDay('winter-denmark', 'one hive in Denmark, about 5 °C', 0.056, {
    kind: 'published',
    source: 'danish-scale-hive',
    where: '56 g a day',
    sureness: 'read in the source',
  }),
  perDay('winter-czech', 'two hives in a Czech winter, the hungrier one', 0.05, {
    kind: 'published',
    source: 'czech-scale-hives',
    where: '33 to 50 g a day',
    sureness: 'read in the source',
  }),
  perDay(
    'winter-wales',
    'three colonies in North Wales',
    0.085,
    {
      kind: 'published',
      source: 'welsh-scale-hives',
      where: '0.5 to 0.7 kg a week',
      sureness: 'read in the source',
    },
    'they ate most in January and February, with brood in the nest; ours is for broodless colonies',
  ),
];
