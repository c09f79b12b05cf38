/**
 * Every screen by axe, with all rules of WCAG 2.2 AA, in three themes on a phone and in paper on a
 * laptop: no violation, and nothing in the console. One browser a theme. What axe cannot see (sense,
 * order, the reach of a thumb) is held by the tests of the screens themselves.
 */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { openFestoon } from './open.ts';
import { beginUsual, tapNamed } from './thumb.ts';

const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

/** Each says what it is, and brings the page there. The order matters: the visit stays open until its end. */
const places: readonly (readonly [name: string, go: (page: Page) => Promise<void>])[] = [
  ['Colony', (page) => goBy(page, page.locator('.stop h2 a').first(), '.film svg')],
  ['Colony, a bar on', (page) => page.getByRole('button', { name: 'Bar on' }).click()],
  ['Visit, start', (page) => goBy(page, page.locator('a[href^="/visit/"]').first(), '.visit-go')],
  ['Visit, reading', beginUsual],
  ['Visit, read', read],
  ['Visit, end of the row', endOfRow],
  ['Visit, the colony', (page) => page.locator('.visit-end .visit-go').click()],
  ['Visit, one sentence', (page) => page.locator('.visit-end .visit-go').click()],
  ['Sums', async (page) => goTo(page, '/sums', '.rows a')],
  ['Sums, one opened', openSum],
  ['Handbook', (page) => goBy(page, page.locator('nav a[href="/handbook"]'), 'h2')],
  ['Journal', (page) => goBy(page, page.locator('nav a[href="/journal"]'), '.entries li')],
  ['Settings', (page) => goBy(page, page.locator('nav a[href="/settings"]'), 'h2')],
  ['First screen', (page) => goTo(page, '/start', '.ways-in')],
];

const sizes = [
  { theme: 'paper', width: 390, height: 844 },
  { theme: 'dusk', width: 390, height: 844 },
  { theme: 'sun', width: 390, height: 844 },
  { theme: 'paper', width: 1366, height: 900 },
] as const;

for (const size of sizes) {
  test(`no screen has an axe violation in ${size.theme} at ${size.width}×${size.height}, and the console stays empty`, async () => {
    const opened = await openFestoon(size);
    try {
      const page = await opened.page('/');
      await page.locator('.stop').first().waitFor();
      const found = await violations(page, 'Round');
      for (const [name, go] of places) {
        await go(page);
        found.push(...(await violations(page, name)));
      }
      assert.deepEqual(found, []);
      assert.deepEqual(opened.errors, []);
    } finally {
      await opened.close();
    }
  });
}

async function violations(page: Page, name: string): Promise<string[]> {
  const result = await new AxeBuilder({ page }).withTags(tags).analyze();
  assert.ok(result.passes.length > 0, `axe looked at ${name}`);
  return result.violations.map(({ id, nodes }) => `${name}: ${id}, ${nodes.length} times, first ${nodes[0]?.html ?? ''}`);
}

async function goBy(page: Page, way: ReturnType<Page['locator']>, until: string): Promise<void> {
  await way.click();
  await page.locator(`main ${until}`).first().waitFor();
}

/** A screen without a way from where we stand: the address itself, as a keeper would by a bookmark. */
async function goTo(page: Page, path: string, until: string): Promise<void> {
  await page.goto(new URL(path, page.url()).href);
  await page.locator(`main ${until}`).first().waitFor();
}

async function read(page: Page): Promise<void> {
  await tapNamed(page, 'food + brood');
  const title = await page.locator('h1').textContent();
  await page.locator('.visit-act .visit-go').click();
  await page.waitForFunction((before) => document.querySelector('h1')?.textContent !== before, title);
}

async function endOfRow(page: Page): Promise<void> {
  await tapNamed(page, 'More');
  await tapNamed(page, 'End of the row, then close');
  await page.locator('.visit-end .visit-go').waitFor();
}

async function openSum(page: Page): Promise<void> {
  await goBy(page, page.locator('.rows a').first(), 'form');
  const submit = page.locator('main form button[type=submit]');
  if ((await submit.count()) > 0) await submit.first().click();
}
