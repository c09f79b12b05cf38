/**
 * All routes of the server and what every request passes on its way: own name, own page, size, and
 * for other devices the pairing. It knows nothing of ports and signals; `start-server.ts` does.
 */
import { getConnInfo } from '@hono/node-server/conninfo';
import { type Context, Hono, type Next } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import { getCookie, setCookie } from 'hono/cookie';
import { secureHeaders } from 'hono/secure-headers';
import * as z from 'zod/mini';
import type { KindMap } from '../../journal/read-entry.ts';
import type { Day } from '../../numbers/day.ts';
import type { SqliteStore } from '../disk/sqlite-store.ts';
import { refuse } from './answer.ts';
import { pullEntries, pushEntries } from './entry-routes.ts';
import { isLoopbackAddress, strangerIssue } from './own-names.ts';
import { cookieName, type PairingDesk } from './pairing-desk.ts';
import { largestBody, readBody } from './read-body.ts';
import { mountApp } from './static-app.ts';

export interface AppParts<D> {
  readonly store: SqliteStore;
  readonly kinds: KindMap<D>;
  readonly desk: PairingDesk;
  readonly names: ReadonlySet<string>;
  readonly now: () => Date;
  readonly version: string;
  readonly staticDir: string;
  /** Cookies are then for encrypted connections only. */
  readonly encrypted: boolean;
  readonly trouble: (error: unknown) => void;
}

export function createApp<D>(parts: AppParts<D>): Hono {
  const app = new Hono();
  app.onError((error, c) => {
    parts.trouble(error);
    return refuse(c, {
      code: 'server-fault',
      path: c.req.path.slice(0, 80),
      found: 'a fault of the server itself',
      expected: 'an answer; the screen of the server says more',
    });
  });
  app.use('*', secureHeaders(safeHeaders));
  app.use('*', (c, next) => {
    const api = c.req.path === '/api' || c.req.path.startsWith('/api/');
    const [host, origin] = [c.req.header('host'), c.req.header('origin')];
    const issue = strangerIssue({ host, origin, site: api ? c.req.header('sec-fetch-site') : undefined }, parts.names);
    return issue === null ? next() : Promise.resolve(refuse(c, issue));
  });
  app.use(
    '/api/*',
    bodyLimit({
      maxSize: largestBody,
      onError: (c) =>
        refuse(c, {
          code: 'body-too-large',
          path: 'body',
          found: `more than ${largestBody} bytes`,
          expected: `at most ${largestBody} in one request`,
        }),
    }),
  );
  mountApi(app, parts);
  app.all('/api', unknownRoute);
  app.all('/api/*', unknownRoute);
  mountApp(app, parts.staticDir);
  app.all('*', (c) => wrongMethod(c, 'GET'));
  return app;
}

const codeSchema = z.strictObject({ code: z.string().check(z.regex(/^\d{8}$/)) });

function mountApi<D>(app: Hono, parts: AppParts<D>): void {
  const paired = (c: Context, next: Next): Promise<Response | void> => letPaired(c, next, parts.desk);
  app.post('/api/pair', async (c) => {
    const body = await readBody(c, codeSchema);
    if (!body.ok) return refuse(c, ...body.issues);
    const secret = await parts.desk.pair(body.value.code);
    if (!secret.ok) return refuse(c, ...secret.issues);
    setCookie(c, cookieName, secret.value, {
      httpOnly: true,
      sameSite: 'Strict',
      secure: parts.encrypted,
      path: '/',
      maxAge: 400 * 86400,
    });
    return c.json({ paired: true }, 200, { 'Cache-Control': 'no-store' });
  });
  app.get('/api/hello', paired, async (c) =>
    c.json({ version: parts.version, epoch: parts.store.epoch, count: await parts.store.count() }, 200, {
      'Cache-Control': 'no-store',
    }),
  );
  app.post('/api/entries', paired, (c) => pushEntries(c, parts.store, parts.kinds, latestDay(parts.now())));
  app.get('/api/entries', paired, (c) => pullEntries(c, parts.store));
  app.all('/api/pair', (c) => wrongMethod(c, 'POST'));
  app.all('/api/hello', (c) => wrongMethod(c, 'GET'));
  app.all('/api/entries', (c) => wrongMethod(c, 'GET, POST'));
}

async function letPaired(c: Context, next: Next, desk: PairingDesk): Promise<Response | void> {
  const address = getConnInfo(c).remote.address ?? '';
  if (isLoopbackAddress(address)) return next();
  const secret = getCookie(c, cookieName);
  if (secret !== undefined && (await desk.knows(secret))) return next();
  return refuse(c, {
    code: 'not-paired',
    path: cookieName,
    found: secret === undefined ? 'nothing' : 'a secret that is not known here',
    expected: "pairing with the code on the server's screen",
  });
}

/** The last day that it can be anywhere on Earth: time zones go up to fourteen hours ahead. */
function latestDay(now: Date): Day {
  return new Date(now.getTime() + 14 * 3600_000).toISOString().slice(0, 10);
}

function unknownRoute(c: Context): Response {
  return refuse(c, {
    code: 'unknown-route',
    path: c.req.path.slice(0, 80),
    found: 'no such route',
    expected: '/api/hello, /api/entries or /api/pair',
  });
}

function wrongMethod(c: Context, allowed: string): Response {
  c.header('Allow', allowed);
  return refuse(c, { code: 'wrong-method', path: c.req.path.slice(0, 80), found: c.req.method, expected: allowed });
}

/** Neither script nor style but from the app's own files: drawings carry no style attributes. */
const safeHeaders = {
  contentSecurityPolicy: {
    defaultSrc: ["'self'"],
    styleSrc: ["'self'"],
    imgSrc: ["'self'", 'data:', 'blob:'],
    objectSrc: ["'none'"],
    baseUri: ["'none'"],
    formAction: ["'self'"],
    frameAncestors: ["'none'"],
  },
  strictTransportSecurity: false,
  xFrameOptions: 'DENY',
  referrerPolicy: 'no-referrer',
} as const satisfies Parameters<typeof secureHeaders>[0];
