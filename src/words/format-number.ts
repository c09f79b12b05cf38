/**
 * Numbers as they are said: two significant figures unless counted or weighed, thousands in words from
 * ten thousand on, ranges as "21 thousand (18 to 25)". Units turn into the person's own here.
 */
import { assert } from '../numbers/assert.ts';
import type { Range } from '../numbers/range.ts';
import { fill } from './fill.ts';
import type { Manner } from './say.ts';

export type Measure = 'none' | 'kg' | 'degC' | 'percent' | 'mm' | 'l';

const kgPerLb = 0.45359237;
const mmPerInch = 25.4;
const litresPerGallon = 3.785411784;
/** From here on a number is said in thousands. */
const thousandsFrom = 10_000;

/** A plain number with its thousands set apart and at most two decimals: 1,300; 10.6. */
export function plainNumber(value: number, decimals = 2): string {
  assert(Number.isFinite(value), `a number that can be said, not ${value}`);
  const rounded = Math.abs(value)
    .toFixed(decimals)
    .replace(/(\.\d*?)0+$/, '$1')
    .replace(/\.$/, '');
  const [whole = '0', part] = rounded.split('.');
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, ',');
  const sign = value < 0 && Number(rounded) !== 0 ? '−' : '';
  return sign + (part === undefined ? grouped : `${grouped}.${part}`);
}

/** Rounded to two significant figures: 20,840 becomes 21,000. */
export function twoFigures(value: number): number {
  if (value === 0) return 0;
  const step = 10 ** (Math.floor(Math.log10(Math.abs(value))) - 1);
  return step >= 1 ? Math.round(value / step) * step : Math.round(value / step) / Math.round(1 / step);
}

/** One number with its unit. `exact` for what was counted, weighed or is a figure of the book. */
export function formatNumber(value: number, measure: Measure, exact: boolean, manner: Manner): string {
  const own = inOwnUnit(value, measure, manner);
  if (measure === 'degC') return withUnit(plainNumber(own, 0), measure, manner);
  if (exact) return withUnit(plainNumber(own), measure, manner);
  const rounded = twoFigures(own);
  if (measure === 'none' && Math.abs(rounded) >= thousandsFrom) {
    return fill('number.thousand', { n: plainNumber(rounded / 1000) }, manner);
  }
  return withUnit(plainNumber(rounded), measure, manner);
}

/** The likely value with its ends: "21 thousand (18 to 25)"; the value alone when the ends say the same. */
export function formatRange(range: Range, measure: Measure, exact: boolean, manner: Manner): string {
  const likely = formatNumber(range.likely, measure, exact, manner);
  const [low, high] = ends(range, measure, exact, manner);
  if (low === high) return likely;
  return fill('range.around', { likely, low, high }, manner);
}

/** The ends only: "900 to 1,300", with the unit once. */
export function formatEnds(range: Range, measure: Measure, exact: boolean, manner: Manner): string {
  const [low, high] = ends(range, measure, exact, manner);
  const last = formatNumber(range.high, measure, exact, manner);
  return low === high ? last : fill('range.ends', { low, high: last }, manner);
}

/** Both ends on the scale of the likely value and of the high one, without unit. */
function ends(range: Range, measure: Measure, exact: boolean, manner: Manner): readonly [string, string] {
  const own = (value: number): number => inOwnUnit(value, measure, manner);
  if (measure === 'degC') return [plainNumber(own(range.low), 0), plainNumber(own(range.high), 0)];
  if (exact) return [plainNumber(own(range.low)), plainNumber(own(range.high))];
  const said = twoFigures(own(range.likely));
  const thousands = measure === 'none' && said >= thousandsFrom;
  const scale = thousands ? 1000 : 1;
  return [plainNumber(twoFigures(own(range.low)) / scale), plainNumber(twoFigures(own(range.high)) / scale)];
}

function inOwnUnit(value: number, measure: Measure, manner: Manner): number {
  if (manner.units === 'metric') return value;
  if (measure === 'kg') return value / kgPerLb;
  if (measure === 'mm') return value / mmPerInch;
  if (measure === 'l') return value / litresPerGallon;
  if (measure === 'degC') return (value * 9) / 5 + 32;
  return value;
}

function withUnit(n: string, measure: Measure, manner: Manner): string {
  const US = manner.units === 'US';
  if (measure === 'kg') return fill(US ? 'unit.lb' : 'unit.kg', { n }, manner);
  if (measure === 'mm') return fill(US ? 'unit.in' : 'unit.mm', { n }, manner);
  if (measure === 'l') return fill(US ? 'unit.gal' : 'unit.l', { n }, manner);
  if (measure === 'degC') return fill(US ? 'unit.degF' : 'unit.degC', { n }, manner);
  if (measure === 'percent') return fill('unit.percent', { n }, manner);
  return n;
}
