/** The service worker in a world of stand-ins: a cache store, a server that can die, events that wait. The browser tests do it for real. */
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { runInNewContext } from 'node:vm';
import ts from 'typescript';

const source = ts.transpileModule(readFileSync('src/shells/web/worker/service-worker.ts', 'utf8'), {
  compilerOptions: { target: ts.ScriptTarget.ES2023, module: ts.ModuleKind.ESNext },
}).outputText;
const origin = 'https://yard.test';

interface StandIn {
  readonly caches: Map<string, Map<string, string>>;
  /** Null: the server is dead. */
  server: ((path: string) => string | null) | null;
  readonly asked: string[];
}

/** What the build writes in, then the events of a browser. */
function worker(world: StandIn, version: string, assets: readonly string[]) {
  const listeners = new Map<string, (event: unknown) => void>();
  const text = source
    .replace("'__ASSETS__'", JSON.stringify(JSON.stringify(assets)))
    .replace("'__VERSION__'", JSON.stringify(version));
  assert.ok(!text.includes('__'), 'both places of the build are filled in');
  const get = (address: string): Promise<string> => {
    world.asked.push(address);
    const answer = world.server?.(address) ?? null;
    return answer === null ? Promise.reject(new TypeError('no server')) : Promise.resolve(answer);
  };
  const pathOf = (request: string | { url: string }): string => {
    const url = new URL(typeof request === 'string' ? request : request.url, origin);
    return url.pathname;
  };
  const open = (name: string) => {
    const kept = world.caches.get(name) ?? new Map<string, string>();
    world.caches.set(name, kept);
    return Promise.resolve({
      addAll: async (requests: { url: string }[]) => {
        const answers = await Promise.all(requests.map((request) => get(pathOf(request))));
        requests.forEach((request, n) => kept.set(pathOf(request), answers[n] ?? ''));
      },
      // As a real cache with "Vary: Origin" answers: nothing, unless it is told to ignore that.
      match: (request: string | { url: string }, options?: { ignoreVary?: boolean }) =>
        Promise.resolve(options?.ignoreVary === true ? kept.get(pathOf(request)) : undefined),
    });
  };
  runInNewContext(text, {
    URL,
    JSON,
    Promise,
    Request: class {
      readonly url: string;
      constructor(path: string) {
        this.url = new URL(path, origin).href;
      }
    },
    caches: {
      open,
      keys: () => Promise.resolve([...world.caches.keys()]),
      delete: (name: string) => Promise.resolve(world.caches.delete(name)),
    },
    fetch: (request: { url: string }) => get(pathOf(request)),
    self: {
      location: { origin },
      clients: { claim: () => Promise.resolve() },
      skipWaiting: () => Promise.resolve(),
      addEventListener: (type: string, listener: (event: unknown) => void) => void listeners.set(type, listener),
    },
  });
  const wait = async (type: string): Promise<void> => {
    let work: Promise<unknown> = Promise.resolve();
    listeners.get(type)?.({
      waitUntil: (promise: Promise<unknown>) => {
        work = promise;
      },
    });
    await work;
  };
  return {
    install: () => wait('install'),
    activate: () => wait('activate'),
    /** Undefined: left to the browser. */
    fetch: (path: string, part: { method?: string; mode?: string } = {}): Promise<string> | undefined => {
      let answer: Promise<string> | undefined;
      const request = { url: new URL(path, origin).href, method: 'GET', mode: 'cors', ...part };
      listeners.get('fetch')?.({
        request,
        respondWith: (given: Promise<string>) => {
          answer = given;
        },
      });
      return answer;
    },
  };
}

const files = ['/', '/assets/main-1.js', '/icon.svg'];
const standing = (): StandIn => ({ caches: new Map(), server: (path) => `now ${path}`, asked: [] });

test('R12 with the server dead, every address of the program opens its page, and every part of it is there', async () => {
  const world = standing();
  const kept = worker(world, 'one', files);
  await kept.install();
  await kept.activate();
  world.server = null;
  for (const address of ['/', '/colony/abc', '/handbook', '/?hive=swarm']) {
    assert.equal(await kept.fetch(address, { mode: 'navigate' }), 'now /');
  }
  assert.equal(await kept.fetch('/assets/main-1.js'), 'now /assets/main-1.js');
});

test('R12 what begins with /api, what is not asked with GET and what lies elsewhere is left alone', async () => {
  const kept = worker(standing(), 'one', files);
  await kept.install();
  assert.equal(kept.fetch('/api/entries'), undefined);
  assert.equal(kept.fetch('/assets/main-1.js', { method: 'POST' }), undefined);
  assert.equal(kept.fetch('https://elsewhere.test/x.js'), undefined);
});

test('R12 a build that cannot be fetched whole does not take over, and the old one still opens', async () => {
  const world = standing();
  const old = worker(world, 'one', files);
  await old.install();
  await old.activate();
  world.server = (path) => (path === '/assets/main-2.js' ? null : `new ${path}`);
  const next = worker(world, 'two', ['/', '/assets/main-2.js']);
  await assert.rejects(next.install());
  assert.equal(await old.fetch('/', { mode: 'navigate' }), 'now /');
});

test('R12 a new build forgets the old one when it takes over, and no cache that is not its own', async () => {
  const world = standing();
  world.caches.set('of-somebody-else', new Map());
  const old = worker(world, 'one', files);
  await old.install();
  await old.activate();
  const next = worker(world, 'two', files);
  await next.install();
  await next.activate();
  assert.deepEqual([...world.caches.keys()].sort(), ['festoon-two', 'of-somebody-else']);
});

test('R12 what was not built is asked of the server', async () => {
  const world = standing();
  const kept = worker(world, 'one', files);
  await kept.install();
  world.asked.length = 0;
  assert.equal(await kept.fetch('/later.js'), 'now /later.js');
  assert.deepEqual(world.asked, ['/later.js']);
});
