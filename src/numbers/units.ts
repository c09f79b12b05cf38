/**
 * Numbers that know their unit. The brand is optional, so that a plain number may be given where a
 * quantity is asked for, but two different units can never be mixed up: kilograms are not decimetres.
 */
declare const unit: unique symbol;

export type Quantity<U extends string> = number & { readonly [unit]?: U };

export type Days = Quantity<'d'>;
export type PerDay = Quantity<'1/d'>;
export type Mm = Quantity<'mm'>;
export type Dm2 = Quantity<'dm2'>;
export type Kg = Quantity<'kg'>;
export type Bees = Quantity<'bees'>;
export type Cells = Quantity<'cells'>;
export type Degrees = Quantity<'deg'>;
export type Celsius = Quantity<'degC'>;

/** A value as somebody typed it: kept for good, so that nothing is lost in conversion. */
export interface Typed {
  readonly value: number;
  readonly unit: string;
}

const toMetric: Readonly<Record<string, readonly [base: string, scale: number, shift: number]>> = {
  mm: ['mm', 1, 0],
  cm: ['mm', 10, 0],
  in: ['mm', 25.4, 0],
  kg: ['kg', 1, 0],
  g: ['kg', 0.001, 0],
  lb: ['kg', 0.45359237, 0],
  l: ['l', 1, 0],
  gal: ['l', 3.785411784, 0],
  degC: ['degC', 1, 0],
  degF: ['degC', 5 / 9, -32 * (5 / 9)],
};

/** Units that may be typed, with the base unit each turns into. */
export const typedUnits: readonly string[] = Object.keys(toMetric);

/** The value in its base unit (mm, kg, l, degC), or null when the unit is not one of that base. */
export function inBase(typed: Typed, base: 'mm' | 'kg' | 'l' | 'degC'): number | null {
  const row = toMetric[typed.unit];
  if (row === undefined || row[0] !== base) return null;
  return typed.value * row[1] + row[2];
}
