/** Pairing: who may talk to the server, and how often a code may be tried. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { kindMap } from '../../journal/read-entry.ts';
import { jarKinds } from '../../journal/sample.contract.ts';
import type { SqliteStore } from '../disk/sqlite-store.ts';
import { createApp } from './app.ts';
import { issuesIn } from './jar-server.contract.ts';
import { ownNames } from './own-names.ts';
import { pairingDesk } from './pairing-desk.ts';

const host = '192.0.2.10:4180';

function yard(): {
  ask: (path: string, init?: RequestInit) => Promise<Response>;
  code: () => string;
  wait: (ms: number) => void;
  kept: Set<string>;
} {
  const kept = new Set<string>();
  let time = Date.parse('2014-05-16T12:00:00Z');
  const now = (): Date => new Date(time);
  const pairings = {
    keep: (hash: string) => Promise.resolve(void kept.add(hash)),
    has: (hash: string) => Promise.resolve(kept.has(hash)),
  };
  const desk = pairingDesk(pairings, now, () => undefined);
  const store = { epoch: 'e', count: () => Promise.resolve(0), pairings } as unknown as SqliteStore;
  const app = createApp({
    store,
    kinds: kindMap(jarKinds),
    desk,
    names: new Set([...ownNames('0.0.0.0'), '192.0.2.10']),
    now,
    version: '0',
    staticDir: '/nowhere',
    encrypted: false,
    trouble: (error) => console.error(error),
  });
  const env = { incoming: { socket: { remoteAddress: '192.0.2.77', remotePort: 5, remoteFamily: 'IPv4' } } };
  return {
    ask: async (path, init = {}) =>
      app.request(
        `http://${host}${path}`,
        { ...init, headers: { Host: host, ...(init.headers as Record<string, string>) } },
        env,
      ),
    code: desk.code,
    wait: (ms) => (time += ms),
    kept,
  };
}

function tried(code: string): RequestInit {
  return { method: 'POST', body: JSON.stringify({ code }), headers: { 'Content-Type': 'application/json' } };
}

test('S14 another device sees nothing of the journal before it is paired, and everything after', async () => {
  const { ask, code, kept } = yard();
  for (const [path, method] of [
    ['/api/hello', 'GET'],
    ['/api/entries', 'GET'],
    ['/api/entries', 'POST'],
  ] as const) {
    const refused = await ask(path, { method });
    assert.deepEqual([refused.status, (await issuesIn(refused))[0]?.code], [401, 'not-paired']);
  }
  const paired = await ask('/api/pair', tried(code()));
  assert.equal(paired.status, 200);
  const cookie = paired.headers.get('set-cookie') ?? '';
  assert.match(cookie, /HttpOnly/);
  assert.match(cookie, /SameSite=Strict/);
  const secret = cookie.split(';')[0] ?? '';
  assert.equal((await ask('/api/hello', { headers: { Cookie: secret } })).status, 200);
  assert.equal((await ask('/api/hello', { headers: { Cookie: `${secret}x` } })).status, 401);
  assert.ok(![...kept].some((hash) => secret.includes(hash)), 'only a hash of the secret is kept');
});

test('S15 a code serves one device', async () => {
  const { ask, code } = yard();
  const first = code();
  assert.equal((await ask('/api/pair', tried(first))).status, 200);
  assert.notEqual(code(), first);
  assert.equal((await ask('/api/pair', tried(first))).status, 403);
});

test('S16 five wrong codes close the desk for a minute, even for the right one; twenty bring a new code', async () => {
  const { ask, code, wait } = yard();
  const right = code();
  const wrong = right === '00000000' ? '00000001' : '00000000';
  for (let i = 0; i < 5; i += 1) assert.equal((await ask('/api/pair', tried(wrong))).status, 403);
  assert.equal((await ask('/api/pair', tried(right))).status, 429);
  for (let minute = 0; minute < 3; minute += 1) {
    wait(61_000);
    for (let i = 0; i < 5; i += 1) await ask('/api/pair', tried(wrong));
  }
  assert.notEqual(code(), right);
  wait(61_000);
  assert.equal((await ask('/api/pair', tried(right))).status, 403);
  assert.equal((await ask('/api/pair', tried(code()))).status, 200);
});
