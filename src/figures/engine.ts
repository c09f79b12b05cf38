/**
 * What the model of a colony starts from, before any visit of that colony. Most of these nobody has measured:
 * they were chosen by trial on one published set of counts (Aurell and others 2024, doi 10.1093/jisesa/ieae022)
 * and on the literature, then frozen; the spreads say how little is known, and visits narrow them.
 */
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

const trial = 'chosen by trial on published counts of 47 colonies in autumn, inside what the literature allows';
const anyColony = 'a colony of which nothing is known yet';
const bySplit = 'a colony that began as a split on a known day';
const counting = 'bees and cells estimated comb by comb';

const living = [
  choice(
    'engine-capacity',
    'Eggs a day that a queen could lay, were bees no limit',
    ['brood', 'eggs/d', 'height of the season, bees as counted'],
    [1150, 1600, 2200],
    `${trial}; of the order of the laying peak`,
  ),
  choice(
    'engine-capacity-spread',
    'How colonies differ in what a queen could lay',
    ['brood', 'log', anyColony],
    [0.2, 0.25, 0.3],
    'eight colonies of ten within a factor of 1.4 either way',
  ),
  choice(
    'engine-half-bees',
    'Bees at which a queen lays half of what she could',
    ['brood', 'bees', 'bees as counted'],
    [9000, 9500, 10000],
    `${trial}; a published balance of colonies has 27000, for bees counted with those afield`,
  ),
  choice(
    'engine-season-floor',
    'Laying that is left in the depth of winter, as a share of the peak',
    ['brood', 'share', 'all climates'],
    [0, 0.03, 0.1],
    'some sealed brood was found all winter where somebody looked; nothing would make its logarithm endless',
  ),
  choice(
    'engine-season-floor-days',
    'Days by which the season is longer at each end where the laying left in winter is 2.7 times as much',
    ['brood', 'd', 'all climates'],
    [7, 10, 15],
    'where spring is three weeks early and autumn as late, winter is mild and queens go on laying; where both are short they stop',
  ),
  choice(
    'engine-season-shift-spread',
    'How far spring and autumn of a place lie from those of the monthly figures',
    ['brood', 'd', 'place not known'],
    [14, 21, 28],
    'three weeks either way hold most temperate places; learnt from counts',
  ),
  choice(
    'engine-season-depth-spread',
    'How places differ in how deep the season cuts into laying',
    ['brood', 'log', 'place not known'],
    [0.3, 0.4, 0.5],
    'the power to which the monthly shares are taken: mild places keep laying, harsh ones stop',
  ),
  choice(
    'engine-loss-spread',
    'How colonies differ in the losses of bees',
    ['adults', 'log', anyColony],
    [0.15, 0.25, 0.35],
    'counts of one autumn gave lives of 9 to 26 days from colony to colony, three published sets 12 to 29',
  ),
  choice(
    'engine-worn-from',
    'Open brood for each bee below which bees are not worn at all',
    ['adults', 'cells/bee', 'brood and bees as the model has them'],
    [0.02, 0.05, 0.1],
    'bees of late autumn still rear a little, and live as long as those that rear none',
  ),
  choice(
    'engine-worn-least',
    'How far bees without brood wear out at the height of the season, as a share of those that rear',
    ['adults', 'share', 'no open brood'],
    [0.2, 0.35, 0.6],
    'queenless bees go on flying while there is bloom: such colonies dwindle in two to three months, not in one nor in a year',
  ),
  choice(
    'engine-worn-brood',
    'Open brood for each bee at which bees wear out as fast as in summer',
    ['adults', 'cells/bee', 'brood and bees as the model has them'],
    [0.2, 0.28, 0.45],
    `a colony that stands still has some 0.45 under this model; bees that rear less live longer; ${trial}`,
  ),
  choice(
    'engine-house-loss',
    'Bees lost in a day in the house, in summer',
    ['adults', '1/d', 'bees as counted'],
    [0.005, 0.014, 0.028],
    'between the kind summer of the list and tagged bees, who are at more risk',
  ),
  choice(
    'engine-field-loss',
    'Bees lost in a day from the age of flight on, in summer',
    ['adults', '1/d', 'bees as counted'],
    [0.1, 0.22, 0.36],
    'between older field studies and tagged bees; with the losses of the house a counted bee lives some 20 days',
  ),
  choice(
    'engine-oldest-spread',
    'Days between which the oldest bees of a colony differ in when they begin to fly',
    ['adults', 'd', 'spring'],
    [10, 30, 60],
    'winter bees emerged over a month or two; in spring they die over weeks, not on a day',
  ),
  choice(
    'engine-winter-loss',
    'Bees lost in a day where none is reared',
    ['adults', '1/d', 'broodless winter'],
    [0.003, 0.0045, 0.0067],
    'one over a life of 150 days would take half of the bees by spring: lives of winter bees end late and together',
  ),
  choice(
    'engine-forage-age',
    'Age at which the losses of the field begin',
    ['adults', 'd', 'tagged bees'],
    [14, 18, 21],
    'the age to which the losses of tagged bees were reckoned, and of the average of field studies',
  ),
] as const;

const wandering = [
  choice(
    'engine-memory-laying',
    'Days after which good or bad days of laying and loss are two thirds forgotten',
    ['brood', 'd', 'all seasons'],
    [10, 20, 30],
    `${trial}: weather, flow and health come in spells of weeks`,
  ),
  choice(
    'engine-laying-wander',
    'How laying wanders about what season and bees let expect',
    ['brood', 'log', 'all seasons'],
    [0.2, 0.25, 0.4],
    `${trial}; smaller makes ranges too narrow`,
  ),
  choice(
    'engine-loss-wander',
    'How losses wander about what age and season let expect',
    ['adults', 'log', 'all seasons'],
    [0.08, 0.13, 0.2],
    `${trial}; smaller makes ranges too narrow`,
  ),
  choice(
    'engine-memory-colony',
    'Days after which what a colony is like is two thirds forgotten',
    ['adults', 'd', 'laying capacity and losses'],
    [40, 60, 90],
    'queens age and colonies change; fixed values made ranges far too narrow on made-up colonies',
  ),
  choice(
    'engine-memory-counting',
    'Days after which the scale of a count, or the season of a place, is two thirds forgotten',
    ['visits', 'd', 'one observer and method'],
    [180, 365, 730],
    'habits of counting and the place change slowly; fixed values starve the cloud of particles',
  ),
] as const;

const countingFigures = [
  choice(
    'engine-adults-scale-spread',
    'How far counts of bees of one hand lie from those of another',
    ['visits', 'log', counting],
    [0.2, 0.4, 0.6],
    'two careful observers differed by up to 15 percent, a quick and a careful method by a factor of 2.7; neither tells how many fly',
  ),
  choice(
    'engine-adults-noise',
    'How a careful count of bees errs',
    ['visits', 'log', counting],
    [0.1, 0.13, 0.2],
    'pairs of observers differed by 0.05 to 0.16; quick counts by 0.20 to 0.23',
  ),
  choice(
    'engine-capped-scale',
    'Sealed cells as counted, over those that the bees as counted come from',
    ['visits', 'log', counting],
    [0.3, 0.6, 0.9],
    'taken as they stand, counted cells give bees a life of 6 to 10 days: bees afield are not counted, areas filled up, some brood dies',
  ),
  choice(
    'engine-capped-scale-spread',
    'How that differs from hand to hand',
    ['visits', 'log', counting],
    [0.2, 0.3, 0.4],
    'as far as it was seen to differ between trials',
  ),
  choice(
    'engine-capped-noise',
    'How a count of sealed cells errs',
    ['visits', 'log', counting],
    [0.15, 0.25, 0.35],
    `pairs of observers differed by 0.13 to 0.16, but patches and gaps err for both; ${trial}`,
  ),
  choice(
    'engine-outlier-share',
    'Counts that are wrong in a way nobody foresaw',
    ['visits', 'share', 'all counts'],
    [0.005, 0.01, 0.02],
    'one of a hundred: written in the wrong row, a comb forgotten; keeps one such count from deciding',
  ),
  choice(
    'engine-outlier-spread',
    'How far such a count lies off',
    ['visits', 'log', 'all counts'],
    [1, 1.5, 2],
    'a factor of four either way',
  ),
  choice(
    'engine-least-count',
    'Bees or cells below which a count is only known to be small',
    ['visits', 'bees', 'all counts'],
    [50, 100, 200],
    'a handful is not estimated comb by comb; nothing seen is a count below this',
  ),
  choice(
    'engine-most-count',
    'Bees or sealed cells that no colony has',
    ['visits', 'bees', 'one colony with one queen'],
    [100000, 200000, 300000],
    'the largest colony in a published set had just over 80000 bees',
  ),
] as const;

const beginning = [
  choice(
    'engine-start-bees',
    'Bees of a colony, before the first count',
    ['adults', 'bees', anyColony],
    [3600, 9000, 22000],
    'the middle of what full-sized colonies were counted to have',
  ),
  choice(
    'engine-start-spread',
    'How colonies differ before the first count',
    ['adults', 'log', anyColony],
    [0.6, 0.7, 0.8],
    'eight colonies of ten within a factor of 2.5 either way',
  ),
  choice(
    'engine-start-days',
    'Days lived through before the first count, so that ages and brood settle',
    ['adults', 'd', anyColony],
    [30, 42, 60],
    'twice the time from egg to bee',
  ),
  choice(
    'engine-split-bees',
    'Bees of a split on its day',
    ['adults', 'bees', bySplit],
    [2600, 5000, 9500],
    'two to four combs with their bees',
  ),
  choice(
    'engine-split-spread',
    'How splits differ in bees',
    ['adults', 'log', bySplit],
    [0.4, 0.5, 0.6],
    'a factor of two either way',
  ),
  choice(
    'engine-split-brood',
    'Brood of all ages that a split is given, for each bee',
    ['brood', 'cells/bee', bySplit],
    [0.5, 1.1, 1.8],
    'combs of brood with the bees that cover them; a colony that stands still has 1.0 under this model, one that grows more',
  ),
  choice(
    'engine-split-brood-spread',
    'How splits differ in brood',
    ['brood', 'log', bySplit],
    [0.4, 0.5, 0.6],
    'some are given little but bees',
  ),
  choice(
    'engine-split-own-queen',
    'Splits that keep a laying queen from the first day',
    ['queens', 'share', bySplit],
    [0.1, 0.35, 0.6],
    'nobody counted; own, given and raised queens are about as common',
  ),
  choice(
    'engine-split-given-queen',
    'Splits that are given a mated queen',
    ['queens', 'share', bySplit],
    [0.1, 0.35, 0.6],
    'nobody counted; own, given and raised queens are about as common',
  ),
  choice(
    'engine-split-given-cell',
    'Splits that are given a sealed queen cell; the rest raise a queen from their brood',
    ['queens', 'share', bySplit],
    [0.1, 0.2, 0.4],
    'nobody counted; less common than a mated queen, more than waiting',
  ),
  choice(
    'engine-split-after-rise',
    'Days that the spring rise of laying is past its middle when a colony is split',
    ['brood', 'd', 'splits of the first half of the year'],
    [0, 15, 40],
    'nobody splits before colonies are well in growth',
  ),
] as const;

/**
 * The same for the challenger, which knows no biology: seven numbers for each thing counted. Levels differ by
 * colonies and, where nobody tells how it was counted, by the scale of the count.
 */
const rival = 'of the size that changes of counts between visits have in the literature; not fitted to colonies scored';
const unknownScale = 'colonies differ by some 0.5, methods of counting by as much';
const slowSplit = 'splits wait for eggs and then for bees: half of what is missing is made up in two months';

const challengerFigures = [
  choice(
    'challenger-adults-level',
    'Bees about which counts of a colony wander',
    ['adults', 'bees', 'challenger'],
    [6700, 12000, 21000],
    rival,
  ),
  choice(
    'challenger-adults-level-spread',
    'How colonies differ in that',
    ['adults', 'log', 'challenger'],
    [0.45, 0.7, 0.9],
    unknownScale,
  ),
  choice(
    'challenger-adults-return',
    'Days in which two thirds of a gap close',
    ['adults', 'd', 'challenger'],
    [45, 90, 120],
    slowSplit,
  ),
  choice('challenger-adults-wander', 'How counts wander about it', ['adults', 'log', 'challenger'], [0.25, 0.4, 0.6], rival),
  choice(
    'challenger-adults-start',
    'Where a split begins, below it',
    ['adults', 'log', bySplit],
    [-1.4, -0.8, -0.3],
    'a split of 5000 bees grows to some 12000',
  ),
  choice('challenger-adults-start-spread', 'How splits differ in that', ['adults', 'log', bySplit], [0.3, 0.4, 0.6], rival),
  choice('challenger-adults-noise', 'How a count of bees errs', ['visits', 'log', 'challenger'], [0.12, 0.17, 0.23], rival),
  choice(
    'challenger-capped-level',
    'Sealed cells about which counts of a colony wander',
    ['brood', 'cells', 'challenger'],
    [5300, 10000, 19000],
    rival,
  ),
  choice('challenger-capped-level-spread', 'How colonies differ in that', ['brood', 'log', 'challenger'], [0.3, 0.4, 0.5], rival),
  choice(
    'challenger-capped-return',
    'Days in which two thirds of a gap close',
    ['brood', 'd', 'challenger'],
    [20, 30, 45],
    rival,
  ),
  choice('challenger-capped-wander', 'How counts wander about it', ['brood', 'log', 'challenger'], [0.5, 0.65, 0.8], rival),
  choice('challenger-capped-start', 'Where a split begins, below it', ['brood', 'log', bySplit], [-1.6, -0.8, 0], rival),
  choice('challenger-capped-start-spread', 'How splits differ in that', ['brood', 'log', bySplit], [0.5, 0.7, 0.9], rival),
  choice('challenger-capped-noise', 'How a count of sealed cells errs', ['visits', 'log', 'challenger'], [0.15, 0.2, 0.3], rival),
  choice(
    'as-last-time-adults-wander',
    'How far the bees of a colony walk in 30 days, when last time is the forecast',
    ['adults', 'log', 'no model'],
    [0.25, 0.35, 0.5],
    rival,
  ),
  choice(
    'as-last-time-capped-wander',
    'How far sealed brood walks in 30 days, when last time is the forecast',
    ['brood', 'log', 'no model'],
    [0.4, 0.6, 0.8],
    rival,
  ),
] as const;

export const engineFigures = [...living, ...wandering, ...countingFigures, ...beginning, ...challengerFigures] as const;
