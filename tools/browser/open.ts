/**
 * Opens Festoon for a browser test as a keeper would: the built program on a free port with a data
 * folder of its own, and a Chromium without a head. The server can be killed and started again on the
 * same port, a page can be closed in mid-tap, and the whole browser can be killed without a word.
 */
import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type BrowserContext, chromium, type Page } from 'playwright-core';
import { chromiumFlags, findChromium, howToGetChromium } from '../chromium.ts';

export interface Opened {
  /** `http://127.0.0.1:PORT` */
  readonly address: string;
  readonly context: BrowserContext;
  /** A new tab at this path; its console errors and failures are collected in `errors`. */
  readonly page: (path: string) => Promise<Page>;
  readonly errors: string[];
  readonly killServer: () => Promise<void>;
  readonly startServer: () => Promise<void>;
  /** Kills the browser's process as a power cut would, and opens it again on what was on its disk. */
  readonly killBrowser: () => Promise<Opened>;
  readonly close: () => Promise<void>;
}

export interface OpenOptions {
  readonly theme?: 'paper' | 'dusk' | 'sun';
  readonly width?: number;
  readonly height?: number;
  /** Opened with the demo yard, or on the first screen. */
  readonly book?: 'demo' | null;
}

interface Folders {
  readonly data: string;
  readonly profile: string;
}

const top = fileURLToPath(new URL('../..', import.meta.url)).replace(/build\/$/, '');
/** The built program, or another one that is to be tried. */
const program = process.env['FESTOON_PROGRAM'] ?? join(top, 'bin/festoon');
const patienceMs = 30_000;

export async function openFestoon(options: OpenOptions = {}): Promise<Opened> {
  const folders = {
    data: mkdtempSync(join(tmpdir(), 'festoon-data-')),
    profile: mkdtempSync(join(tmpdir(), 'festoon-profile-')),
  };
  const port = await freePort();
  const server = await startServer(port, folders.data);
  return openBrowser(options, folders, { port, process: server });
}

interface Running {
  readonly port: number;
  process: ChildProcess | null;
}

async function openBrowser(options: OpenOptions, folders: Folders, server: Running): Promise<Opened> {
  const { theme = 'paper', width = 390, height = 844, book = 'demo' } = options;
  const executablePath = findChromium();
  if (executablePath === null) throw new Error(howToGetChromium);
  const context = await chromium.launchPersistentContext(folders.profile, {
    executablePath,
    args: [...chromiumFlags],
    viewport: { width, height },
    hasTouch: width < 600,
  });
  context.setDefaultTimeout(patienceMs);
  await context.addInitScript(prefer, JSON.stringify({ theme, book }));
  const errors: string[] = [];
  const address = `http://127.0.0.1:${server.port}`;
  const stop = async () => {
    if (server.process !== null) await ended(server.process, 'SIGKILL');
    server.process = null;
  };
  return {
    address,
    context,
    errors,
    page: async (path) => {
      const page = await context.newPage();
      page.on('console', (message) => {
        if (message.type() === 'error') errors.push(`${message.text()} (${message.location().url})`);
      });
      page.on('pageerror', (error) => errors.push(error.message));
      await page.goto(address + path);
      return page;
    },
    killServer: stop,
    startServer: async () => {
      server.process ??= await startServer(server.port, folders.data);
    },
    killBrowser: async () => {
      await killProcess(context);
      return openBrowser(options, folders, server);
    },
    close: async () => {
      await context.close().catch(() => undefined);
      await stop();
      for (const folder of Object.values(folders)) rmSync(folder, { recursive: true, force: true });
    },
  };
}

/** Runs in the page, before anything else: the theme and the book that this device prefers, unless it has chosen since. */
function prefer(preferences: string): void {
  if (localStorage.getItem('festoon.preferences') === null) localStorage.setItem('festoon.preferences', preferences);
}

async function killProcess(context: BrowserContext): Promise<void> {
  const browser = context.browser();
  if (browser === null) throw new Error('a browser of its own');
  const session = await browser.newBrowserCDPSession();
  const { processInfo } = await session.send('SystemInfo.getProcessInfo');
  const found = processInfo.find((each) => each.type === 'browser');
  if (found === undefined) throw new Error('a browser process');
  const gone = new Promise((resolve) => browser.on('disconnected', resolve));
  process.kill(found.id, 'SIGKILL');
  await gone;
}

async function startServer(port: number, data: string): Promise<ChildProcess> {
  const child = spawn(process.execPath, [program, 'serve', '--port', String(port)], {
    env: { ...process.env, FESTOON_DATA: data },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let said = '';
  await new Promise<void>((resolve, reject) => {
    const timer = setTimeout(() => reject(new Error(`the server did not say that it is there: ${said}`)), patienceMs);
    const heard = (text: Buffer) => {
      said += text.toString();
      if (said.includes(`:${port}`)) {
        clearTimeout(timer);
        resolve();
      }
    };
    child.stdout.on('data', heard);
    child.stderr.on('data', heard);
    child.on('exit', (code) => {
      clearTimeout(timer);
      reject(new Error(`the server ended with ${code}: ${said}`));
    });
  });
  return child;
}

function ended(child: ChildProcess, signal: NodeJS.Signals): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return Promise.resolve();
  return new Promise((resolve) => {
    child.once('exit', () => resolve());
    child.kill(signal);
  });
}

function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const probe = createServer();
    probe.on('error', reject);
    probe.listen(0, '127.0.0.1', () => {
      const found = probe.address();
      probe.close(() => (typeof found === 'object' && found !== null ? resolve(found.port) : reject(new Error('a port'))));
    });
  });
}
