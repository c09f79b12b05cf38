/**
 * A hive from the three questions that a keeper can answer at once: how many bars, how wide inside
 * at the top, how deep. What is not answered, and all else, is a typical value and says so until it
 * is measured.
 */
import { type FigureBook, value } from '../figures/book.ts';
import type { Id } from '../journal/entry.ts';
import type { HiveBody } from './kind-hive.ts';

export interface HiveAnswers {
  readonly bars: number | null;
  readonly topWidth: Length | null;
  readonly depth: Length | null;
}

interface Length {
  readonly value: number;
  readonly unit: 'mm' | 'cm' | 'in';
}

export function typicalHive(hive: Id, name: string, answers: HiveAnswers, book: FigureBook): HiveBody {
  const typical = (mm: number): HiveBody['depth'] => ({ value: mm, unit: 'mm', how: 'typical' });
  const measured = (length: Length | null, mm: number): HiveBody['depth'] =>
    length === null ? typical(mm) : { ...length, how: 'measured' };
  return {
    hive,
    name,
    bars: answers.bars ?? Math.round(value(book, 'hive-bars')),
    barWidth: typical(value(book, 'bar-width')),
    topWidth: measured(answers.topWidth, value(book, 'hive-top-width')),
    depth: measured(answers.depth, value(book, 'hive-depth')),
    wallAngleDeg: value(book, 'wall-angle'),
    wallAngleHow: 'typical',
    entrance: 'first',
  };
}
