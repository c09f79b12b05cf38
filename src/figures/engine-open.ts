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
    'Chance that something waits inside a hive, from which it is opened',
    ['visits', 'share', 'swarm cells or stores'],
    [0.01, 0.02, 0.03],
    'an opening costs an hour, a swarm half of the bees; in made-up worlds larger chances lost more swarms than a look each week',
  ),
  choice(
    'engine-open-soonest',
    'Days after an opening before which no other is chosen',
    ['visits', 'd', 'nothing seen that is acted upon'],
    [3, 4, 5],
    'cells too young to be seen the last time are not sealed sooner',
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
    'Days since the first egg in a queen cell from which it is a reason to open',
    ['visits', 'd', 'swarm cells'],
    [3, 6, 7],
    'cells are sealed on day 8 and the swarm leaves then: to look two days before finds the cells and is still in time',
  ),
  choice(
    'engine-open-stores-days',
    'Days in which stores may be gone, so that it is a reason to open',
    ['visits', 'd', 'should nothing come in'],
    [7, 18, 28],
    'a flow ends unseen and bees eat more than is thought; some weeks of food are what a keeper leaves them',
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
