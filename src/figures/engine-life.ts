/**
 * What the model of a colony takes beside bees and brood: stores, room, drones, the queen's affairs. Nearly all
 * of it nobody has measured in a top-bar hive; the wandering of each number says so, and visits narrow it.
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

const inFlow = 'height of the season, flow as expected';
const any = 'all seasons';

const stores = [
  choice(
    'engine-nectar-per-bee',
    'Honey to be that a bee of the colony brings in on a day',
    ['food', 'g/d', inFlow],
    [0.015, 0.035, 0.07],
    'twenty thousand bees then gain half a kilogram a day beyond what they eat; days differ by a factor of several',
  ),
  choice(
    'engine-bread-per-bee',
    'Pollen that a bee of the colony brings in on a day',
    ['food', 'g/d', inFlow],
    [0.003, 0.006, 0.012],
    'about as much as the brood of a full-sized colony takes, a little more in a good season',
  ),
  choice(
    'engine-flow-from-share',
    'Laying, as a share of the peak, below which nothing comes in',
    ['food', 'share', 'all climates'],
    [0.05, 0.15, 0.3],
    'queens begin before flowers are many and stop when they are over',
  ),
  choice(
    'engine-flow-wander',
    'How the flow wanders about what the season lets expect',
    ['food', 'log', any],
    [0.6, 0.9, 1.2],
    'weather and bloom make one week worth three others',
  ),
  choice(
    'engine-memory-flow',
    'Days after which a flow or a dearth is two thirds forgotten',
    ['food', 'd', any],
    [5, 10, 20],
    'a bloom lasts one to three weeks, bad weather some days',
  ),
  choice(
    'engine-bee-eats',
    'Honey that a bee of the colony eats in a day',
    ['food', 'mg/d', 'what rearing takes is apart'],
    [2, 3, 4.5],
    'scales and the law of cluster mass give 35 to 60 g a winter day for 17 thousand bees; 4.2 to 6.7 mg in a warm place',
  ),
  choice(
    'engine-hungry-honey',
    'Honey below which bees starve',
    ['food', 'kg', any],
    [0.02, 0.05, 0.2],
    'what is left then is scattered or out of reach; a small swarm lives on little more from day to day',
  ),
  choice(
    'engine-hungry-loss',
    'Losses a day of bees that starve',
    ['food', '1/d', any],
    [0.1, 0.25, 0.5],
    'a starving colony is dead within a week or two',
  ),
  choice(
    'engine-start-honey',
    'Honey of a colony, before it was first read',
    ['food', 'kg', any],
    [2, 6, 18],
    'from a swarm of two weeks to a full trough: nobody has looked',
  ),
  choice(
    'engine-start-honey-spread',
    'How colonies differ in honey before they were first read',
    ['food', 'log', any],
    [0.7, 0.9, 1.1],
    'a factor of three either way',
  ),
  choice(
    'engine-start-bread',
    'Bee bread of a colony, before it was read',
    ['food', 'kg', any],
    [0.2, 0.6, 1.5],
    'one to five combs with some bee bread; it matters little beside honey',
  ),
  choice(
    'engine-bread-most',
    'Bee bread beyond which a colony stores no more',
    ['food', 'kg', any],
    [1, 2, 3],
    'the most that was found through a season in one study was 2 kg',
  ),
] as const;

const room = [
  choice(
    'engine-usable-cells',
    'Built worker cells that brood and food can use',
    ['comb', 'share', 'combs of a top-bar hive'],
    [0.75, 0.85, 0.95],
    'edges, drone comb and cells at wood and wall are left out',
  ),
  choice(
    'engine-honey-most-share',
    'Of usable cells, the most that honey takes from the queen',
    ['comb', 'share', 'all seasons'],
    [0.5, 0.7, 0.85],
    'a nest is kept for brood in the strongest flow, and syrup stands in the feeder until there is comb for it',
  ),
  choice(
    'engine-bread-most-share',
    'Of built cells, the most that bee bread takes',
    ['comb', 'share', 'all seasons'],
    [0.05, 0.12, 0.2],
    'of the cells of a brood area some 5 of 100 hold pollen or honey; beside it combs with more are met',
  ),
  choice(
    'engine-cells-found',
    'Of free cells, those that a queen finds in a day',
    ['brood', 'share', 'brood nest'],
    [0.2, 0.4, 0.7],
    'free cells at the far end, or outside the warm nest, are of no use to her on that day',
  ),
  choice(
    'engine-builder-bees',
    'Bees of a colony that builds at full speed',
    ['comb', 'bees', inFlow],
    [8000, 12000, 20000],
    'a strong swarm builds the rate that is listed; smaller ones less in proportion',
  ),
] as const;

const drones = [
  choice(
    'engine-drone-share',
    'Of the eggs at the height of the season, those that are drones',
    ['brood', 'share', 'natural comb'],
    [0.04, 0.08, 0.15],
    'with drone comb at will up to a seventh of the comb is drone; it is not always in use',
  ),
  choice(
    'engine-drone-from-share',
    'Laying, as a share of the peak, above which drones are reared and kept',
    ['brood', 'share', 'all climates'],
    [0.4, 0.55, 0.7],
    'from about April to August in the monthly figures',
  ),
  choice(
    'engine-drone-driven-loss',
    'Drones lost in a day when they are driven out',
    ['adults', '1/d', 'late season'],
    [0.1, 0.2, 0.4],
    'within two weeks or so they are gone',
  ),
] as const;

const queens = [
  choice(
    'engine-new-queen-ramp',
    'Days in which a new queen comes to her full laying',
    ['queens', 'd', 'after her first eggs'],
    [5, 10, 14],
    'the first patches are small; no measurement was read',
  ),
  choice(
    'engine-swarm-bees-urge',
    'Bees at which the urge to swarm is what its figure says',
    ['swarms', 'bees', 'bees as counted'],
    [10000, 15000, 25000],
    'a full-sized colony; smaller ones swarm less; what more bees add is told by how they cover their comb',
  ),
  choice(
    'engine-swarm-season',
    'Power of the season of laying that the urge to swarm follows',
    ['swarms', 'power', any],
    [2, 5, 8],
    'nine of ten swarms of temperate places leave between late April and mid July, a season far narrower than that of brood',
  ),
  choice(
    'engine-swarm-season-after',
    'The same past the peak of the year',
    ['swarms', 'power', any],
    [6, 12, 20],
    'brood falls slowly after midsummer, but few swarms leave once colonies have ceased to grow',
  ),
  choice(
    'engine-swarm-cover',
    'Share of their comb that bees cover when the urge to swarm is what its figure says',
    ['swarms', 'share', 'bees as counted'],
    [0.6, 0.75, 0.9],
    'bees that fill their combs to three quarters are a crowd to the eye; spread over more comb they are not',
  ),
  choice(
    'engine-crowded-urge',
    'How many times stronger the urge to swarm is when the queen has no cells left',
    ['swarms', 'times', any],
    [2, 4, 8],
    'crowding is the cause on which all handbooks agree',
  ),
  choice(
    'engine-roomy-urge',
    'How many times as strong it is when she has cells for a week',
    ['swarms', 'times', any],
    [0.2, 0.5, 1],
    'room does not end it',
  ),
  choice(
    'engine-roomy-days',
    'Days of free cells with which a queen is not hemmed in',
    ['swarms', 'd', any],
    [4, 7, 10],
    'cells that are emptied in a week are laid in again; less is felt',
  ),
  choice(
    'engine-after-swarm-bees',
    'Of the bees that are there, those that leave with a later swarm',
    ['swarms', 'share', 'after the first virgin emerged'],
    [0.2, 0.4, 0.6],
    'later swarms are small, and so is what they leave; no count was read',
  ),
  choice(
    'engine-swarm-honey',
    'Honey that a leaving bee carries',
    ['swarms', 'g', 'swarm'],
    [0.02, 0.035, 0.05],
    'bees of a swarm weigh 130 mg and more, hungry ones 90',
  ),
  choice(
    'engine-swarm-share-spread',
    'How the share of bees that leave differs from swarm to swarm',
    ['swarms', 'logit', 'first swarm'],
    [0.3, 0.5, 0.8],
    'the range of the share that is listed',
  ),
  choice(
    'engine-guided-times',
    'How many times more often rare changes of the queen are proposed than they happen',
    ['queens', 'times', 'particles; made up for by their weights'],
    [2, 4, 8],
    'some particles must hold each story before it is seen; the answer does not depend on it',
  ),
] as const;

const beginnings = [
  choice(
    'engine-swarm-bees',
    'Bees of a swarm that was hived, its parent not counted',
    ['swarms', 'bees', 'bees as counted'],
    [4000, 10000, 20000],
    'one to two and a half kilograms of bees; later swarms are smaller',
  ),
  choice('engine-swarm-spread', 'How swarms differ in bees', ['swarms', 'log', 'any swarm'], [0.4, 0.5, 0.6], 'a factor of two'),
  choice(
    'engine-part-spread',
    'How far the share of bees, brood or food that went differs from that of the combs',
    ['visits', 'logit', 'splits and combs moved'],
    [0.3, 0.5, 0.8],
    'bees fly back, combs differ; a share of a half may be four or six tenths',
  ),
] as const;

export const engineLifeFigures = [...stores, ...room, ...drones, ...queens, ...beginnings] as const;
