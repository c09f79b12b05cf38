/** How well a look from outside tells what is inside. Nobody has counted any of it; so each of these tells little. */
import { type Topic, figure } from './figure.ts';

function choice<const K extends string, const U extends string>(
  key: K,
  title: string,
  [topic, unit, when]: readonly [Topic, U, string],
  [low, value, high]: readonly [number, number, number],
  why: string,
) {
  return figure({ key, title, topic, value, low, high, unit, when, basis: { kind: 'our choice', why } });
}

const look = 'a minute at the entrance, good flying weather';

export const engineOutsideFigures = [
  choice(
    'look-pollen-with-brood',
    'Chance to see pollen carried in, with open brood',
    ['visits', 'share', look],
    [0.7, 0.9, 0.97],
    'brood calls for pollen; in a minute of good weather some comes in',
  ),
  choice(
    'look-pollen-without-brood',
    'Chance to see pollen carried in, without open brood',
    ['visits', 'share', look],
    [0.2, 0.45, 0.7],
    'colonies without brood still fetch some: it is no proof of a queen',
  ),
  choice(
    'look-pollen-brood',
    'Open cells that call for pollen',
    ['visits', 'cells', look],
    [200, 500, 1500],
    'a patch as large as a hand',
  ),
  choice(
    'look-flight-bees',
    'Bees of a colony of which as many keepers say few fly as many',
    ['visits', 'bees', look],
    [5000, 9000, 15000],
    'the hour and the weather say more than the number of bees',
  ),
  choice(
    'look-flight-few',
    'Bees of a colony of which hardly any fly',
    ['visits', 'bees', look],
    [300, 800, 2000],
    'they are needed on the brood',
  ),
  choice(
    'look-flight-none',
    'Chance that no flight is noted of a colony in full order',
    ['visits', 'share', look],
    [0.01, 0.03, 0.1],
    'rain an hour ago, shade, a cold morning',
  ),
  choice(
    'look-building-least',
    'Notes of comb being built, or not, that are wrong',
    ['visits', 'share', 'a hive that was opened'],
    [0.05, 0.1, 0.2],
    'fresh wax is seen or overlooked',
  ),
] as const;
