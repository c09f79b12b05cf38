/** How the server answers: JSON that is never kept by a cache, and for every refusal a list of issues under a fitting status. */
import type { Context } from 'hono';
import type { ContentfulStatusCode } from 'hono/utils/http-status';
import type { Issue } from '../../numbers/result.ts';

const statusOf: Readonly<Record<string, ContentfulStatusCode>> = {
  'bad-json': 400,
  'not-utf-8': 400,
  'bad-request': 400,
  'not-paired': 401,
  'wrong-code': 403,
  'wrong-host': 403,
  'wrong-origin': 403,
  'unknown-route': 404,
  'wrong-method': 405,
  'duplicate-id': 409,
  'body-too-large': 413,
  'not-json': 415,
  'too-many-tries': 429,
  'server-fault': 500,
  'app-not-built': 503,
  'store-full': 507,
};

/** So many issues are answered at most: a batch of nonsense is not worth more. */
const mostIssues = 200;

/** The status follows from the first issue; faults of entries and queries without a status of their own are 422. */
export function refuse(c: Context, ...issues: readonly Issue[]): Response {
  const status = statusOf[issues[0]?.code ?? ''] ?? 422;
  return c.json({ issues: issues.slice(0, mostIssues) }, status, { 'Cache-Control': 'no-store' });
}
