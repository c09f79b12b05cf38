/** How many cells stand on an area of comb: hexagons of one width, side by side, without gaps. */

/** Cells on a square decimetre of one face, for cells `widthMm` wide between parallel walls, wall middle to wall middle. */
export function cellsPerDm2(widthMm: number): number {
  return 20000 / (Math.sqrt(3) * widthMm * widthMm);
}

/** Width in mm from the cells counted along 10 cm of a row. */
export function cellWidthMm(cellsPer10cm: number): number {
  return 100 / cellsPer10cm;
}
