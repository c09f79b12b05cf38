/**
 * The judge of the fuzz: a second validator that shares no code with the program. The envelope's
 * schema is written by hand for it, with a calendar of its own. The bodies' schemas are made from the
 * program's own by its schema library and checked by another validator, so for bodies it is a second
 * reading of the same rules, without those that are functions; only the envelope is independent.
 */
import { Ajv2020, type ValidateFunction } from 'ajv/dist/2020.js';
import * as z from 'zod/mini';
import type { AnyKind } from '../../src/journal/kind.ts';

export interface Judge {
  readonly envelope: (value: unknown) => boolean;
  /** Null when the kind or version has no schema here. */
  readonly body: (kind: string, version: number, body: unknown) => boolean | null;
}

const id = { type: 'string', pattern: '^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$' } as const;

const envelopeSchema = {
  type: 'object',
  required: ['id', 'yard', 'at', 'noted', 'by', 'kind', 'version', 'body'],
  additionalProperties: false,
  properties: {
    id,
    yard: id,
    by: id,
    corrects: id,
    at: { type: 'string', pattern: '^\\d{4}-\\d{2}-\\d{2}(T([01]\\d|2[0-3]):[0-5]\\d)?$', format: 'calendar-start' },
    noted: { type: 'string', pattern: '^\\d{4}-\\d{2}-\\d{2}T([01]\\d|2[0-3]):[0-5]\\d:[0-5]\\dZ$', format: 'calendar-start' },
    kind: { type: 'string', pattern: '^[a-z][a-z-]{0,39}$' },
    version: { type: 'integer', minimum: 1, maximum: 999 },
    body: true,
  },
} as const;

export function secondValidator<D>(kinds: readonly AnyKind<D>[]): Judge {
  const ajv = new Ajv2020({ strict: false });
  ajv.addFormat('calendar-start', calendarStart);
  const envelope = ajv.compile(envelopeSchema);
  const bodies = new Map<string, ValidateFunction>(
    kinds.map((kind) => [
      `${kind.kind} ${kind.version}`,
      ajv.compile(z.toJSONSchema(kind.schema, { unrepresentable: 'any', io: 'input' })),
    ]),
  );
  return {
    envelope: (value) => envelope(value) as boolean,
    body: (kind, version, body) => {
      const validate = bodies.get(`${kind} ${version}`);
      return validate === undefined ? null : (validate(body) as boolean);
    },
  };
}

/** Whether the text starts with a day that the calendar of the language itself has. */
function calendarStart(text: string): boolean {
  const [year, month, date] = [Number(text.slice(0, 4)), Number(text.slice(5, 7)), Number(text.slice(8, 10))];
  const day = new Date(0);
  day.setUTCFullYear(year, month - 1, date);
  return day.getUTCFullYear() === year && day.getUTCMonth() === month - 1 && day.getUTCDate() === date;
}
