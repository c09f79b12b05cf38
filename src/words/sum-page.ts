/** A page of plain lines about one sum: fields with units and limits, what stands in for what is left out, formula, sources. */
import { type FigureBook, printed, value } from '../figures/book.ts';
import type { Field } from '../figures/field.ts';
import type { Sum } from '../figures/sum.ts';
import { figureSource } from './figure-source.ts';
import { type Manner, plainManner } from './say.ts';
import { text } from './text.ts';

export function sumPage(sum: Sum, book: FigureBook, manner: Manner = plainManner): readonly string[] {
  return [
    text('sum.head', { name: sum.key, line: sum.line }, manner),
    '',
    text('sum.fields', {}, manner),
    ...fieldLines(sum.fields, '  ', book, manner),
    '',
    text('sum.formula', { formula: sum.formula }, manner),
    '',
    text('sum.sources', {}, manner),
    ...sum.sources.map((key) => {
      const figure = printed(key);
      return `  ${key}: ${figure.value} ${figure.unit} (${figure.low} – ${figure.high}); ${figureSource(figure, manner)}`;
    }),
  ];
}

/** One line a field; the fields of a record stand under it, further in. */
function fieldLines(fields: readonly Field[], indent: string, book: FigureBook, manner: Manner): readonly string[] {
  return fields.flatMap((field) => [
    `${indent}${field.name}: ${field.about}; ${takes(field, manner)}${without(field, book, manner)}`,
    ...(field.kind === 'record' || field.kind === 'records' ? fieldLines(field.of, `${indent}  `, book, manner) : []),
  ]);
}

function takes(field: Field, manner: Manner): string {
  if (field.kind === 'day') return text('sum.day', {}, manner);
  if (field.kind === 'text') return text('sum.text', { longest: String(field.longest) }, manner);
  if (field.kind === 'choice') return text('sum.choice', { choices: field.choices.join(', ') }, manner);
  if (field.kind === 'flag') return text('sum.flag', {}, manner);
  if (field.kind === 'record') return text('sum.record', {}, manner);
  if (field.kind === 'records') return text('sum.records', { most: String(field.most) }, manner);
  const limits = { unit: field.unit, low: String(field.low), high: String(field.high) };
  return text(field.kind === 'numbers' ? 'sum.numbers' : field.kind === 'integer' ? 'sum.integer' : 'sum.number', limits, manner);
}

function without(field: Field, book: FigureBook, manner: Manner): string {
  if (field.oneOf !== undefined) return `; ${text('sum.one-of', { group: field.oneOf }, manner)}`;
  if (field.without === undefined) return '';
  if (field.without.kind === 'nothing') return `; ${text('sum.optional', {}, manner)}`;
  const { figure } = field.without;
  return `; ${text('sum.default', { value: String(value(book, figure)), figure }, manner)}`;
}
