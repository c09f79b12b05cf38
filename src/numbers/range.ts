/**
 * A number with the range in which eight of ten such numbers should lie. Ranges of parts that err
 * together (one observer, one factor) add end to end; parts that err apart add in quadrature.
 */
export interface Range {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

export function exactly(value: number): Range {
  return { low: value, likely: value, high: value };
}

export const nothing: Range = exactly(0);

export function scaleRange(range: Range, factor: number): Range {
  return { low: range.low * factor, likely: range.likely * factor, high: range.high * factor };
}

/** Product of two ranges whose errors are unrelated; all ends must be at least 0. Log-quadrature around the likely values. */
export function timesRange(a: Range, b: Range): Range {
  const likely = a.likely * b.likely;
  if (likely === 0) return { low: 0, likely, high: a.high * b.high };
  const down = Math.hypot(logGap(a.low, a.likely), logGap(b.low, b.likely));
  const up = Math.hypot(logGap(a.likely, a.high), logGap(b.likely, b.high));
  return { low: likely * Math.exp(-down), likely, high: likely * Math.exp(up) };
}

/** Sum of parts that err together: ends add. */
export function addTogether(parts: readonly Range[]): Range {
  return parts.reduce((a, b) => ({ low: a.low + b.low, likely: a.likely + b.likely, high: a.high + b.high }), nothing);
}

/** Sum of parts that err apart: half-widths add in quadrature; the low end never passes below 0. */
export function addApart(parts: readonly Range[]): Range {
  const likely = parts.reduce((sum, part) => sum + part.likely, 0);
  const down = Math.hypot(...parts.map((part) => part.likely - part.low));
  const up = Math.hypot(...parts.map((part) => part.high - part.likely));
  return { low: Math.max(0, likely - down), likely, high: likely + up };
}

const leastShare = 1e-3;

function logGap(small: number, large: number): number {
  if (large <= 0) return 0;
  return Math.log(large / Math.max(small, large * leastShare));
}
