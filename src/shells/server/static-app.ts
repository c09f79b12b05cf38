/**
 * Serves the built app from a folder. Paths without a file ending are the app's own screens and get
 * its one page; files with a hash in their name are kept by the browser for good, others are asked for again.
 */
import { serveStatic } from '@hono/node-server/serve-static';
import type { Hono } from 'hono';
import { compress } from 'hono/compress';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { refuse } from './answer.ts';

export function mountApp(app: Hono, folder: string): void {
  app.use('*', compress());
  app.get(
    '*',
    serveStatic({
      root: folder,
      onFound: (path, c) => {
        const hashed = path.replaceAll('\\', '/').includes('/assets/');
        c.header('Cache-Control', hashed ? 'public, max-age=31536000, immutable' : 'no-cache');
      },
    }),
  );
  app.get('*', async (c) => {
    const last = c.req.path.split('/').at(-1) ?? '';
    if (last.includes('.')) {
      return refuse(c, {
        code: 'unknown-route',
        path: c.req.path.slice(0, 80),
        found: 'no such file',
        expected: 'a file of the app',
      });
    }
    const page = await readFile(join(folder, 'index.html')).catch(() => null);
    if (page === null)
      return refuse(c, {
        code: 'app-not-built',
        path: 'app',
        found: 'no built app',
        expected: 'npm run build, then start again',
      });
    return c.body(new Uint8Array(page), 200, { 'Content-Type': 'text/html; charset=utf-8', 'Cache-Control': 'no-cache' });
  });
}
