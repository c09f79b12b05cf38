/** One field of a sum: its kind, its limits, and what takes its place when it is left out. */
import type { FigureKey } from './list.ts';

export type Field = NumberField | DayField | TextField | ChoiceField | FlagField | RecordField | RecordsField;

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

/** A short text, as a mark. */
export interface TextField extends FieldBase {
  readonly kind: 'text';
  /** Most characters; at least one is given. */
  readonly longest: number;
}

export interface ChoiceField extends FieldBase {
  readonly kind: 'choice';
  readonly choices: readonly string[];
}

/** True or false. */
export interface FlagField extends FieldBase {
  readonly kind: 'flag';
}

/** A record with fields of its own. */
export interface RecordField extends FieldBase {
  readonly kind: 'record';
  readonly of: readonly Field[];
}

/** A list of such records, in any order unless the sum says otherwise. */
export interface RecordsField extends FieldBase {
  readonly kind: 'records';
  readonly of: readonly Field[];
  /** Most records that are taken. */
  readonly most: number;
}

/** What takes the place of a field that was left out. */
export type Stand = { readonly kind: 'figure'; readonly figure: FigureKey } | { readonly kind: 'nothing' };
