/**
 * Rates and chances of the queen's state: how often a colony prepares to swarm, replaces or loses its queen, how
 * a virgin fares, and how well a look tells. Nearly all are our choice, because nobody has counted them; the
 * lengths of the stages themselves stand with development, queens and swarms.
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

const anyColony = 'colonies kept by people, temperate';
const cells = 'swarm preparations';

const rates = [
  choice(
    'queen-chain-swarm-urge',
    'Chance in a day that a crowded colony in season begins swarm cells',
    ['swarms', '1/d', 'full-sized and crowded, height of the season'],
    [0.015, 0.035, 0.08],
    'over 50 such days 83 of 100 colonies begin and some give up; of wild colonies 87 of 100 changed queen in a summer (Seeley 2017)',
  ),
  choice(
    'queen-chain-swarm-given-up',
    'Chance in a day that swarm preparations are given up',
    ['swarms', '1/d', cells],
    [0.01, 0.03, 0.06],
    'about one preparation of four comes to nothing when weather or flow turns',
  ),
  choice(
    'queen-chain-swarm-leaves',
    'Chance in a day that the swarm leaves once the first cell is sealed',
    ['swarms', '1/d', 'queen not clipped'],
    [0.3, 0.5, 0.8],
    'a fit day for flight comes every second day; keepers see swarms leave one or two days after sealing',
  ),
  choice(
    'queen-chain-after-swarm-share',
    'Swarmed colonies that send an after-swarm when the first virgin is out',
    ['swarms', 'share', 'nothing done after the prime swarm'],
    [0.15, 0.35, 0.7],
    'unmanaged colonies of a hot summer made 3.6 daughters a year, mostly by after-swarms; in cooler towns fewer are seen',
  ),
  choice(
    'queen-chain-supersedure',
    'Chance in a day of the season that a laying queen is being replaced in peace',
    ['queens', '1/d', anyColony],
    [0.0003, 0.0007, 0.0015],
    'some 12 of 100 queens in a season of 180 days',
  ),
  choice(
    'queen-chain-mother-stays',
    'Supersedures in which the mother lays until the daughter does',
    ['queens', 'share', 'supersedure'],
    [0.3, 0.5, 0.8],
    'mother and daughter side by side are often met; nobody has counted how often they are not',
  ),
  choice(
    'queen-chain-loss',
    'Chance in a day that a laying queen is lost without notice',
    ['queens', '1/d', anyColony],
    [0.0001, 0.0003, 0.0008],
    'some 10 of 100 queens in a year, hands of the keeper included',
  ),
  choice(
    'queen-chain-fails',
    'Chance in a day of the season that a laying queen begins to fail',
    ['queens', '1/d', anyColony],
    [0.0002, 0.0005, 0.001],
    'some 9 of 100 queens in a season; a queen serves two to three years',
  ),
  choice(
    'queen-chain-failing-replaced',
    'Chance in a day that the bees begin to replace a failing queen',
    ['queens', '1/d', 'season'],
    [0.01, 0.025, 0.06],
    'weeks rather than months in season',
  ),
  choice(
    'queen-chain-failing-sperm',
    'Chance in a day that a failing queen lays drones only from then on',
    ['queens', '1/d', anyColony],
    [0.001, 0.004, 0.01],
    'a few of those that fail run out of sperm before they are replaced',
  ),
  choice(
    'queen-chain-failing-lost',
    'Chance in a day that a failing queen, or one that lays drones, is lost',
    ['queens', '1/d', anyColony],
    [0.001, 0.004, 0.01],
    'more than ten times as often as a sound one',
  ),
  choice(
    'queen-chain-swarm-laying',
    'Laying that is left in the last days before a swarm',
    ['swarms', 'share', 'from the shortening on'],
    [0, 0.1, 0.3],
    'the queen is kept from food and slims; a few eggs are still laid',
  ),
  choice(
    'queen-chain-failing-laying',
    'Laying of a failing queen, of what she could before',
    ['queens', 'share', 'season'],
    [0.3, 0.6, 0.8],
    'less and patchy, but eggs are there',
  ),
  choice(
    'queen-chain-emergency-share',
    'Colonies with young brood that raise cells after a sudden loss',
    ['queens', 'share', 'eggs or young larvae there'],
    [0.85, 0.95, 0.99],
    'nearly all do; small or cold colonies may not',
  ),
  choice(
    'queen-chain-cells-fail',
    'Sealed queen cells of a colony that all fail',
    ['queens', 'share', 'several cells'],
    [0.01, 0.03, 0.08],
    'cold, handling or torn-down cells; with several of them seldom all',
  ),
] as const;

const mating = [
  choice(
    'queen-chain-virgin-lost',
    'Virgins that do not come home from their flights',
    ['queens', 'share', 'one virgin, fair weather'],
    [0.08, 0.14, 0.3],
    'with those that never mate, 18 of 100: nuclei mate in 75 to 85 of 100 cases, in poor weather 60 to 70',
  ),
  choice(
    'queen-chain-never-mates',
    'Virgins that stay home too long and lay drones',
    ['queens', 'share', 'fair weather'],
    [0.01, 0.04, 0.1],
    'a small part of the failures; bad weather for three weeks is seldom',
  ),
  choice(
    'queen-chain-first-egg-log-spread',
    'Spread of the age at first eggs, of its logarithm',
    ['queens', 'log', 'mated in flight'],
    [0.25, 0.3, 0.4],
    'skewed to the right about 10.6 days with 4 and 22 as extremes; inseminated queens had 4.1 days about 9.1',
  ),
  choice(
    'queen-chain-introduced-accepted',
    'Mated queens given in a cage that are laying in the end',
    ['queens', 'share', 'old queen and cells taken out'],
    [0.6, 0.8, 0.95],
    'a trial of methods found 49 to 81 of 100, nuclei and good seasons more',
  ),
] as const;

const looks = [
  choice(
    'queen-look-egg-combs',
    'Combs with eggs of a colony in full laying',
    ['visits', 'combs', 'season'],
    [2, 3, 6],
    'eggs stand on several combs, so that half a search finds them mostly',
  ),
  choice(
    'queen-look-eggs-seen',
    'Chance to see eggs that are on the combs looked at',
    ['visits', 'share', 'one look at all of the nest'],
    [0.8, 0.95, 0.99],
    'old eyes, dull light and new white comb hide them from one look of twenty',
  ),
  choice(
    'queen-look-larvae-seen',
    'Chance to see open larvae that are on the combs looked at',
    ['visits', 'share', 'one look at all of the nest'],
    [0.95, 0.98, 1],
    'larvae shine; a whole nest of them is seldom overlooked',
  ),
  choice(
    'queen-look-slip',
    'Notes of eggs, stages or cells that are wrong without a reason',
    ['visits', 'share', 'all visits'],
    [0.005, 0.01, 0.03],
    'a tap on the wrong button, light in an empty cell; keeps one note from deciding',
  ),
  choice(
    'queen-look-few-cells',
    'Cells of a stage that are found about two times of three',
    ['visits', 'cells', 'all of the nest looked at'],
    [20, 50, 150],
    'a first patch of eggs as large as a coin is easily passed over',
  ),
  choice(
    'queen-look-signs-noted',
    'Chance that domed caps or several eggs in a cell are noted, where they are',
    ['visits', 'share', 'brood looked at'],
    [0.4, 0.7, 0.95],
    'plain to who knows them, and not noted by who does not',
  ),
  choice(
    'queen-look-queen-seen',
    'Chance to meet a laying queen when all combs are looked at',
    ['visits', 'share', 'marked or not'],
    [0.2, 0.4, 0.8],
    'depends on mark, bees and patience; most visits do not look for her',
  ),
  choice(
    'queen-look-virgin-seen',
    'Chance to meet a virgin or a new queen, as a share of that of a laying one',
    ['visits', 'share', 'first weeks'],
    [0.1, 0.35, 0.6],
    'small, quick and unmarked',
  ),
  choice(
    'queen-look-cups-counted',
    'Queen cells with an egg or a day-old larva that are counted as open cells',
    ['visits', 'share', 'cups looked into or not'],
    [0.1, 0.3, 0.7],
    'a cup with an egg looks like an empty one from the side',
  ),
  choice(
    'queen-look-cells-begun-days',
    'Days over which swarm cells are begun, one after the other',
    ['swarms', 'd', cells],
    [3, 6, 10],
    'cells of a swarming colony are of mixed ages',
  ),
  choice(
    'queen-look-cells-shape',
    'How steady the number of queen cells is about its mean',
    ['swarms', 'shape', 'negative binomial; large is steady'],
    [1, 2, 4],
    'colonies of the same mind build 4 or 40',
  ),
  choice(
    'queen-look-cells-cleared',
    'Days after which a torn or left cell is cleared away, on average',
    ['swarms', 'd', 'after a virgin emerged'],
    [4, 8, 14],
    'remains are seen for one to two weeks',
  ),
  choice(
    'queen-look-share-unsaid',
    'Share of the nest that was looked at, where a visit does not say',
    ['visits', 'share', 'a note of eggs or of cells'],
    [0.4, 0.8, 1],
    'who notes "none seen" has looked at most of the nest',
  ),
  choice(
    'queen-act-slip',
    'Weight of states in which a noted act or swarm makes no sense',
    ['visits', 'share', 'a swarm, a queen taken or cells cut'],
    [0.005, 0.02, 0.1],
    'the wrong hive or the wrong day was written; other states are believed first',
  ),
  choice(
    'queen-act-swarm-early',
    'Weight of a swarm before any cell was sealed, against one after',
    ['swarms', 'share', 'a swarm was noted'],
    [0.05, 0.2, 0.5],
    'swarms leave before sealing where cells were cut or weather broke',
  ),
  choice(
    'queen-cut-missed',
    'Cuttings of queen cells that leave one behind',
    ['swarms', 'share', 'bees not all brushed off'],
    [0.1, 0.25, 0.5],
    'one hidden cell of ten at a chance of .97 each to be found',
  ),
] as const;

const answers = [
  choice(
    'queen-state-unknown-share',
    'Share of doubt about a colony of which nothing was told',
    ['queens', 'share', 'before the first note'],
    [0.05, 0.1, 0.3],
    'who asks has often a reason; spread over all states',
  ),
  choice(
    'queen-state-lead-days',
    'Days lived before the first note, from a laying queen',
    ['queens', 'd', 'before the first note'],
    [20, 30, 60],
    'what happened longer ago would have been noted or shows as doubt',
  ),
  choice(
    'queen-state-memory-days',
    'Days back to which notes are taken in',
    ['queens', 'd', 'one colony'],
    [200, 400, 730],
    'a year and a little: what was seen before says nothing of the queen any more',
  ),
  choice(
    'queen-state-crowding',
    'Swarm urge of a colony of unknown strength in the swarm season, of a crowded one',
    ['swarms', 'share', 'nothing known of bees and room'],
    [0.1, 0.2, 0.5],
    'with it some 45 of 100 kept colonies begin swarm cells in a season; most keepers give room in time',
  ),
  choice(
    'queen-state-telling-gain',
    'What a look must be expected to tell, to be called telling',
    ['visits', 'nats', 'she lays, one is to come, she is spent, no hope'],
    [0.1, 0.2, 0.4],
    'a fifth of a nat: as much as going from an even chance to eight of ten',
  ),
  choice(
    'queen-state-telling-share',
    'Of the most that a look of the coming weeks can tell, the share that is worth not waiting longer',
    ['visits', 'share', 'she lays, one is to come, she is spent, no hope'],
    [0.6, 0.75, 0.9],
    'the first good day is better than the best day',
  ),
  choice(
    'queen-state-harm-chance',
    'Chance of a virgin about or a queen just beginning, from which a day is left alone',
    ['visits', 'share', 'nothing urgent'],
    [0.2, 0.35, 0.5],
    'a virgin that is balled or loses her way costs the colony its year',
  ),
  choice(
    'queen-state-horizon-days',
    'Days ahead for which telling and harmful days are looked for',
    ['visits', 'd', 'all colonies'],
    [28, 42, 60],
    'from a loss to the last day for eggs of a daughter',
  ),
  choice(
    'queen-state-laying-from-share',
    'Laying of the season, as a share of the peak, from which eggs are always to be expected',
    ['brood', 'share', 'all climates'],
    [0.1, 0.2, 0.4],
    'below it a sound queen may pause; in the depth of winter no eggs tell nothing',
  ),
] as const;

const afterwards = [
  choice(
    'split-drift-share',
    'Bees old enough to fly, of those moved, that go back to the old stand',
    ['adults', 'share', 'new stand in the same yard'],
    [0.6, 0.9, 1],
    'foragers fly home to the stand they know; none return over three kilometres or after days shut in',
  ),
  choice(
    'split-ripe-cell-days',
    'From a ripe queen cell given to the virgin that leaves it',
    ['queens', 'd', 'sealed cell of a known day'],
    [1, 2, 4],
    'cells are moved two days before they are due; a day or two of error in the date of the larva',
  ),
  choice(
    'unite-lost-share',
    'Bees of the colony that ends that are lost when two are united',
    ['visits', 'share', 'united gently, with a sheet between or in a flow'],
    [0, 0.03, 0.2],
    'united with care few fight; without care, or in a dearth, many die; no count was read',
  ),
  choice(
    'split-horizon-days',
    'Days for which a split is followed',
    ['visits', 'd', 'season'],
    [90, 120, 150],
    'from the split to the last daughters of a late queen, and their work',
  ),
  choice(
    'turnover-laying-starts',
    "From the old queen's last egg to the new queen's first",
    ['queens', 'd', 'a mated queen given in a cage as the old one is taken'],
    [0, 3, 12],
    'two or three days in the cage; none when she is let in at once, twelve from a ripe cell',
  ),
  choice(
    'field-age-average',
    'Age at which the losses of the field begin, in the average and the tagged set of survival',
    ['adults', 'd', 'survival sets "average" and "rfid"'],
    [14, 18, 21],
    'the age to which the losses of tagged bees were reckoned; the kind set has 21',
  ),
] as const;

export const queenChainFigures = [...rates, ...mating, ...looks, ...answers, ...afterwards] as const;
