/**
 * What one slot of a sentence looks like. A slot of an advice knows its unit and where it comes from: what
 * was counted or stands in the book is said in full, what is worked out in two figures.
 */
import type { Cite, Slot, Unit } from '../advice/advice.ts';
import { assert } from '../numbers/assert.ts';
import { isTextKey } from './catalogue.ts';
import { fill } from './fill.ts';
import { formatDay, formatSpan, formatWeekday, formatWindow } from './format-day.ts';
import { formatEnds, formatNumber, formatRange, type Measure } from './format-number.ts';
import { formatPlaces } from './format-place.ts';
import type { Manner } from './say.ts';

export type SlotValue = Slot | string | number;

/** Forms that a template may ask for behind a colon. */
export const slotForms = ['span', 'weekday', 'earliest', 'latest', 'ends', 'bare'] as const;

/** The text of one slot in the form its template asks for. */
export function slotText(value: SlotValue, form: string | null, manner: Manner): string {
  if (typeof value === 'string') return value;
  if (typeof value === 'number') return formatNumber(value, 'none', true, manner);
  switch (value.kind) {
    case 'number':
      return formatNumber(value.value, form === 'bare' ? 'none' : measureOf(value.unit), isExact(value.cite), manner);
    case 'range':
      return (form === 'ends' ? formatEnds : formatRange)(value.range, measureOf(value.unit), isExact(value.cite), manner);
    case 'day':
      return form === 'weekday' ? formatWeekday(value.day, manner) : formatDay(value.day, manner);
    case 'window':
      if (form === 'earliest') return formatDay(value.window.earliest, manner);
      if (form === 'latest') return formatDay(value.window.latest, manner);
      return (form === 'span' ? formatSpan : formatWindow)(value.window, manner);
    case 'place':
      return formatPlaces([value.place], manner);
    case 'places':
      return formatPlaces(value.places, manner);
    case 'name':
      return value.name;
    case 'term':
      assert(isTextKey(value.key), `the term ${value.key} is in the catalogue`);
      return fill(value.key, {}, manner);
  }
}

/** The number that decides between one and many, and how it is written. */
export function pluralOf(value: SlotValue, manner: Manner): { readonly one: boolean; readonly number: string } {
  if (typeof value === 'number') return { one: value === 1, number: formatNumber(value, 'none', true, manner) };
  assert(typeof value === 'object', 'a plural has a number in its slot');
  if (value.kind === 'range') {
    const number = formatRange(value.range, 'none', isExact(value.cite), manner);
    return { one: number === '1', number };
  }
  if (value.kind === 'places') return { one: value.places.length === 1, number: formatPlaces(value.places, manner) };
  assert(value.kind === 'number', 'a plural has a number in its slot');
  const number = formatNumber(value.value, 'none', isExact(value.cite), manner);
  return { one: number === '1', number };
}

const measures: Readonly<Partial<Record<Unit, Measure>>> = { kg: 'kg', degC: 'degC', percent: 'percent' };

function measureOf(unit: Unit): Measure {
  return measures[unit] ?? 'none';
}

function isExact(cite: Cite): boolean {
  return cite.kind !== 'worked out';
}
