/**
 * What turns a coarse reading into contents, and carries it to a day on which nobody looked. Nobody
 * has measured most of these: they are choices, wide on purpose, and the keeper's to change.
 */
import { figure } from './figure.ts';

export const estimateFigures = [
  figure({
    key: 'relay-days', title: 'From a bee emerging to the next egg in her cell', topic: 'brood', value: 2, low: 1, high: 4, unit: 'd',
    when: 'queen laying, cell not filled with food',
    basis: { kind: 'our choice', why: 'the cell is cleaned first; no measurement was read' },
  }),
  figure({
    key: 'food-sealed-share', title: 'Sealed honey, of the food on a comb', topic: 'food', value: 0.6, low: 0.3, high: 0.9, unit: 'share',
    when: 'only food was read', basis: { kind: 'our choice', why: 'between a comb in the flow and a comb of late summer' },
  }),
  figure({
    key: 'food-bread-share-brood', title: 'Bee bread, of the food on a comb with brood', topic: 'food', value: 0.3, low: 0.1, high: 0.5,
    unit: 'share', when: 'only food was read', basis: { kind: 'our choice', why: 'bee bread lies in a band along the brood' },
  }),
  figure({
    key: 'food-bread-share-food', title: 'Bee bread, of the food on a comb without brood', topic: 'food', value: 0.05, low: 0, high: 0.2,
    unit: 'share', when: 'only food was read', basis: { kind: 'our choice', why: 'combs away from the brood hold little but honey' },
  }),
  figure({
    key: 'drone-share-mostly', title: 'Drone, of the brood on a comb called mostly drone', topic: 'brood', value: 0.75, low: 0.5, high: 1,
    unit: 'share', when: 'drone was not read apart', basis: { kind: 'our choice', why: 'more than half, by the word' },
  }),
  figure({
    key: 'drone-share-unread', title: 'Drone, of the brood on a comb where drone was not read apart', topic: 'brood', value: 0, low: 0,
    high: 0.17, unit: 'share', when: 'comb not called mostly drone',
    basis: { kind: 'derived', from: ['drone-comb-share'], how: 'at most its share of all comb; none is the likely value, since it would be named' },
  }),
  figure({
    key: 'stage-split-error', title: 'Error of the share of one brood stage, worked out from the area of all', topic: 'brood', value: 0.25,
    low: 0.15, high: 0.4, unit: 'share', when: 'standard deviation as a share; stages not read apart',
    basis: { kind: 'our choice', why: 'laying is not even from day to day: the stages of an even nest are 3, 6 and 12 days of it' },
    note: 'One mean nest had 16, 24 and 59 of 100 where even laying gives 14, 29 and 57.',
  }),
  figure({
    key: 'food-split-error', title: 'Error of the share of honey, nectar or bee bread, worked out from all food', topic: 'food', value: 0.35,
    low: 0.2, high: 0.5, unit: 'share', when: 'standard deviation as a share; kinds of food not read apart',
    basis: { kind: 'our choice', why: 'the split moves with the season; it is wide until sealed honey is read apart' },
  }),
  figure({
    key: 'carried-error-per-day', title: 'Growth of the error of what is carried forward, for each day', topic: 'visits', value: 0.02,
    low: 0.01, high: 0.04, unit: '1/d', when: 'standard deviation as a share, added for each day since the bar was read',
    basis: { kind: 'our choice', why: 'a nest changes by a few of a hundred a day; three weeks make it an error of four tenths' },
  }),
  figure({
    key: 'carried-error-most', title: 'Error of what is carried forward, at most', topic: 'visits', value: 1, low: 0.7, high: 1.5,
    unit: 'share', when: 'standard deviation as a share',
    basis: { kind: 'our choice', why: 'after months the last reading tells little more than the size of the comb' },
  }),
  figure({
    key: 'swarm-first-cells', title: 'From hiving a swarm to its first eggs, at the soonest', topic: 'swarms', value: 1,
    low: 1, high: 3, unit: 'd', when: 'a laying queen, on bare bars or drawn comb',
    basis: { kind: 'our choice', why: 'swarms are hived by day and draw wax on the first night; an egg needs half a cell' },
  }),
  figure({
    key: 'building-share', title: 'Built share of a comb that is called building', topic: 'comb', value: 0.4, low: 0.1, high: 0.8, unit: 'share',
    when: 'built share was not read', basis: { kind: 'our choice', why: 'the middle of what the word covers' },
  }),
  figure({
    key: 'built-unread-share', title: 'Built share of a comb whose built share was never read', topic: 'comb', value: 0.85, low: 0.5, high: 1,
    unit: 'share', when: 'comb with brood or food', basis: { kind: 'our choice', why: 'combs grow to nearly the whole outline before they are filled' },
  }),
  figure({
    key: 'bees-bar-cover', title: 'Covered share of the faces of a bar that has bees on it', topic: 'cells and bees', value: 0.6, low: 0.4,
    high: 0.85, unit: 'share', when: 'bars with bees counted at a glance',
    basis: { kind: 'our choice', why: 'the outer bars of a nest are covered in part; counts of bars are a coarse measure' },
  }),
  figure({
    key: 'look-enough-share', title: 'Share of the brood combs looked at, from which a search counts as whole', topic: 'visits', value: 0.8,
    low: 0.6, high: 1, unit: 'share', when: 'deciding that something is not there',
    basis: { kind: 'our choice', why: 'a queen moves; one brood comb unseen of six may hide the only eggs' },
  }),
  figure({
    key: 'drone-layer-share', title: 'Drone, of all brood, from which the queen is taken for a drone layer', topic: 'queens', value: 0.6,
    low: 0.5, high: 0.8, unit: 'share', when: 'eggs seen, one in a cell',
    basis: { kind: 'our choice', why: 'colonies that raise drones in plenty stay well below half' },
  }),
  figure({
    key: 'introduced-laying-days', title: 'From giving a mated queen to her first eggs', topic: 'queens', value: 4, low: 2, high: 10, unit: 'd',
    when: 'queen accepted', basis: { kind: 'common practice', note: 'from memory; she is freed from her cage first' },
  }),
  figure({
    key: 'nectar-cells-per-day', title: 'Cells of the brood nest filled with nectar in a day', topic: 'comb', value: 100, low: 0, high: 500,
    unit: 'cells/d', when: 'not known whether nectar comes in',
    basis: { kind: 'our choice', why: 'none in a dearth; in a flow without room above, a third of what a queen lays' },
  }),
  figure({
    key: 'surprise-eighths', title: 'Difference between read and expected, from which it is called a surprise', topic: 'visits', value: 1.5,
    low: 1, high: 2, unit: 'eighths', when: 'one bar, beyond the range of what was expected',
    basis: { kind: 'our choice', why: 'three steps of the ruler: more than two careful readers differ by' },
  }),
] as const;
