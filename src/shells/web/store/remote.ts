/**
 * The server as the app sees it: `Remote` of the journal over fetch, with a time limit on every
 * request. Answers are input from outside and are checked like any other; what cannot be understood
 * is an issue, never an exception.
 */
import * as z from 'zod/mini';
import type { KindMap } from '../../../journal/read-entry.ts';
import { readEntry } from '../../../journal/read-entry.ts';
import type { PulledRow, Remote } from '../../../journal/sync-ports.ts';
import { bad, good, type Issue, type Result } from '../../../numbers/result.ts';

export interface Hello {
  readonly version: string;
  readonly epoch: string;
  readonly count: number;
}

export interface Server extends Remote {
  hello(): Promise<Result<Hello>>;
  /** Trades the eight digits on the server's screen for a cookie. */
  pair(code: string): Promise<Result<null>>;
}

export interface RemoteOptions<D> {
  readonly kinds: KindMap<D>;
  /** Absent: the server that the app came from. */
  readonly base?: string;
  readonly fetch?: typeof fetch;
  readonly timeoutMs?: number;
}

const helloSchema = z.object({ version: z.string(), epoch: z.string(), count: z.number() });
const pushedSchema = z.object({ epoch: z.string(), run: z.string(), added: z.array(z.string()), known: z.array(z.string()) });
const pageSchema = z.object({
  epoch: z.string(),
  run: z.string(),
  cursor: z.int(),
  more: z.boolean(),
  rows: z.array(z.object({ seq: z.int(), run: z.string(), entry: z.unknown() })),
});
const refusalSchema = z.object({
  issues: z
    .array(
      z.object({ code: z.string(), path: z.string(), found: z.string(), expected: z.string(), entry: z.optional(z.string()) }),
    )
    .check(z.minLength(1)),
});

export function httpServer<D>(options: RemoteOptions<D>): Server {
  const ask = asking(options);
  return {
    hello: () => ask('/api/hello', null, helloSchema),
    pair: async (code) => {
      const answer = await ask('/api/pair', { code }, z.object({ paired: z.literal(true) }));
      return answer.ok ? good(null) : answer;
    },
    push: (entries) => ask('/api/entries', { entries }, pushedSchema),
    pull: async (cursor, limit) => {
      const answer = await ask(`/api/entries?after=${cursor}&limit=${limit}`, null, pageSchema);
      if (!answer.ok) return answer;
      const issues: Issue[] = [];
      const rows = answer.value.rows.map((row) => readRow(row, options.kinds, issues));
      const { epoch, run, cursor: next, more } = answer.value;
      return good({ epoch, run, cursor: next, more, rows, issues });
    },
  };
}

function readRow<D>(
  row: { readonly seq: number; readonly run: string; readonly entry: unknown },
  kinds: KindMap<D>,
  issues: Issue[],
): PulledRow {
  const read = readEntry(row.entry, kinds);
  const id = typeof row.entry === 'object' && row.entry !== null && 'id' in row.entry ? String(row.entry.id) : '';
  if (!read.ok) issues.push(...read.issues);
  return { seq: row.seq, run: row.run, id, entry: read.ok ? read.value.entry : null };
}

type Ask = <T>(path: string, body: unknown, schema: z.ZodMiniType<T>) => Promise<Result<T>>;

/** `body` null: a GET. */
function asking<D>({ base = '', timeoutMs = 15_000, fetch: send = fetch }: RemoteOptions<D>): Ask {
  return async (path, body, schema) => {
    const init: RequestInit =
      body === null ? {} : { method: 'POST', body: JSON.stringify(body), headers: { 'Content-Type': 'application/json' } };
    let answer: { readonly status: number; readonly value: unknown };
    try {
      const response = await send(base + path, {
        ...init,
        cache: 'no-store',
        credentials: 'same-origin',
        signal: AbortSignal.timeout(timeoutMs),
      });
      answer = { status: response.status, value: await response.json().catch(() => undefined) };
    } catch (error) {
      const why = error instanceof Error ? error.name : String(error);
      return bad({ code: 'no-answer', path: 'server', found: why, expected: `an answer within ${timeoutMs / 1000} s` });
    }
    if (answer.status === 200) {
      const checked = schema.safeParse(answer.value);
      return checked.success ? good(checked.data) : bad(strange(answer.status));
    }
    const refusal = refusalSchema.safeParse(answer.value);
    return refusal.success ? { ok: false, issues: refusal.data.issues.map(owned) } : bad(strange(answer.status));
  };
}

function owned({ entry, ...issue }: z.infer<typeof refusalSchema>['issues'][number]): Issue {
  return entry === undefined ? issue : { ...issue, entry };
}

/** Another program answers there, or something in between. */
function strange(status: number): Issue {
  return {
    code: 'strange-answer',
    path: 'server',
    found: `an answer with status ${status} that is not ours`,
    expected: 'an answer of Festoon',
  };
}
