/** A usual visit to Alder of the demo yard, just begun, for one browser test. */
import assert from 'node:assert/strict';
import type { Page } from 'playwright-core';
import { openFestoon, type OpenOptions } from './open.ts';
import { beginUsual } from './thumb.ts';

/** A book of its own for each: a bar that was put down stays in the journal, and is no surprise the next time. */
export async function onAlder(options: OpenOptions, run: (page: Page) => Promise<void>): Promise<void> {
  const opened = await openFestoon(options);
  try {
    const page = await opened.page('/');
    const stop = page.locator('.stop', { has: page.getByRole('link', { name: 'Alder', exact: true }) });
    await stop.locator('a[href^="/visit/"]').click();
    await page.locator('.visit-end .visit-go').waitFor();
    await beginUsual(page);
    await run(page);
    assert.deepEqual(opened.errors, []);
  } finally {
    await opened.close();
  }
}
