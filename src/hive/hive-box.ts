/** A trough with sloping side walls: widths, cross-section, length and room, from the dimensions a builder knows. */

export interface BoxSize {
  readonly floorWidthMm: number;
  /** Floor to bars, upright. */
  readonly heightMm: number;
  /** Of the side walls, from the vertical. */
  readonly wallAngleDeg: number;
  readonly bars: number;
  readonly barWidthMm: number;
  /** Length left for bars to swell. */
  readonly expansionMm: number;
}

export interface Box {
  readonly topWidthMm: number;
  readonly crossSectionDm2: number;
  readonly innerLengthMm: number;
  readonly volumeL: number;
  readonly litresPerBar: number;
}

export function hiveBox(size: BoxSize): Box {
  const topWidthMm = size.floorWidthMm + 2 * size.heightMm * Math.tan((size.wallAngleDeg * Math.PI) / 180);
  const crossSectionDm2 = (((topWidthMm + size.floorWidthMm) / 2) * size.heightMm) / 1e4;
  const innerLengthMm = size.bars * size.barWidthMm + size.expansionMm;
  return {
    topWidthMm,
    crossSectionDm2,
    innerLengthMm,
    volumeL: crossSectionDm2 * (innerLengthMm / 100),
    litresPerBar: crossSectionDm2 * (size.barWidthMm / 100),
  };
}
