/** Reads the JSON body of a request by a schema. Everything that can be wrong with it is an issue. */
import type { Context } from 'hono';
import type * as z from 'zod/mini';
import { issuesOf, shown } from '../../journal/zod-issues.ts';
import { bad, good, type Result } from '../../numbers/result.ts';

/** Bytes of one request: a hundred large entries, or some thousand usual ones. */
export const largestBody = 4 * 1024 * 1024;

export async function readBody<T>(c: Context, schema: z.ZodMiniType<T>): Promise<Result<T>> {
  const type = c.req.header('content-type') ?? '';
  if (!/^application\/json\s*(;\s*charset=utf-8\s*)?$/i.test(type) || c.req.header('content-encoding') !== undefined) {
    return bad({
      code: 'not-json',
      path: 'Content-Type',
      found: shown(type === '' ? undefined : type),
      expected: 'application/json, not compressed',
    });
  }
  const bytes = await c.req.arrayBuffer();
  const text = decoded(bytes);
  if (text === null)
    return bad({ code: 'not-utf-8', path: 'body', found: 'bytes that are no UTF-8 text', expected: 'JSON in UTF-8' });
  const value = parsed(text);
  if (value === undefined) {
    return bad({
      code: 'bad-json',
      path: 'body',
      found: `text that breaks off or is no JSON: ${shown(text.slice(-40))}`,
      expected: 'JSON',
    });
  }
  const checked = schema.safeParse(value);
  return checked.success
    ? good(checked.data)
    : {
        ok: false,
        issues: issuesOf(checked.error.issues, value).map((issue) => (issue.path === '' ? { ...issue, path: 'body' } : issue)),
      };
}

function decoded(bytes: ArrayBuffer): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}

/** Undefined for what is no JSON. */
function parsed(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return undefined;
  }
}
