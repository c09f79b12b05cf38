/**
 * Throws spoilt entries, bodies, queries, routes and journal files at the server and the reader, by
 * seed, over a store on disk, and lets the second validator and a plain model of the store judge.
 */
import { createApp } from '../../src/shells/server/app.ts';
import { ownNames } from '../../src/shells/server/own-names.ts';
import { pairingDesk } from '../../src/shells/server/pairing-desk.ts';
import type { SqliteStore } from '../../src/shells/disk/sqlite-store.ts';
import { checkJournal } from '../../src/journal/check-journal.ts';
import type { Entry } from '../../src/journal/entry.ts';
import type { AnyKind } from '../../src/journal/kind.ts';
import { kindMap } from '../../src/journal/read-entry.ts';
import { type Dice, diceOf } from './dice.ts';
import { type Judged, judgePush, newTally, type Tally } from './judge-push.ts';
import { spoilt, spoiltText } from './mutate.ts';
import { secondValidator } from './second-validator.ts';

export interface FuzzInput<D> {
  readonly seed: number;
  readonly runs: number;
  /** Good entries to spoil. */
  readonly entries: readonly Entry[];
  readonly kinds: readonly AnyKind<D>[];
  readonly emptyDraft: () => D;
  readonly store: SqliteStore;
  readonly staticDir: string;
  /** Now, after all good entries. */
  readonly today: string;
}

export interface FuzzReport extends Tally {
  readonly seed: number;
  readonly runs: number;
}

type Send = (path: string, init?: RequestInit) => Promise<Response>;

export async function runFuzz<D>(input: FuzzInput<D>): Promise<FuzzReport> {
  const dice = diceOf(input.seed);
  const tally = newTally();
  const judged: Judged = { judge: secondValidator(input.kinds), kept: new Map(), today: input.today, tally };
  const send = sender(input, (error) => tally.findings.push(`the server threw: ${String(error)}`));
  for (let run = 0; run < input.runs; run += 1) {
    const before = tally.findings.length;
    if (dice.rarely(6)) await strangeRequest(send, dice, tally);
    else if (dice.rarely(40)) strangeFile(input, dice, tally);
    else await push(send, input, dice, judged);
    if (run % 100 === 99 || run === input.runs - 1) await compareStore(input.store, judged);
    for (let i = before; i < tally.findings.length; i += 1) tally.findings[i] = `run ${run}: ${tally.findings[i]}`;
  }
  return { seed: input.seed, runs: input.runs, ...tally };
}

function sender<D>(input: FuzzInput<D>, trouble: (error: unknown) => void): Send {
  const now = (): Date => new Date(`${input.today}T00:00:00Z`);
  const app = createApp({
    store: input.store,
    kinds: kindMap(input.kinds),
    desk: pairingDesk(input.store.pairings, now, () => undefined),
    names: ownNames('127.0.0.1'),
    now,
    version: 'fuzz',
    staticDir: input.staticDir,
    encrypted: false,
    trouble,
  });
  const env = { incoming: { socket: { remoteAddress: '127.0.0.1', remotePort: 1, remoteFamily: 'IPv4' } } };
  return async (path, init) => {
    const request = new Request(new URL(path, 'http://127.0.0.1:4180'), init);
    request.headers.set('Host', '127.0.0.1:4180');
    return app.fetch(request, env);
  };
}

async function push<D>(send: Send, input: FuzzInput<D>, dice: Dice, judged: Judged): Promise<void> {
  const entries: unknown[] = Array.from({ length: 1 + dice.below(3) }, () => {
    const entry = dice.one(input.entries);
    const fresh = dice.rarely(2)
      ? entry
      : { ...entry, id: `00000000-0000-4000-8000-${String(dice.below(1_000_000)).padStart(12, '0')}` };
    return dice.rarely(2) ? fresh : spoilt(fresh, dice);
  });
  const whole = JSON.stringify({ entries });
  const text = dice.rarely(5) ? spoiltText(whole, dice) : whole;
  const answer = await send('/api/entries', { method: 'POST', body: text, headers: { 'Content-Type': 'application/json' } });
  await judgePush(text, answer, judged);
}

const paths: readonly string[] = [
  '/',
  '/api',
  '/api/hello',
  '/api/entries',
  '/api/pair',
  '/api/entries/1',
  '/index.html',
  '/assets/a.js',
  '/..%2f..%2fetc/passwd',
  '/%00',
  '/%E0%A4%A',
  '//api/hello',
  '/api/hello%2f',
  '/colony/x',
  '/a.js',
];
const queries: readonly string[] = [
  '',
  '?after=1',
  '?after=-1',
  '?limit=1',
  '?limit=0',
  '?limit=99999',
  '?after=NaN',
  '?after=1e3',
  '?after[]=1',
  '?after=1&after=2',
  '?%',
  '?x=%00',
  '?limit=2&after=9007199254740992',
  '?limit= 5',
];
const methods: readonly string[] = ['GET', 'HEAD', 'POST', 'PUT', 'DELETE', 'PATCH', 'OPTIONS'];

async function strangeRequest(send: Send, dice: Dice, tally: Tally): Promise<void> {
  const method = dice.one(methods);
  const path = dice.one(paths) + dice.one(queries);
  const bodied = method !== 'GET' && method !== 'HEAD' && dice.rarely(2);
  const type = dice.one(['application/json', 'text/plain', 'application/json; charset=utf-8', 'multipart/form-data; boundary=x']);
  const body = dice.one([
    '{}',
    '{"code":"1"}',
    '{"code":"00000000"}',
    '[]',
    '"',
    '{"entries":{}}',
    'null',
    '{"entries":[null]}',
    '{"entries":[[]]}',
  ]);
  const answer = await send(path, { method, ...(bodied ? { body, headers: { 'Content-Type': type } } : {}) });
  tally.requests += 1;
  const asked = `${method} ${path}`;
  if (answer.status >= 500) tally.findings.push(`${asked} was answered ${answer.status}`);
  if (answer.status >= 400 && method !== 'HEAD') {
    const told = (await answer.json().catch(() => null)) as { readonly issues?: unknown } | null;
    if (!Array.isArray(told?.issues) || told.issues.length === 0) tally.findings.push(`${asked} was refused without an issue`);
  }
}

/** A whole journal file, spoilt: it must be read without an exception, and what is kept must be good. */
function strangeFile<D>(input: FuzzInput<D>, dice: Dice, tally: Tally): void {
  const rows = Array.from({ length: 1 + dice.below(20) }, () => {
    const entry = dice.one(input.entries);
    return JSON.stringify(dice.rarely(2) ? entry : spoilt(entry, dice));
  });
  const text = spoiltText(rows.join('\n'), dice);
  tally.files += 1;
  try {
    const checked = checkJournal(text, input.kinds, input.emptyDraft, { today: input.today });
    for (const fault of checked.faults) {
      if (fault.found === '' || fault.expected === '')
        tally.findings.push(`a fault of a file that says nothing: ${JSON.stringify(fault)}`);
    }
  } catch (error) {
    tally.findings.push(`reading a file threw: ${String(error)} (${String((error as Error).cause)})`);
  }
}

async function compareStore(store: SqliteStore, { kept, tally }: Judged): Promise<void> {
  const page = await store.readText(0, 1_000_000);
  const there = new Set(page.rows.map((row) => row.json));
  for (const [id, text] of kept) if (!there.has(text)) tally.findings.push(`entry ${id} was confirmed and is lost or changed`);
  if (there.size !== kept.size) tally.findings.push(`${there.size} entries are stored, ${kept.size} were confirmed`);
}
