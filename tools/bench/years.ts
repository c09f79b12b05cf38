/**
 * A large yard: thirty hives over ten years, made by seed, on a phone slowed four times. It comes from
 * the server as on a second device; then the page is opened again and shows the kept snapshot, while
 * the whole journal is read and worked out anew beside it. The engine's worker is not slowed by the
 * browser's throttle, so its share is told apart, measured in this process.
 */
import { pathToFileURL } from 'node:url';
import type { Page } from 'playwright-core';
import { pictureOf, readJournal } from '../../src/apiary.ts';
import type { Entry } from '../../src/journal/entry.ts';
import { openFestoon } from '../browser/open.ts';
import { randomYard } from '../world/yards.ts';

export interface YearsOpening {
  readonly entries: number;
  /** From the start of the navigation until the round can be read from the kept snapshot. */
  readonly snapshotMs: number;
  /** From the start of the navigation until the picture made anew is there. */
  readonly rebuildMs: number;
  /** Fold and picture alone, in this process, unslowed. */
  readonly foldMs: number;
  readonly pictureMs: number;
}

const slowedBy = 4;
const batch = 500;
const size = { hives: 30, years: 10, visitsPerYear: 20, checked: false } as const;

export async function yearsOpening(): Promise<YearsOpening> {
  const entries = randomYard(1, size);
  const alone = workedOutAlone(entries);
  const opened = await openFestoon({ book: null });
  try {
    await push(opened.address, entries);
    const page = await opened.page('/manifest.webmanifest');
    const yard = entries[0]?.yard ?? '';
    await page.evaluate((kept) => localStorage.setItem('festoon.preferences', kept), JSON.stringify({ book: 'own', yard }));
    await page.goto(opened.address);
    await page.locator('.slip').first().waitFor({ timeout: 180_000 });
    await quiet(page);
    const session = await opened.context.newCDPSession(page);
    await session.send('Emulation.setCPUThrottlingRate', { rate: slowedBy });
    await page.goto(opened.address, { waitUntil: 'commit' });
    await page.locator('.slip').first().waitFor();
    const snapshotMs = await page.evaluate(() => performance.now());
    await quiet(page);
    const rebuildMs = await page.evaluate(() => performance.now());
    return { entries: entries.length, snapshotMs, rebuildMs, ...alone };
  } finally {
    await opened.close();
  }
}

function workedOutAlone(entries: readonly Entry[]): { readonly foldMs: number; readonly pictureMs: number } {
  const last = entries.reduce((day, entry) => (entry.at.slice(0, 10) > day ? entry.at.slice(0, 10) : day), '');
  const begin = performance.now();
  const apiary = readJournal(entries);
  const folded = performance.now();
  pictureOf(apiary, last);
  return { foldMs: folded - begin, pictureMs: performance.now() - folded };
}

async function push(address: string, entries: readonly Entry[]): Promise<void> {
  for (let start = 0; start < entries.length; start += batch) {
    const answer = await fetch(`${address}/api/entries`, {
      method: 'POST',
      headers: { 'content-type': 'application/json', origin: address },
      body: JSON.stringify({ entries: entries.slice(start, start + batch) }),
    });
    if (!answer.ok) throw new Error(`the server did not take the yard: ${answer.status} ${await answer.text()}`);
  }
}

/** The round says while it is being worked out anew; then it is not. */
async function quiet(page: Page): Promise<void> {
  await page.waitForFunction(() => document.querySelector('[data-computing="false"]') !== null, null, { timeout: 180_000 });
}

async function main(): Promise<void> {
  const { entries, snapshotMs, rebuildMs, foldMs, pictureMs } = await yearsOpening();
  const ms = (value: number) => `${value.toFixed(0)} ms`;
  console.log(
    `${size.hives} hives × ${size.years} years, ${entries} entries, page slowed ${slowedBy}×: ` +
      `round from the kept snapshot ${ms(snapshotMs)} (aim: at most 1000), made anew ${ms(rebuildMs)} (aim: at most 8000); ` +
      `alone and unslowed: fold ${ms(foldMs)}, picture ${ms(pictureMs)}`,
  );
}

if (process.argv[1] !== undefined && import.meta.url === pathToFileURL(process.argv[1]).href) await main();
