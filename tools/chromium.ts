/**
 * Finds the Chromium that the browser tests drive. On Debian as root a missing one is installed
 * without asking; elsewhere the caller prints the one line that says how.
 */
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

const usual = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/usr/bin/google-chrome-stable',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
];

export const howToGetChromium =
  'browser tests need Chromium: install it (Debian: apt-get install chromium) or name one in FESTOON_CHROMIUM';

/** What Chromium is started with: headless in a container, with no talk to the outside. */
export const chromiumFlags: readonly string[] = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

export function findChromium(): string | null {
  const named = process.env['FESTOON_CHROMIUM'];
  if (named !== undefined && existsSync(named)) return named;
  return usual.find((path) => existsSync(path)) ?? null;
}

/** The path of a Chromium, installed when that needs no asking; null when there is none to be had. */
export function ensureChromium(): string | null {
  const found = findChromium();
  if (found !== null) return found;
  if (process.getuid?.() !== 0 || !existsSync('/usr/bin/apt-get')) return null;
  const options = { stdio: 'inherit', env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' } } as const;
  spawnSync('apt-get', ['update', '-qq'], options);
  spawnSync('apt-get', ['install', '-y', '-qq', '--no-install-recommends', 'chromium'], options);
  return findChromium();
}
