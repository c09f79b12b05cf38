/** What every page must be, whatever is on it: without an axe violation, clipped nowhere, and in the visit under a gloved thumb. */
import assert from 'node:assert/strict';
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';

export async function findsAxeNothing(page: Page): Promise<void> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  assert.deepEqual(
    violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ''}`),
    [],
  );
}

/** Targets of the visit: at least 72 px high and 38 px wide. */
export async function isUnderThumb(page: Page): Promise<void> {
  await findsAxeNothing(page);
  assert.ok(
    await page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth),
    'nothing is clipped at the side',
  );
  for (const button of await page.locator('main button').all()) {
    const box = await button.boundingBox();
    assert.ok(box !== null && box.height >= 72 && box.width >= 38, await button.innerText());
  }
}
