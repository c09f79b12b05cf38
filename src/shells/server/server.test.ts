/** The routes of the server and the reasons why it does not start, each in one line. */
import assert from 'node:assert/strict';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { connect } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { filled, idOf } from '../../journal/sample.contract.ts';
import { issuesIn, jarServer } from './jar-server.contract.ts';
import { type RunningServer, startServer } from './start-server.ts';

const root = mkdtempSync(join(tmpdir(), 'festoon-server-'));
let server: RunningServer;
before(async () => {
  mkdirSync(join(root, 'yard', 'app', 'assets'), { recursive: true });
  writeFileSync(join(root, 'yard', 'app', 'index.html'), '<!doctype html><title>the app</title>');
  writeFileSync(join(root, 'yard', 'app', 'assets', 'a-1b2c.js'), 'export const a = 1;');
  writeFileSync(join(root, 'yard', 'secret.txt'), 'not for you');
  server = await jarServer(join(root, 'yard'));
});
after(async () => {
  await server.close();
  rmSync(root, { recursive: true, force: true });
});

function post(path: string, body: unknown, headers: Record<string, string> = {}): Promise<Response> {
  const text = typeof body === 'string' ? body : JSON.stringify(body);
  return fetch(server.url + path, { method: 'POST', body: text, headers: { 'Content-Type': 'application/json', ...headers } });
}

/** With headers that `fetch` does not let one set. */
function rawStatus(path: string, headers: Record<string, string>, method = 'GET'): Promise<{ status: number; body: string }> {
  return new Promise((resolve, reject) => {
    const asked = request({ host: '127.0.0.1', port: server.port, path, method, headers, setHost: false }, (answer) => {
      let body = '';
      answer.on('data', (part: Buffer) => (body += part.toString()));
      answer.on('end', () => resolve({ status: answer.statusCode ?? 0, body }));
    });
    asked.on('error', reject);
    asked.end();
  });
}

test('S1 hello says version, epoch and how many entries there are, and is never cached', async () => {
  const answer = await fetch(`${server.url}/api/hello`);
  assert.equal(answer.headers.get('cache-control'), 'no-store');
  const hello = (await answer.json()) as Record<string, unknown>;
  assert.equal(hello['version'], '0.0.0-test');
  assert.match(String(hello['epoch']), /^[0-9a-f-]{36}$/);
  assert.equal(typeof hello['count'], 'number');
});

test('S2 pushed entries are pulled back the same, page by page; pushing again changes nothing', async () => {
  const batch = [filled(1, 'a', 10), filled(2, 'b', 20), filled(3, 'c', 30)];
  const first = await post('/api/entries', { entries: batch });
  assert.equal(first.status, 200);
  assert.deepEqual(((await first.json()) as { added: unknown }).added, [idOf(1), idOf(2), idOf(3)]);
  const again = (await (await post('/api/entries', { entries: batch })).json()) as { added: unknown; known: unknown };
  assert.deepEqual([again.added, again.known], [[], [idOf(1), idOf(2), idOf(3)]]);
  const found: unknown[] = [];
  for (let cursor = 0, more = true; more;) {
    const page = (await (await fetch(`${server.url}/api/entries?after=${cursor}&limit=2`)).json()) as {
      rows: { entry: unknown }[];
      cursor: number;
      more: boolean;
    };
    found.push(...page.rows.map((row) => row.entry));
    ({ cursor, more } = page);
  }
  assert.deepEqual(found, batch);
});

test('S3 a batch with one bad entry is refused whole, with entry, field, found and expected', async () => {
  const bad = filled(11, 'a', 1, '2014-05-16', { body: { jar: 'a', grams: 1, eighths: [9] } });
  const answer = await post('/api/entries', { entries: [filled(10, 'a', 1), bad] });
  assert.equal(answer.status, 422);
  assert.deepEqual(await issuesIn(answer), [
    { code: 'too-big', path: 'entries.1.body.eighths.0', found: '9', expected: 'at most 8', entry: idOf(11) },
  ]);
  const page = (await (await fetch(`${server.url}/api/entries?limit=2000`)).json()) as { rows: { entry: { id: string } }[] };
  assert.ok(page.rows.every((row) => row.entry.id !== idOf(10)));
});

test('S4 dates that cannot be or lie ahead of now are refused', async () => {
  for (const [at, code] of [
    ['2014-02-29', 'wrong-value'],
    ['2021-01-01', 'ahead-of-now'],
    ['2014-05-16T24:00', 'wrong-value'],
  ] as const) {
    const answer = await post('/api/entries', { entries: [filled(12, 'a', 1, at)] });
    assert.equal(answer.status, 422);
    const [issue] = await issuesIn(answer);
    assert.deepEqual([issue?.code, issue?.path, issue?.entry], [code, 'entries.0.at', idOf(12)]);
  }
});

test('S5 an id with other content is answered 409 with both hashes', async () => {
  await post('/api/entries', { entries: [filled(20, 'a', 1)] });
  const answer = await post('/api/entries', { entries: [filled(20, 'a', 2)] });
  assert.equal(answer.status, 409);
  const [issue] = await issuesIn(answer);
  assert.match(`${issue?.found} ${issue?.expected}`, /[0-9a-f]{64}.*[0-9a-f]{64}/);
});

test('S6 a body that is no JSON, breaks off, is compressed, is not UTF-8 or is too large is refused as such', async () => {
  const cases: readonly (readonly [number, string, Promise<Response>])[] = [
    [400, 'bad-json', post('/api/entries', '{"entries":[{"id":')],
    [400, 'bad-json', post('/api/entries', '')],
    [422, 'wrong-type', post('/api/entries', '[]')],
    [422, 'missing', post('/api/entries', '{}')],
    [422, 'unknown-field', post('/api/entries', { entries: [], more: 1 })],
    [415, 'not-json', post('/api/entries', '{}', { 'Content-Type': 'text/plain' })],
    [415, 'not-json', post('/api/entries', '{}', { 'Content-Encoding': 'gzip' })],
    [413, 'body-too-large', post('/api/entries', `{"entries":["${'x'.repeat(4 * 1024 * 1024)}"]}`)],
  ];
  for (const [status, code, asked] of cases) {
    const answer = await asked;
    assert.deepEqual([answer.status, (await issuesIn(answer))[0]?.code], [status, code]);
  }
  const latin = await fetch(`${server.url}/api/entries`, {
    method: 'POST',
    body: new Uint8Array([0x22, 0xe9, 0x22]),
    headers: { 'Content-Type': 'application/json' },
  });
  assert.deepEqual([latin.status, (await issuesIn(latin))[0]?.code], [400, 'not-utf-8']);
});

test('S7 what JSON can say but no journal can keep is refused: 100 000 levels, endless numbers, half characters', async () => {
  const entry = JSON.stringify(filled(30, 'a', 1, '2014-05-16', { kind: 'from-tomorrow' }));
  const cases = [
    [entry.replace('"body":{', `"body":{"x":${'['.repeat(100_000)}${']'.repeat(100_000)},`), 'too-deep'],
    [entry.replace('"body":{', '"body":{"x":1e999,'), 'endless-number'],
    [entry.replace('"body":{', '"body":{"x":"\\ud800",'), 'broken-text'],
    [entry.replace('"body":{', `"body":{"x":"${'y'.repeat(300_000)}",`), 'entry-too-large'],
  ] as const;
  for (const [text, code] of cases) {
    const answer = await post('/api/entries', `{"entries":[${text}]}`);
    assert.deepEqual([answer.status, (await issuesIn(answer))[0]?.code], [422, code]);
  }
});

test('S8 an unknown route is 404 and a wrong method 405, both with issues', async () => {
  for (const path of ['/api', '/api/', '/api/nothing', '/api/entries/x']) {
    const answer = await fetch(server.url + path);
    assert.deepEqual([answer.status, (await issuesIn(answer))[0]?.code], [404, 'unknown-route'], path);
  }
  for (const [path, method] of [
    ['/api/hello', 'POST'],
    ['/api/entries', 'DELETE'],
    ['/api/pair', 'GET'],
    ['/', 'POST'],
    ['/api/entries', 'OPTIONS'],
  ] as const) {
    const answer = await fetch(server.url + path, { method });
    assert.deepEqual([answer.status, (await issuesIn(answer))[0]?.code], [405, 'wrong-method'], `${method} ${path}`);
    assert.equal(answer.headers.get('access-control-allow-origin'), null);
  }
});

test('S9 a Host that is not ours and an Origin that is not this server are refused, for the app and for the journal', async () => {
  const own = `127.0.0.1:${server.port}`;
  const cases: readonly (readonly [string, Record<string, string>, number])[] = [
    ['/', { Host: 'evil.example' }, 403],
    ['/api/hello', { Host: `evil.example:${server.port}` }, 403],
    ['/api/hello', { Host: '192.168.0.9' }, 403],
    ['/api/hello', { Host: own, Origin: 'http://evil.example' }, 403],
    ['/api/hello', { Host: own, Origin: 'null' }, 403],
    ['/api/hello', { Host: own, Origin: `http://localhost:${server.port}` }, 403],
    ['/api/hello', { Host: own, 'Sec-Fetch-Site': 'cross-site' }, 403],
    ['/api/hello', { Host: own, Origin: `http://${own}` }, 200],
    ['/api/hello', { Host: `localhost:${server.port}`, 'Sec-Fetch-Site': 'same-origin' }, 200],
    ['/', { Host: own, 'Sec-Fetch-Site': 'cross-site' }, 200],
  ];
  for (const [path, headers, status] of cases)
    assert.equal((await rawStatus(path, headers)).status, status, JSON.stringify([path, headers]));
});

test('S10 the app comes with strict headers; its screens share one page, its files are kept, nothing else is given out', async () => {
  const page = await fetch(`${server.url}/colony/alder`);
  assert.match(await page.text(), /the app/);
  assert.equal(page.headers.get('cache-control'), 'no-cache');
  const policy = page.headers.get('content-security-policy') ?? '';
  assert.match(policy, /default-src 'self'/);
  assert.doesNotMatch(policy, /script-src|unsafe-eval/);
  assert.equal(page.headers.get('x-content-type-options'), 'nosniff');
  const file = await fetch(`${server.url}/assets/a-1b2c.js`);
  assert.match(file.headers.get('cache-control') ?? '', /immutable/);
  assert.match(file.headers.get('content-type') ?? '', /javascript/);
  for (const path of [
    '/assets/gone-1.js',
    '/../secret.txt',
    '/..%2fsecret.txt',
    '/%2e%2e/secret.txt',
    '/%00.js',
    '/%E0%A4%A.js',
  ]) {
    const answer = await rawStatus(path, { Host: `127.0.0.1:${server.port}` });
    assert.ok(answer.status === 404 || answer.status === 400, `${path} ${answer.status}`);
    assert.doesNotMatch(answer.body, /not for you/);
  }
});

test('S11 what is no HTTP is answered 400 and the server goes on', async () => {
  const answer = await new Promise<string>((resolve) => {
    const socket = connect(server.port, '127.0.0.1', () => socket.write('BEES\r\n\r\n'));
    let text = '';
    socket.on('data', (part) => (text += part.toString()));
    socket.on('close', () => resolve(text));
  });
  assert.match(answer, /^HTTP\/1\.1 400.*"issues"/s);
  assert.equal((await fetch(`${server.url}/api/hello`)).status, 200);
});

test('S12 bad queries are refused with the field', async () => {
  for (const [query, path] of [
    ['after=-1', 'after'],
    ['after=1.5', 'after'],
    ['limit=0', 'limit'],
    ['limit=2001', 'limit'],
    ['after=9007199254740993', 'after'],
    ['x=1', 'x'],
  ]) {
    const answer = await fetch(`${server.url}/api/entries?${query}`);
    assert.equal(answer.status, 400, query);
    assert.equal((await issuesIn(answer))[0]?.path, path);
  }
});

test('S13 a taken port, an address of elsewhere, a held folder, a bad certificate: one issue each, and nothing is left open', async () => {
  const plain = { port: 0, host: '127.0.0.1', dataDir: join(root, 'other'), staticDir: root, version: '0', kinds: [] };
  const cases = [
    [{ port: server.port }, 'port-taken'],
    [{ host: '203.0.113.7' }, 'host-not-here'],
    [{ dataDir: join(root, 'yard') }, 'folder-in-use'],
    [{ cert: join(root, 'none.pem'), key: join(root, 'none.pem') }, 'bad-certificate'],
    [{ cert: join(root, 'none.pem') }, 'bad-certificate'],
  ] as const;
  for (const [change, code] of cases) {
    const started = await startServer({ ...plain, ...change });
    assert.ok(!started.ok);
    assert.deepEqual(
      started.issues.map((issue) => issue.code),
      [code],
    );
  }
  const free = await startServer(plain);
  assert.ok(free.ok);
  await free.value.close();
});
