/** Closing for winter in a real browser: chosen at the start, its list on one screen, written with the visit. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { journalOf } from './journal-of.ts';
import { openFestoon, type OpenOptions } from './open.ts';
import { tapNamed } from './thumb.ts';

async function closing(options: OpenOptions, run: (page: Page) => Promise<void>): Promise<void> {
  const opened = await openFestoon(options);
  try {
    const page = await opened.page('/');
    const stop = page.locator('.stop', { has: page.getByRole('link', { name: 'Alder', exact: true }) });
    await stop.locator('a[href^="/visit/"]').click();
    await page.getByRole('button', { name: 'Closing for winter', exact: true }).click();
    await page.getByText('What hangs where, as far as you lift it').waitFor();
    await page.locator('.visit-end .visit-go').click();
    await tapNamed(page, 'More');
    await tapNamed(page, 'End of the row, then close');
    await tapNamed(page, 'Next');
    await page.getByRole('heading', { name: 'Alder: for winter' }).waitFor();
    await run(page);
    assert.deepEqual(opened.errors, []);
  } finally {
    await opened.close();
  }
}

test('V61 what was answered is written with the visit, over a reload, and the colony page says it', () =>
  closing({ theme: 'sun' }, async (page) => {
    const answer = (task: string, name: string) =>
      page.getByRole('group', { name: task }).getByRole('button', { name, exact: true }).click();
    await answer('mouse guard on', 'done');
    await answer('tilted so that water runs out', 'not done');
    await page.reload();
    await page.getByRole('button', { name: 'not done', pressed: true }).waitFor();
    await tapNamed(page, 'Next');
    await tapNamed(page, 'Next');
    await page.getByText(/For winter: mouse guard on\. Not done for winter: tilted so that water runs out\./).waitFor();
    await page.locator('.visit-end .visit-go').click();
    await page.getByRole('link', { name: /Alder/ }).first().click();
    await page
      .getByText(/For winter: mouse guard on\./)
      .first()
      .waitFor();
    const visit = (await journalOf(page)).find(({ kind, body }) => kind === 'visit' && Object.hasOwn(body as object, 'winter'));
    const { winter, visitKind } = visit?.body as Record<string, unknown>;
    assert.deepEqual([winter, visitKind], [{ mouseGuard: 'done', tilt: 'not done' }, 'closing for winter']);
  }));

for (const options of [
  { theme: 'sun', width: 390, height: 844 },
  { theme: 'dusk', width: 390, height: 844 },
  { theme: 'paper', width: 1366, height: 768 },
] as const) {
  test(`V61 the list is legible, in reach and not clipped in ${options.theme} at ${options.width}×${options.height}`, () =>
    closing(options, async (page) => {
      const { violations } = await new AxeBuilder({ page }).analyze();
      assert.deepEqual(
        violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ''}`),
        [],
      );
      assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth));
      const buttons = await page.locator('.visit-asked button').all();
      assert.equal(buttons.length, 14);
      for (const button of buttons) {
        const box = await button.boundingBox();
        assert.ok(box !== null && box.height >= 72 && box.width >= 72, await button.innerText());
      }
    }));
}
