/** One field of a sum: its kind, its limits, and what takes its place when it is left out. */
import type { FigureKey } from './list.ts';

export type Field = NumberField | DayField | ChoiceField;

interface FieldBase {
  readonly name: string;
  readonly about: string;
  /** May be left out: a number or a figure takes its place, or nothing does. */
  readonly without?: Stand;
  /** Exactly one field of a group is given. */
  readonly oneOf?: string;
}

export interface NumberField extends FieldBase {
  readonly kind: 'number' | 'integer' | 'numbers';
  readonly unit: string;
  readonly low: number;
  readonly high: number;
  /** The low end itself is not allowed. */
  readonly aboveLow?: boolean;
}

export interface DayField extends FieldBase {
  readonly kind: 'day';
}

export interface ChoiceField extends FieldBase {
  readonly kind: 'choice';
  readonly choices: readonly string[];
}

/** What takes the place of a field that was left out. */
export type Stand = { readonly kind: 'figure'; readonly figure: FigureKey } | { readonly kind: 'nothing' };
