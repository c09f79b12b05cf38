/**
 * How soon the round of the demo yard can be read on a phone slowed four times: after a cold load from
 * the server, and from the device itself with the server killed. Readable: the first slip's words stand.
 */
import { pathToFileURL } from 'node:url';
import type { Page } from 'playwright-core';
import { openFestoon } from '../browser/open.ts';

export interface RoundOpening {
  readonly coldMs: number;
  readonly offlineMs: number;
}

const slowedBy = 4;
const rounds = 5;

export async function roundOpening(): Promise<RoundOpening> {
  const cold: number[] = [];
  const offline: number[] = [];
  for (let round = 0; round < rounds; round += 1) {
    const opened = await openFestoon({ theme: 'paper' });
    try {
      const page = await opened.page('/manifest.webmanifest');
      const session = await opened.context.newCDPSession(page);
      await session.send('Emulation.setCPUThrottlingRate', { rate: slowedBy });
      cold.push(await readableAt(page, opened.address));
      await page.evaluate(async () => (await navigator.serviceWorker.ready) && undefined);
      await page.waitForTimeout(2500);
      await opened.killServer();
      offline.push(await readableAt(page, opened.address));
    } finally {
      await opened.close();
    }
  }
  return { coldMs: median(cold), offlineMs: median(offline) };
}

/** Milliseconds from the start of the navigation until the first slip has its words. */
async function readableAt(page: Page, address: string): Promise<number> {
  await page.goto(address, { waitUntil: 'commit' });
  await page.locator('.slip').first().waitFor();
  return page.evaluate(() => performance.now());
}

function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? NaN;
}

async function main(): Promise<void> {
  const { coldMs, offlineMs } = await roundOpening();
  console.log(
    `round of the demo yard readable, CPU slowed ${slowedBy}×, median of ${rounds}: cold ${coldMs.toFixed(0)} ms (aim: at most 2000), ` +
      `from the device with the server dead ${offlineMs.toFixed(0)} ms (aim: at most 1000)`,
  );
}

if (process.argv[1] !== undefined && import.meta.url === pathToFileURL(process.argv[1]).href) await main();
