/**
 * What the made-up bees are like: every number of the simulator with its origin. They are not the
 * figures of `src/figures` and do not read them: this world must be able to disagree with the estimator.
 * [lit] published, see docs/spec/demo.md for the source; [own] our choice for a plausible yard.
 */
export const settings = {
  brood: {
    /** [lit] Fukuda & Sakagami 1968: of 100 eggs 94.2 hatch, 86.4 are sealed, 85.1 emerge. */
    hatch: 0.942,
    seal: 0.917,
    emerge: 0.985,
    /** [lit] Ages in days from laying at which a worker hatches, is sealed, emerges (calendar rule). */
    hatchAge: 3,
    sealAge: 9,
    emergeAge: 21,
    /** [lit] The same for drones. */
    droneSealAge: 10,
    droneEmergeAge: 24,
    /** [own] Area of a drone cell in worker cells: (6.8 / 5.2) squared. */
    droneArea: 1.7,
  },
  laying: {
    /** [own] Eggs a day of a good queen when nothing holds her back; the literature's peak is 1 000 to 2 000. */
    best: 1900,
    /** [own] Bees at which she lays half of it. */
    halfBees: 5000,
    /** [own] Day of the year at which spring laying is half up, and how fast it comes. */
    rise: 90,
    riseWidth: 16,
    fall: 250,
    fallWidth: 20,
    /** [own] The dip of the summer dearth: depth, day, width. */
    dip: 0.18,
    dipDay: 212,
    dipWidth: 16,
    /** [own] Brood cells that one bee can keep warm and fed. */
    broodPerBee: 1.7,
    /** [own] Share of cells inside the brood patch that are left empty for other reasons. */
    gaps: 0.08,
  },
  adults: {
    /** [lit] Two phases: in the hive, then afield (Page & Peng 2001; Rueppell et al. 2005), values [own]. */
    forageAge: 20,
    inHiveDeath: 0.006,
    fieldDeath: 0.03,
    fieldDeathFlying: 0.08,
    /** [own] Bees with few larvae to feed live longer: deaths afield with none, as a share, and the larvae a bee at which it is 1. */
    restedShare: 0.4,
    larvaePerBee: 0.16,
    /** [own] Winter bees: share of those emerging, from day to day of the year, and their deaths a day. */
    winterFrom: 238,
    winterFull: 276,
    winterDeath: 0.0042,
    /** [own] From this day of the year their deaths rise each day by the step, up to the most. */
    springAging: 60,
    springStep: 0.0009,
    springMost: 0.065,
    /** [lit] 125 to 130 bees cover a square decimetre of one face. */
    perDm2: 128,
  },
  comb: {
    /** [lit] Worker cells of 5.2 mm: 427 a square decimetre of one face. */
    cellsPerDm2: 427,
    /** [own] The trough of the yard: inside width at the top, bar to floor, angle of the walls, gaps. */
    topMm: 460,
    depthMm: 270,
    wallDeg: 25,
    sideGapMm: 8,
    floorGapMm: 20,
    barMm: 35,
    /** [own] Both faces together, square decimetres a day, by a strong colony in flow; literature is weak: 0 to 4. */
    buildDm2: 3.6,
    buildBees: 12000,
    atOnce: 3,
  },
  food: {
    /** [own] Honey of one full cell, grams: about .32 kg a square decimetre of both faces. */
    perCell: 0.37,
    /** [own] Bread of one full cell, grams. */
    breadPerCell: 0.23,
    /** [own] What one forager brings in on a perfect day in full bloom, grams of honey to be. */
    perForager: 0.24,
    /** [own] Grams a day: a summer bee, a winter bee, the same in the cluster; [lit] 0.22 g of honey a bee reared. */
    perBee: 0.0068,
    perWinterBee: 0.0038,
    perClusterBee: 0.0028,
    perBrood: 0.0105,
    /** [own] Share of the nectar that is sealed each day. */
    ripens: 0.16,
    /** [own] Honey that is kept beside the brood, share of a face, and cells carried in to a face each day. */
    beside: 0.07,
    carried: 120,
    /** [own] Of the nest's own cells, the share that nectar may take in a flow without room elsewhere. */
    crowds: 0.4,
    /** [own] Bread cells that they like to hold a brood cell, and cells eaten by a larva and day. */
    breadPerBrood: 0.16,
    breadPerLarva: 0.035,
  },
  swarm: {
    /** [lit] Rangel & Seeley 2012: three quarters of the workers leave. */
    share: 0.74,
    /** [own] Honey that a leaving bee carries, grams. */
    carries: 0.034,
    /** [own] First and last day of the year for swarming, and the crowding from which it is in the air. */
    from: 112,
    to: 192,
    crowding: 0.95,
    hazard: 0.08,
  },
  queen: {
    /** [lit] Days from the egg at which a queen cell is sealed and at which she emerges. */
    sealAge: 8,
    emergeAge: 16,
    /** [lit] Days after emergence before she mates; days from mating to eggs; after this age she lays drones. */
    mateAge: 6,
    eggsAfter: 3,
    tooOld: 28,
    /** [own] Chance to mate on a day that suits, and not to come home. */
    mates: 0.5,
    lost: 0.06,
    /** [lit] Laying workers begin about three weeks after the last young brood. */
    layingWorkers: 23,
  },
} as const;
