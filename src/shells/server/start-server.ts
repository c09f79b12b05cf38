/**
 * Opens the store, listens, and closes both again. Every reason why it cannot start is one issue;
 * nothing is left open then. Printing and signals are the business of `serve.ts`.
 */
import { createAdaptorServer } from '@hono/node-server';
import { readFileSync } from 'node:fs';
import { createServer as createPlain, type Server } from 'node:http';
import { createServer as createEncrypted } from 'node:https';
import type { AddressInfo } from 'node:net';
import type { AnyKind } from '../../journal/kind.ts';
import { kindMap } from '../../journal/read-entry.ts';
import { bad, good, type Issue, type Result } from '../../numbers/result.ts';
import { reason } from '../disk/data-folder.ts';
import { openSqliteStore } from '../disk/sqlite-store.ts';
import { createApp } from './app.ts';
import { isLoopbackHost, ownNames } from './own-names.ts';
import { pairingDesk } from './pairing-desk.ts';

export interface ServerOptions<D> {
  readonly port: number;
  /** 127.0.0.1 for this machine alone; 0.0.0.0 or an address for others too, who then must pair. */
  readonly host: string;
  readonly dataDir: string;
  readonly staticDir: string;
  /** Files in PEM form; both or none. */
  readonly cert?: string;
  readonly key?: string;
  readonly version: string;
  readonly kinds: readonly AnyKind<D>[];
  readonly now?: () => Date;
  /** Called with a new pairing code, after the first. */
  readonly showCode?: (code: string) => void;
  /** Called with an error that nobody expected; the request was answered with 500. */
  readonly trouble?: (error: unknown) => void;
}

export interface RunningServer {
  readonly url: string;
  readonly port: number;
  /** The pairing code, or null when only this machine can reach the server. */
  readonly code: () => string | null;
  readonly close: () => Promise<void>;
}

export async function startServer<D>(options: ServerOptions<D>): Promise<Result<RunningServer>> {
  const pem = readPem(options.cert, options.key);
  if (!pem.ok) return pem;
  const store = await openSqliteStore(options.dataDir);
  if (!store.ok) return store;
  const now = options.now ?? (() => new Date());
  const desk = pairingDesk(store.value.pairings, now, (code) => options.showCode?.(code));
  const app = createApp({
    store: store.value,
    kinds: kindMap(options.kinds),
    desk,
    names: ownNames(options.host),
    now,
    version: options.version,
    staticDir: options.staticDir,
    encrypted: pem.value !== null,
    trouble: options.trouble ?? (() => undefined),
  });
  const listening = await listen(app.fetch, options.host, options.port, pem.value);
  if (!listening.ok) {
    await store.value.close();
    return listening;
  }
  const server = listening.value;
  const port = (server.address() as AddressInfo).port;
  const shownHost = options.host.includes(':') ? `[${options.host}]` : options.host;
  return good({
    url: `${pem.value === null ? 'http' : 'https'}://${shownHost}:${port}`,
    port,
    code: () => (isLoopbackHost(options.host) ? null : desk.code()),
    close: async () => {
      await stop(server);
      await store.value.close();
    },
  });
}

interface Pem {
  readonly cert: Buffer;
  readonly key: Buffer;
}

function readPem(cert: string | undefined, key: string | undefined): Result<Pem | null> {
  if (cert === undefined && key === undefined) return good(null);
  if (cert === undefined || key === undefined) {
    return bad({
      code: 'bad-certificate',
      path: cert === undefined ? 'cert' : 'key',
      found: 'nothing',
      expected: 'both a certificate and its key',
    });
  }
  try {
    const pem = { cert: readFileSync(cert), key: readFileSync(key) };
    createEncrypted(pem).close();
    return good(pem);
  } catch (error) {
    return bad({
      code: 'bad-certificate',
      path: `${cert}, ${key}`,
      found: reason(error),
      expected: 'a certificate and its key as PEM files',
    });
  }
}

type Fetch = Parameters<typeof createAdaptorServer>[0]['fetch'];

function listen(fetch: Fetch, host: string, port: number, pem: Pem | null): Promise<Result<Server>> {
  const how = pem === null ? { createServer: createPlain } : { createServer: createEncrypted, serverOptions: pem };
  const server = createAdaptorServer({ fetch, ...how }) as Server;
  server.on('clientError', (_error, socket) => {
    if (!socket.writable) return;
    const body = JSON.stringify({
      issues: [{ code: 'bad-request', path: 'request', found: 'no request that HTTP knows', expected: 'HTTP/1.1' }],
    });
    const length = `Content-Length: ${Buffer.byteLength(body)}`;
    const head = ['HTTP/1.1 400 Bad Request', 'Content-Type: application/json', length, 'Connection: close'];
    socket.end(`${head.join('\r\n')}\r\n\r\n${body}`);
  });
  return new Promise((resolve) => {
    server.once('error', (error) => resolve(bad(listenIssue(error, host, port))));
    server.listen(port, host, () => resolve(good(server)));
  });
}

function listenIssue(error: Error, host: string, port: number): Issue {
  const why = reason(error);
  if (why === 'EADDRINUSE')
    return {
      code: 'port-taken',
      path: `port ${port}`,
      found: 'another program listens there',
      expected: 'a free port (PORT names another)',
    };
  if (why === 'EACCES')
    return {
      code: 'port-not-allowed',
      path: `port ${port}`,
      found: 'not allowed for this user',
      expected: 'a port from 1024 (PORT names another)',
    };
  return { code: 'host-not-here', path: `host ${host}`, found: why, expected: 'an address of this machine (HOST names another)' };
}

/** Lets answers that are under way finish, for a second and a half at most. */
async function stop(server: Server): Promise<void> {
  const closed = new Promise<void>((resolve) => server.close(() => resolve()));
  server.closeIdleConnections();
  const patience = setTimeout(() => server.closeAllConnections(), 1500);
  await closed;
  clearTimeout(patience);
}
