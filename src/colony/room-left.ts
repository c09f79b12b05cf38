/** How long the queen has cells to lay in: empty cells of the brood nest, day by day, as bees emerge and eggs and nectar go in. */

export interface RoomDays {
  /** Empty cells in the morning of each day: day 0 first, one more than there are days given. Below 0 is a want of cells. */
  readonly free: readonly number[];
  /** First day without an empty cell, null when it does not come. */
  readonly fullOnDay: number | null;
}

/** `emergingPerDay`: cells that become empty on each coming day, day 0 first. */
export function roomLeft(
  emptyCells: number,
  emergingPerDay: readonly number[],
  laidPerDay: number,
  nectarCellsPerDay: number,
): RoomDays {
  const free = [emptyCells];
  for (const [day, emerging] of emergingPerDay.entries()) free.push((free[day] ?? 0) + emerging - laidPerDay - nectarCellsPerDay);
  const full = free.findIndex((cells) => cells <= 0);
  return { free, fullOnDay: full === -1 ? null : full };
}
