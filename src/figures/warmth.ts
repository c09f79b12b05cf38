/**
 * Warmth, weather and time at the open hive. There is no figure here for a warmth at which new comb is safe:
 * none was found, and new comb can fall at any.
 */
import { type Basis, figure } from './figure.ts';

const keepers: Basis = { kind: 'common practice', note: 'keepers\' pages' };

export const warmthFigures = [
  figure({
    key: 'brood-warmth', title: 'Warmth of the brood nest', topic: 'weather', value: 34.5, low: 32, high: 36, unit: 'degC',
    when: 'with brood', basis: { kind: 'source', source: 'stabentheiner-2021', where: 'review', sureness: 'read in the source' },
    note: 'Long below 32 °C harms sealed brood.',
  }),
  figure({
    key: 'open-brood-least-temp', title: 'Air, least, for lifting brood combs', topic: 'weather', value: 15, low: 15, high: 18,
    unit: 'degC', when: 'calm and dry', basis: keepers, note: 'Pages say 15 to 16, better 18 to 20 for a long search.',
  }),
  figure({
    key: 'glance-least-temp', title: 'Air, least, for a glance under the bars', topic: 'weather', value: 10, low: 10, high: 12,
    unit: 'degC', when: 'calm; no brood comb lifted',
    basis: { kind: 'source', source: 'cornell-calendar', where: 'January', sureness: 'read in the source' },
  }),
  figure({
    key: 'flight-least-temp', title: 'Air, least, for foraging flight', topic: 'weather', value: 12, low: 10, high: 13, unit: 'degC',
    when: 'daylight',
    basis: { kind: 'source', source: 'burrill-dietz-1981', where: 'no searching below 12', sureness: 'read in a second source' },
    note: 'Cleansing flights in the sun begin at about 8.',
  }),
  figure({
    key: 'flight-full-temp', title: 'Air from which warmth no longer holds foraging back', topic: 'weather', value: 20, low: 18,
    high: 25, unit: 'degC', when: 'daylight',
    basis: { kind: 'source', source: 'burrill-dietz-1981', where: 'rises from 12 to 20', sureness: 'read in a second source' },
  }),
  figure({
    key: 'flight-full-light', title: 'Light from which foraging is full', topic: 'weather', value: 300, low: 200, high: 460,
    unit: 'W/m2', when: 'at 12 to 14 °C',
    basis: { kind: 'source', source: 'vicens-bosch-2000', where: 'summary', sureness: 'read in a second source' },
  }),
  figure({
    key: 'flight-wind-slope', title: 'Foraging lost for each metre a second of wind', topic: 'weather', value: 0.105, low: 0.07,
    high: 0.14, unit: 's/m', when: 'up to about 5 m/s',
    basis: { kind: 'source', source: 'hennessy-2020', where: '31.6 % fewer visits at 3 m/s', sureness: 'read in the abstract' },
    note: 'A straight line through one measured drop.',
  }),
  figure({
    key: 'wind-stop', title: 'Wind at which bees stop leaving', topic: 'weather', value: 6.7, low: 5.4, high: 6.7, unit: 'm/s',
    when: 'open ground', basis: keepers, note: '12 to 15 miles an hour.',
  }),
  figure({
    key: 'mating-least-temp', title: 'Air, least, for mating flights', topic: 'weather', value: 20, low: 18, high: 21, unit: 'degC',
    when: 'little wind, no rain',
    basis: { kind: 'source', source: 'beebook-behaviour-2013', where: 'section 13.2', sureness: 'read in the source' },
    note: 'Lower after several rainy days.',
  }),
  figure({
    key: 'cluster-forms-temp', title: 'Air below which bees cluster', topic: 'weather', value: 12, low: 10, high: 14, unit: 'degC',
    when: 'broodless', basis: keepers,
  }),
  figure({
    key: 'comb-soft-temp', title: 'Warmth from which comb is plainly soft', topic: 'weather', value: 32, low: 30, high: 35,
    unit: 'degC', when: 'air or comb in the sun', basis: { kind: 'common practice', note: 'no strength against warmth was read' },
    note: 'Below it comb is not safe: new and heavy comb falls at any warmth when it is tilted.',
  }),
  figure({
    key: 'comb-brittle-temp', title: 'Warmth below which comb is brittle', topic: 'weather', value: 10, low: 10, high: 18, unit: 'degC',
    when: 'any comb', basis: keepers,
  }),
  figure({
    key: 'smoke-minutes', title: 'Minutes for which smoke dulls the alarm', topic: 'visits', value: 15, low: 10, high: 20, unit: 'min',
    when: 'cool smoke',
    basis: { kind: 'source', source: 'visscher-1995', where: 'antennae recover in 10 to 20 minutes', sureness: 'read in the abstract' },
  }),
  figure({
    key: 'brood-out-minutes', title: 'Minutes that a brood comb may be out of the hive', topic: 'visits', value: 3, low: 2, high: 5,
    unit: 'min', when: '15 to 20 °C, shade, no wind',
    basis: { kind: 'our choice', why: 'brood was harmed by hours at 20 °C, not by minutes; robbing and chill set the limit' },
  }),
  figure({
    key: 'hive-open-minutes', title: 'Minutes that a hive may be open', topic: 'visits', value: 25, low: 20, high: 30, unit: 'min',
    when: 'fair weather', basis: { kind: 'common practice' },
  }),
  figure({
    key: 'visit-rest-days', title: 'Days a colony is left between full visits', topic: 'visits', value: 7, low: 7, high: 10, unit: 'd',
    when: 'nothing seen that asks for more', basis: { kind: 'common practice' },
  }),
] as const;
