/** In a real browser: a colony that was not there any more is fed; the Journal screen says why that does not fit, and since when. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { openFestoon, type OpenOptions } from './open.ts';

/** The first entry of the demo's Birch is taken back: everything written of it since has no colony. */
async function withoutBirch(options: OpenOptions, run: (page: Page) => Promise<void>): Promise<void> {
  const opened = await openFestoon(options);
  try {
    const page = await opened.page('/journal');
    await page.getByRole('searchbox', { name: 'Search the entries' }).fill('Colony Birch');
    const row = page.locator('.entries > li', { hasText: /Colony Birch/ }).last();
    await row.locator('summary').click();
    await row.getByRole('button', { name: 'Take back' }).click();
    await page.getByText(/^With this, \d+ entries will not fit any more/).waitFor();
    await page.getByRole('textbox', { name: 'Why' }).fill('written in the wrong book');
    await page.getByRole('button', { name: 'Keep', exact: true }).click();
    await page.getByRole('heading', { name: /not fit with the rest/ }).waitFor();
    await page.getByText(/^Since this was written \d+ entries do not fit:/).waitFor();
    await run(page);
    assert.deepEqual(opened.errors, []);
  } finally {
    await opened.close();
  }
}

test('R62 entries that no longer fit name the taking back that brought it about; that taken back, all fit again', () =>
  withoutBirch({ theme: 'sun' }, async (page) => {
    await page.getByText('Taken back: written in the wrong book').first().waitFor();
    await page.getByRole('button', { name: 'Take that back' }).click();
    await page.getByRole('textbox', { name: 'Why' }).fill('it was the right book');
    await page.getByRole('button', { name: 'Keep', exact: true }).click();
    await page.getByRole('heading', { name: /not fit with the rest/ }).waitFor({ state: 'detached' });
  }));

test('R62 a correction that would make entries impossible asks first, and is kept when the keeper says so again', async () => {
  const opened = await openFestoon({ theme: 'paper' });
  try {
    const page = await opened.page('/journal');
    await page.getByRole('searchbox', { name: 'Search the entries' }).fill('Colony Birch');
    const row = page.locator('.entries > li', { hasText: /Colony Birch/ }).last();
    await row.locator('summary').click();
    await row.getByRole('button', { name: 'Correct' }).click();
    await page.getByRole('textbox', { name: 'When it was so' }).fill('2014-05-15');
    await page.getByRole('textbox', { name: 'Why' }).fill('misdated');
    await page.getByRole('button', { name: 'Keep the correction' }).click();
    await page.getByText(/^With this, \d+ entries will not fit any more/).waitFor();
    await page.getByRole('button', { name: 'Keep it all the same' }).click();
    await page.getByRole('heading', { name: /not fit with the rest/ }).waitFor();
    await page.getByText('Correction: misdated').first().waitFor();
    assert.deepEqual(opened.errors, []);
  } finally {
    await opened.close();
  }
});

for (const options of [
  { theme: 'dusk', width: 390, height: 844 },
  { theme: 'paper', width: 1366, height: 768 },
] as const) {
  test(`R62 the list is legible in ${options.theme} at ${options.width}×${options.height}`, () =>
    withoutBirch(options, async (page) => {
      const { violations } = await new AxeBuilder({ page }).analyze();
      assert.deepEqual(
        violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ''}`),
        [],
      );
      assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth));
    }));
}
