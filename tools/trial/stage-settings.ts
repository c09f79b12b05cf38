/**
 * What the bees of the second world are like: harsher, patchier and of another build than model and first world.
 * All numbers are invented for this world, round and inside what handbooks allow; none is read from the figures
 * of the model, and none was chosen by how a policy does.
 */
export const stageSettings = {
  colony: {
    bees: [5000, 15000],
    honeyKg: [4, 13],
    builtCells: [38000, 62000],
    bareCells: [6000, 24000],
    /** All bars of the trough. */
    mostCells: 165000,
    barCells: 6500,
    /** Best laying a day, and how queens differ (log). */
    power: 1500,
    powerSpread: 0.22,
    /** Brood that one house bee rears, and how colonies differ (log). */
    care: 2.3,
    careSpread: 0.15,
    /** How colonies differ in losses (log), and in how much restlessness they bear (log). */
    lifeSpread: 0.18,
    bearsSpread: 0.4,
    /** Share of colonies with a queen past her best. */
    oldQueens: 0.3,
  },
  /** Of the day's chances: fair after fair, fair after foul; flight on a foul day. */
  weather: { fairStays: 0.78, fairComes: 0.45, foulFlight: 0.12 },
  /** The flow holds on in spells; when it changes, chances of none, weak and strong by the part of the season. */
  flow: {
    stays: 0.86,
    parts: [
      { until: 18, odds: [0.5, 0.45, 0.05] },
      { until: 68, odds: [0.2, 0.4, 0.4] },
      { until: 122, odds: [0.72, 0.25, 0.03] },
      { until: 148, odds: [0.35, 0.5, 0.15] },
      { until: 168, odds: [0.6, 0.38, 0.02] },
    ],
    /** Grams of honey to be that a forager brings in on a fair day. */
    grams: [0.005, 0.09, 0.28],
    siteSpread: 0.25,
  },
  /** Season of laying as points of day and share. */
  season: [
    [0, 0.4],
    [45, 1],
    [80, 0.9],
    [125, 0.55],
    [168, 0.25],
  ],
  dearthLaying: 0.8,
  /** Sub-stages with a chance to move on each day; mean days 3, 5.7 and 12. Losses at each move. */
  brood: { larvaMoves: 0.53, pupaMoves: 0.5, eggLost: 0.05, larvaLost: 0.03, pupaLost: 0.003, hungryLost: 0.25 },
  adults: {
    houseLoss: 0.007,
    fieldLossFair: 0.115,
    fieldLossFoul: 0.035,
    /** House bees turn foragers at this chance, less the more foragers there are. */
    turns: 0.1,
    held: 0.2,
    /** Bees of last autumn: share of those of 1 April, loss a day. */
    oldShare: 0.75,
    oldLoss: 0.034,
    winterFrom: 138,
    winterFull: 168,
    winterLoss: 0.006,
  },
  food: { beeGrams: 0.0085, larvaGrams: 0.02, cellGrams: 0.37, starvedLoss: 0.12, emptyKg: 0.05, againKg: 1, takesDown: 700 },
  comb: { dayCells: 1100, builders: 6000 },
  swarm: {
    from: 12,
    to: 100,
    /** Bees on a cell from which they are a crowd, use of cells from which the nest is full, bees whom her scent reaches. */
    crowd: 0.24,
    crowdGain: 0.9,
    full: 0.82,
    fullGain: 0.7,
    reach: 17000,
    reachGain: 0.35,
    foulGain: 0.02,
    calms: 0.045,
    bears: 1,
    cellsDays: 6,
    mostCellsADay: 3,
    givenUp: 0.05,
    leaves: 0.7,
    share: [0.6, 0.8],
    after: 0.3,
    afterShare: 0.4,
    honeyGrams: 0.035,
    slims: 5,
    slim: 0.3,
    calmDays: 14,
  },
  queen: {
    sealed: 8,
    emerges: 16,
    lost: 0.0007,
    superseded: { young: 0.0005, old: 0.004 },
    motherStays: 0.5,
    flies: 6,
    mates: 0.3,
    flightLost: 0.1,
    laysAfter: 3,
    tooOld: 27,
    layingWorkers: 24,
    emergencyFails: 0.1,
    fullAfter: 8,
  },
} as const;
