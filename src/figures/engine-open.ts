/** From which chances and days on a hive is opened: our choice, weighed in made-up worlds (`npm run trial`). */
import { type Topic, figure } from './figure.ts';

/** A choice; where no low and high are given they are the value itself: it is not meant to be learnt. */
function choice<const K extends string, const U extends string>(
  key: K,
  title: string,
  [topic, unit, when]: readonly [Topic, U, string],
  [low, value, high]: readonly [number, number, number],
  why: string,
) {
  return figure({ key, title, topic, value, low, high, unit, when, basis: { kind: 'our choice', why } });
}

export const engineOpenFigures = [
  choice(
    'engine-open-chance',
    'Chance of swarm cells from which a colony is opened',
    ['visits', 'share', 'cells beside a queen, old enough to be found; no look yet this season'],
    [0.02, 0.045, 0.08],
    'a swarm takes half of the bees and most of the harvest, an opening an hour: one find for some twenty openings',
  ),
  choice(
    'engine-open-vain-share',
    'Part by which each look without queen cells raises the chance from which it is opened',
    ['visits', 'share', 'swarm season'],
    [0.05, 0.15, 0.3],
    'colonies and places differ in how ready they are to swarm, and looks tell',
  ),
  choice(
    'engine-open-cut-share',
    'Part by which cells that were cut lower it: divided by one and this for each time',
    ['visits', 'share', 'swarm season'],
    [1, 1.5, 3],
    'a colony that has prepared once does so again, and a cell that was missed is enough',
  ),
  choice(
    'engine-open-looks-days',
    'Days for which a look, or cells that were cut, tell how ready a colony is to swarm',
    ['visits', 'd', 'swarm season'],
    [40, 90, 120],
    'what is left of the swarm season',
  ),
  choice(
    'engine-open-soonest',
    'Days after an opening before which no other is chosen',
    ['visits', 'd', 'nothing seen that is acted upon'],
    [3, 4, 5],
    'what is seen, cut or fed today is not judged anew tomorrow; a cell that was missed can be found then',
  ),
  choice(
    'engine-open-clear-days',
    'Days after a look in which sealed swarm cells alone are a reason for another',
    ['visits', 'd', 'swarm cells'],
    [5, 5, 7],
    'cells of up to two days are not found; five days later they are a day from sealing, and the swarm leaves on the next fair day',
  ),
  choice(
    'engine-open-latest',
    'Days after an opening by which another is chosen whatever is expected',
    ['visits', 'd', 'season'],
    [28, 35, 42],
    'what nobody thought of is found in a month',
  ),
  choice(
    'engine-open-cell-days',
    'Days since the first egg in a queen cell from which a look finds it',
    ['visits', 'd', 'swarm cells'],
    [2, 3, 4],
    'a cup with an egg says little; with a larva in jelly it is a cell, and whoever opens then is in time',
  ),
  choice(
    'engine-open-stores-days',
    'Days in which stores may be gone, so that it is a reason to open',
    ['visits', 'd', 'should nothing come in'],
    [10, 18, 28],
    'honey is read a third too high now and then, a day fit for opening is waited for, and fed food is taken down in days',
  ),
  choice(
    'engine-open-bee-eats',
    'Honey that a grown bee may eat in a day, for reckoning how long stores last',
    ['food', 'mg/d', 'what rearing takes is apart'],
    [8, 12, 16],
    'whoever reckons with hunger reckons high: a third of the bees is afield when they are counted, and flying costs more than rest',
  ),
  choice(
    'engine-open-stores-soonest',
    'Days after an opening before which food alone is no reason for another',
    ['visits', 'd', 'food was given if it was short'],
    [7, 10, 14],
    'what was left or given at the last look is not eaten in a week and a half',
  ),
  choice(
    'engine-open-stores-chance',
    'Chance that stores are gone by that careful reckoning, from which it is opened',
    ['visits', 'share', 'should nothing come in'],
    [0.3, 0.5, 0.7],
    'the care is in the days and in what a bee eats; beyond that the middle is taken',
  ),
  choice(
    'engine-open-broodless-chance',
    'Chance that no brood is left, from which it is a reason to open',
    ['visits', 'share', 'a queen may be missing'],
    [0.1, 0.2, 0.4],
    'days more or less change little for a colony that waits for its queen, and looks disturb her',
  ),
  choice(
    'engine-open-broodless-days',
    'Days after an opening before which missing brood is no reason for another',
    ['visits', 'd', 'a queen may be missing'],
    [5, 7, 10],
    'eggs of a new queen show a week later or not',
  ),
] as const;
