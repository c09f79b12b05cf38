/** A look from outside in a real browser: a minute counted by taps, and what is written of it. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { journalOf } from './journal-of.ts';
import { openFestoon, type OpenOptions } from './open.ts';

async function looking(options: OpenOptions, run: (page: Page) => Promise<void>): Promise<void> {
  const opened = await openFestoon(options);
  try {
    const page = await opened.page('/');
    await page.getByRole('link', { name: 'Alder', exact: true }).first().click();
    await page.getByRole('button', { name: 'Write down', exact: true }).click();
    await page.getByRole('button', { name: 'Start one minute' }).waitFor();
    await run(page);
    assert.deepEqual(opened.errors, []);
  } finally {
    await opened.close();
  }
}

test('R61 a minute that is stopped keeps the seconds that were watched, and the look is in the journal with its counts', () =>
  looking({ theme: 'sun' }, async (page) => {
    await page.getByRole('group', { name: 'Bees that fly' }).getByText('few').click();
    await page.getByRole('button', { name: 'Start one minute' }).click();
    for (const name of [/^In without pollen/, /^In with pollen/, /^In without pollen/])
      await page.getByRole('button', { name }).click();
    await page.getByText(/^4\d seconds left/).waitFor();
    await page.getByRole('button', { name: 'Stop' }).click();
    await page.getByText(/watched: 3 in, 1 of them with pollen/).waitFor();
    await page.getByRole('group', { name: 'Dead bees before the entrance' }).getByText('a few').click();
    await page.getByRole('button', { name: 'Keep', exact: true }).click();
    await page.getByText(/3 bees came in, 1 with pollen\. Dead bees before the entrance: a few/).waitFor();
    const look = (await journalOf(page)).find(({ kind, body }) => kind === 'look' && Object.hasOwn(body as object, 'minute'));
    const { minute, pollenIn, dead, window: pane } = look?.body as Record<string, unknown>;
    const { seconds, ...counts } = minute as Record<string, number>;
    assert.deepEqual([counts, pollenIn, dead, pane], [{ in: 3, withPollen: 1 }, true, 'a few', undefined]);
    assert.ok(seconds !== undefined && seconds >= 11 && seconds <= 20, String(seconds));
  }));

for (const options of [
  { theme: 'sun', width: 390, height: 844 },
  { theme: 'dusk', width: 390, height: 844 },
  { theme: 'paper', width: 1366, height: 768 },
] as const) {
  test(`R61 the minute is legible and its buttons are for a thumb in ${options.theme} at ${options.width}×${options.height}`, () =>
    looking(options, async (page) => {
      await page.getByRole('button', { name: 'Start one minute' }).click();
      const tall = await page.getByRole('button', { name: /^In with/ }).evaluateAll((all) => all.map((one) => one.clientHeight));
      assert.ok(tall.length === 2 && tall.every((height) => height >= 72), tall.join(' '));
      const { violations } = await new AxeBuilder({ page }).analyze();
      assert.deepEqual(
        violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ''}`),
        [],
      );
      assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth));
    }));
}
