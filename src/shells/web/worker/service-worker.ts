/**
 * Keeps the program itself on the device, so that it opens without a server. It keeps what was built and
 * nothing else: the journal is in the database, and what begins with /api is never touched. Each build
 * has a cache of its own, filled whole before it is used; the old one goes when the new one takes over.
 */

interface WorkerEvent extends Event {
  waitUntil(promise: Promise<unknown>): void;
}

interface AskEvent extends WorkerEvent {
  readonly request: Request;
  respondWith(answer: Promise<Response>): void;
}

interface ServiceWorkerSelf {
  readonly location: Location;
  readonly clients: { claim(): Promise<void> };
  skipWaiting(): Promise<void>;
  addEventListener(type: 'install' | 'activate', listener: (event: WorkerEvent) => void): void;
  addEventListener(type: 'fetch', listener: (event: AskEvent) => void): void;
}

const own = self as unknown as ServiceWorkerSelf;
// Both are written in by the build.
const assets = JSON.parse('__ASSETS__') as readonly string[];
const cacheName = `festoon-${'__VERSION__'}`;
/** A server may answer with "Vary: Origin"; without this the kept page would not be found, and the screen stay blank. */
const lookUp = { ignoreVary: true, ignoreSearch: true } as const;

own.addEventListener('install', (event) => event.waitUntil(fill().then(() => own.skipWaiting())));
own.addEventListener('activate', (event) => event.waitUntil(forgetOld().then(() => own.clients.claim())));
own.addEventListener('fetch', (event) => {
  const address = new URL(event.request.url);
  if (event.request.method !== 'GET' || address.origin !== own.location.origin || address.pathname.startsWith('/api')) return;
  event.respondWith(event.request.mode === 'navigate' ? page(event.request) : asset(event.request));
});

/** All or nothing: one file that fails, and the old build stays in charge. */
async function fill(): Promise<void> {
  const cache = await caches.open(cacheName);
  await cache.addAll(assets.map((path) => new Request(path, { cache: 'reload' })));
}

async function forgetOld(): Promise<void> {
  const names = await caches.keys();
  await Promise.all(names.filter((name) => name.startsWith('festoon-') && name !== cacheName).map((name) => caches.delete(name)));
}

/** Every address of the program is the one page; which screen it shows, it reads from its address. */
async function page(request: Request): Promise<Response> {
  const cache = await caches.open(cacheName);
  return (await cache.match('/', lookUp)) ?? fetch(request);
}

async function asset(request: Request): Promise<Response> {
  const cache = await caches.open(cacheName);
  return (await cache.match(request, lookUp)) ?? fetch(request);
}
