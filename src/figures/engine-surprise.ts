/**
 * What the model takes to name what surprised and to weigh a look: how often things befall a colony between two
 * visits without being written down, how strong they are, what it costs to come too late. Nobody has counted
 * these; each is our choice with its reason, and only their sizes beside one another matter.
 */
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

const unwritten = 'not in the journal';

const naming = [
  choice(
    'surprise-least-sd',
    'Standard deviations from what was foreseen, from which it is called a surprise',
    ['visits', 'sd', 'one thing of one visit'],
    [1.3, 1.6, 2.6],
    'one number of nine lies so far off by chance alone, and is told so; more would hide a swarm in a wide forecast',
  ),
  choice(
    'surprise-least-chance',
    'Chance below which an explanation is not named',
    ['visits', 'share', 'beside others'],
    [0.02, 0.05, 0.1],
    'one in twenty is not worth a line',
  ),
  choice(
    'surprise-particles',
    'Particles for which rival explanations are tried',
    ['visits', 'particles', 'one visit'],
    [100, 200, 400],
    'enough for the order of the explanations, few enough to be done while a visit is taken in',
  ),
] as const;

const befalling = [
  choice(
    'surprise-swarm-per-day',
    'Chance in a day that a crowded colony in season swarms although no cells were found',
    ['swarms', '1/d', unwritten],
    [0.002, 0.008, 0.02],
    'a quarter of those that would begin cells, since most are seen or expected; what the model itself expects comes on top',
  ),
  choice(
    'surprise-queen-lost-per-day',
    'Chance in a day that a queen was lost since the last visit',
    ['queens', '1/d', unwritten],
    [0.0003, 0.001, 0.003],
    'three times the rate of loss without notice, because some are crushed at a visit',
  ),
  choice(
    'surprise-superseded-per-day',
    'Chance in a day that bees began to replace their queen since the last visit',
    ['queens', '1/d', unwritten],
    [0.0005, 0.0015, 0.003],
    'twice the rate of supersedure in season: a queen who fails unnoticed is replaced sooner',
  ),
  choice(
    'surprise-robbed-per-day',
    'Chance in a day that a colony was robbed',
    ['food', '1/d', unwritten],
    [0.0005, 0.002, 0.005],
    'one colony of six in three months of the year in which nothing flowers and bees fly',
  ),
  choice(
    'surprise-flow-per-day',
    'Chance in a day of the season that a strong flow began, and the same that it ended',
    ['food', '1/d', unwritten],
    [0.005, 0.015, 0.03],
    'two or three blooms in a season that make a difference in every hive',
  ),
  choice(
    'surprise-other-hand',
    'Visits whose counts were made in another manner than is written down',
    ['visits', 'share', unwritten],
    [0.01, 0.04, 0.1],
    'somebody else read the bars, or the same person in a hurry',
  ),
  choice(
    'surprise-combs-moved',
    'Visits before which combs were moved without a note',
    ['visits', 'share', unwritten],
    [0.01, 0.03, 0.1],
    'a comb given to a neighbour hive, two put back the other way round',
  ),
  choice(
    'surprise-brood-dying-per-day',
    'Chance in a day that much brood began to die',
    ['health', '1/d', unwritten],
    [0.0003, 0.001, 0.003],
    'cold, hunger, poison or illness: one colony of six in a season of 180 days',
  ),
] as const;

const strengths = [
  choice(
    'surprise-robbed-honey',
    'Of the honey, the share that robbers carried off by the next visit',
    ['food', 'share', 'robbed and not yet stopped'],
    [0.5, 0.8, 0.98],
    'what is noticed only by the empty combs was much',
  ),
  choice(
    'surprise-robbed-bees',
    'Of the bees, the share that died in a robbing',
    ['adults', 'share', 'robbed'],
    [0, 0.12, 0.3],
    'from a few to a third; nobody counted',
  ),
  choice(
    'surprise-flow-times',
    'How many times the expected income a strong flow brings',
    ['food', 'times', 'height of the season'],
    [2.5, 4, 7],
    'kilograms in a day where half a kilogram is expected',
  ),
  choice(
    'surprise-dearth-share',
    'Of the expected income, what is left when a flow has ended',
    ['food', 'share', 'season'],
    [0, 0.05, 0.2],
    'next to nothing',
  ),
  choice(
    'surprise-other-hand-times',
    'How many times farther off another manner of counting is than another careful eye',
    ['visits', 'times', unwritten],
    [1, 1.8, 3],
    'quick counts of bees lay at a third of careful ones, careful observers within some 15 percent',
  ),
  choice(
    'surprise-moved-spread',
    'How far the content of combs that hang there now differs from what was expected of them',
    ['visits', 'logit', 'combs moved'],
    [0.5, 0.9, 1.4],
    'a brood comb for a food comb changes a third of the nest',
  ),
  choice(
    'surprise-moved-combs',
    'Combs that came or went',
    ['visits', 'combs', 'combs moved between hives'],
    [1, 2, 3],
    'a neighbour hive is helped with one or two',
  ),
  choice(
    'surprise-brood-dead',
    'Of larvae and sealed brood, the share that died',
    ['health', 'share', 'much brood dying'],
    [0.4, 0.65, 0.9],
    'less is not told apart from a poor pattern',
  ),
  choice(
    'surprise-bar-eighths',
    'How a reading of one bar errs',
    ['visits', 'eighths', 'brood or food of one comb'],
    [0.4, 0.6, 1],
    'the ruler has half eighths, and careful readers differ by one step',
  ),
  choice(
    'surprise-bar-spread',
    'How the content of a bar differs from what is expected of it, of its logarithm',
    ['visits', 'log', 'brood or food of one comb, some days later'],
    [0.15, 0.25, 0.4],
    'brood moves from comb to comb, and food is carried about',
  ),
  choice(
    'surprise-bar-fills',
    'Of the empty cells of a comb, the share that may be laid in or filled in a day',
    ['visits', '1/d', 'one comb'],
    [0.02, 0.05, 0.1],
    'a comb just built is full of nectar, or laid in, within two or three weeks of a good season',
  ),
] as const;

const looking = [
  choice(
    'look-room-days',
    'Days of free cells left, under which a bar is given',
    ['comb', 'd', 'season of building'],
    [2, 3, 5],
    'a bare bar is drawn in about five days, and the edge of the nest is laid in first',
  ),
  choice(
    'look-cost-cells',
    'What is lost by being late with queen cells',
    ['swarms', 'share', 'beside the worst'],
    [0.8, 1, 1],
    'most of the bees leave: the measure of the others',
  ),
  choice(
    'look-cost-eggs',
    'What is lost by being late with a colony without eggs',
    ['queens', 'share', 'beside a swarm'],
    [0.4, 0.7, 1],
    'after laying workers begin the colony is seldom saved, but some days matter little',
  ),
  choice(
    'look-cost-stores',
    'What is lost by being late with food',
    ['food', 'share', 'beside a swarm'],
    [0.8, 1, 1],
    'a starved colony is dead',
  ),
  choice(
    'look-cost-room',
    'What is lost by being late with a bar',
    ['comb', 'share', 'beside a swarm'],
    [0.1, 0.2, 0.4],
    'some comb and a stronger urge to swarm, which is counted with the cells',
  ),
  choice(
    'look-answers',
    'Chance of finding what is there, from which so many bars are enough',
    ['visits', 'share', 'what is asked is there'],
    [0.8, 0.9, 0.95],
    'the last tenth costs as many bars as the first nine',
  ),
  choice(
    'look-outer-cells',
    'How many times more queen cells an outer brood comb has than an inner one',
    ['swarms', 'times', 'swarm cells'],
    [1, 2, 3],
    'swarm cells hang at edges and holes; where the nest ends there are more of these',
  ),
  choice(
    'look-glance-chance',
    'Chance that the queen is short of cells, from which the end of the nest is glanced at',
    ['comb', 'share', 'nothing else to open for'],
    [0.2, 0.3, 0.5],
    'a glance costs five minutes and lifts no brood',
  ),
  choice(
    'look-hive-minutes',
    'Minutes around a look, whatever is lifted',
    ['visits', 'min', 'lighting up, lid, closing, notes'],
    [6, 10, 15],
    'as in the minutes of a whole visit',
  ),
  choice(
    'look-bar-minutes',
    'Minutes for one bar',
    ['visits', 'min', 'lifted, read, hung back'],
    [1, 1.5, 3],
    'a minute a comb in a quiet hive, more where combs are joined to the wall',
  ),
] as const;

const matching = [
  choice(
    'comb-match-place',
    'What it costs to say that a comb hangs one place from where it hung, and again for each doubling, as −2 log chance',
    ['visits', 'cost', 'a bar without a mark'],
    [0.5, 1, 2],
    'in made-up nests of ten combs, read a week or two apart, of matches told as 7 in 10 at least 7 were right, whether combs ' +
      'stayed, changed places or were pushed along; at 2 more of those that stayed amid a push are told wrongly',
  ),
  choice(
    'comb-match-apart',
    'What it costs to say that a comb is new, or gone, as −2 log chance',
    ['visits', 'cost', 'a bar without a mark'],
    [4, 6, 9],
    'one comb of twenty comes or goes between two visits without a note',
  ),
  choice(
    'comb-match-least-sure',
    'Chance from which a comb is told to hang elsewhere',
    ['visits', 'share', 'combs that may have been moved'],
    [0.4, 0.5, 0.7],
    'less likely than not is not called probable',
  ),
] as const;

export const engineSurpriseFigures = [...naming, ...befalling, ...strengths, ...matching, ...looking] as const;
