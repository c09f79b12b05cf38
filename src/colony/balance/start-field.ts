/** A field for what a course begins with: may be left out where no course is wanted. */
import type { NumberField } from '../../figures/field.ts';

const most = 200000;

export function startField(name: string, unit: string, about: string): NumberField {
  return { kind: 'number', name, unit, low: 0, high: most, without: { kind: 'nothing' }, about };
}
