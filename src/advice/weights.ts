/**
 * How much is lost by leaving a thing until after its window, 0…1: our order of needs, the reasons in
 * docs/decisions/0041. A stop sign stands above all of them; see `weigh.ts`.
 */
export const weights = {
  stop: 1,
  starving: 0.97,
  cold: 0.95,
  virgin: 0.93,
  swarmLeaves: 0.9,
  recheck: 0.88,
  leaveCells: 0.87,
  layingWorkers: 0.8,
  bentComb: 0.78,
  testComb: 0.75,
  watchRobbing: 0.74,
  askSign: 0.72,
  roomGone: 0.7,
  lookForEggs: 0.66,
  storesLow: 0.64,
  room: 0.6,
  straightComb: 0.58,
  firstEggs: 0.56,
  feedSwarm: 0.54,
  holdBar: 0.5,
  visitDue: 0.48,
  worthALook: 0.46,
  requeenForTemper: 0.44,
  poorPattern: 0.4,
  temperOnce: 0.3,
  waitForEggs: 0.28,
  notWorthALook: 0.25,
  justOpened: 0.2,
} as const;
