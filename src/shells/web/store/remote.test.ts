/** Talking to a server over an answer made up: what each trouble is called. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { kindMap } from '../../../journal/read-entry.ts';
import { filled, idOf, jarKinds } from '../../../journal/sample.contract.ts';
import { httpServer, type Server } from './remote.ts';

function over(answer: (path: string, init: RequestInit) => Promise<Response> | Response, timeoutMs = 1000): Server {
  const send = ((path: string, init: RequestInit) => Promise.resolve(answer(path, init))) as typeof fetch;
  return httpServer({ kinds: kindMap(jarKinds), fetch: send, timeoutMs });
}

const json = (status: number, value: unknown): Response => Response.json(value, { status });

test('S30 push, pull, hello and pair ask the routes of the server and read its answers', async () => {
  const asked: string[] = [];
  const server = over((path, init) => {
    asked.push(`${init.method ?? 'GET'} ${path}`);
    if (init.method === 'POST')
      return json(200, path === '/api/pair' ? { paired: true } : { epoch: 'e', run: 'r', added: [idOf(1)], known: [] });
    if (path === '/api/hello') return json(200, { version: '1', epoch: 'e', count: 3 });
    return json(200, { epoch: 'e', run: 'r', cursor: 4, more: false, rows: [{ seq: 4, run: 'r', entry: filled(1, 'a', 1) }] });
  });
  assert.deepEqual(await server.hello(), { ok: true, value: { version: '1', epoch: 'e', count: 3 } });
  assert.deepEqual(await server.pair('12345678'), { ok: true, value: null });
  assert.deepEqual(await server.push([filled(1, 'a', 1)]), {
    ok: true,
    value: { epoch: 'e', run: 'r', added: [idOf(1)], known: [] },
  });
  const page = await server.pull(3, 10);
  assert.ok(page.ok);
  assert.deepEqual(page.value.rows, [{ seq: 4, run: 'r', id: idOf(1), entry: filled(1, 'a', 1) }]);
  assert.deepEqual(asked, ['GET /api/hello', 'POST /api/pair', 'POST /api/entries', 'GET /api/entries?after=3&limit=10']);
});

test('S31 a refusal is passed on with its entries; the wish for a pairing code is one of them', async () => {
  const issue = { code: 'not-paired', path: 'cookie', found: 'nothing', expected: 'pairing' };
  assert.deepEqual(await over(() => json(401, { issues: [issue] })).hello(), { ok: false, issues: [issue] });
  const owned = { code: 'too-big', path: 'entries.0.at', found: '9', expected: 'at most 8', entry: idOf(1) };
  assert.deepEqual(await over(() => json(422, { issues: [owned] })).push([]), { ok: false, issues: [owned] });
});

test('S32 no network, no answer in time, and answers of another program are issues, never exceptions', async () => {
  const cases: readonly (readonly [string, () => Promise<Response> | Response])[] = [
    ['no-answer', () => Promise.reject(new TypeError('Failed to fetch'))],
    ['strange-answer', () => new Response('<html>welcome to the hotel</html>', { status: 200 })],
    ['strange-answer', () => new Response('bad gateway', { status: 502 })],
    ['strange-answer', () => json(200, { epoch: 5 })],
    ['strange-answer', () => json(500, { issues: [] })],
  ];
  for (const [code, answer] of cases) {
    const server = over(answer);
    for (const result of [await server.hello(), await server.push([]), await server.pull(0, 5), await server.pair('1')]) {
      assert.ok(!result.ok);
      assert.equal(result.issues[0]?.code, code);
    }
  }
  const slow = over(
    (_path, init) =>
      new Promise((_resolve, reject) => init.signal?.addEventListener('abort', () => reject(init.signal?.reason as Error))),
    20,
  );
  // The time limit alone does not keep Node awake.
  const awake = setTimeout(() => undefined, 5000);
  const waited = await slow.hello();
  clearTimeout(awake);
  assert.ok(!waited.ok && waited.issues[0]?.code === 'no-answer');
});

test('S33 an entry that came and is wrong is reported by field and left out; the others come through', async () => {
  const wrong = { ...filled(2, 'b', 2), body: { jar: 'b' } };
  const page = await over(() =>
    json(200, {
      epoch: 'e',
      run: 'r',
      cursor: 2,
      more: false,
      rows: [
        { seq: 1, run: 'r', entry: filled(1, 'a', 1) },
        { seq: 2, run: 'r', entry: wrong },
        { seq: 3, run: 'r', entry: null },
      ],
    }),
  ).pull(0, 5);
  assert.ok(page.ok);
  assert.deepEqual(
    page.value.rows.map((row) => [row.id, row.entry !== null]),
    [
      [idOf(1), true],
      [idOf(2), false],
      ['', false],
    ],
  );
  assert.deepEqual(page.value.issues[0], {
    code: 'missing',
    path: 'body.grams',
    found: 'nothing',
    expected: 'a number',
    entry: idOf(2),
  });
});
