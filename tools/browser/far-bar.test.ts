/** A bar far from what was foreseen, on the Visit screen: one quiet line, one tap to look again, gone with the next reading. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { onAlder } from './on-alder.ts';
import { tapNamed } from './thumb.ts';

const down = (page: Page) => page.locator('.visit-act .visit-go');
const line = (page: Page) => page.locator('.visit-far');

async function put(page: Page, brood: number, food: number): Promise<void> {
  await tapNamed(page, `${brood} of eight brood`);
  await tapNamed(page, `${food} of eight food`);
  const title = await page.locator('h1').innerText();
  await down(page).click();
  await page.waitForFunction((was) => document.querySelector('h1')?.textContent !== was, title);
}

test('V21 far off: place, seen and foreseen, explanations; it blocks nothing, is gone with the next reading, and stays over a reload', () =>
  onAlder({ theme: 'sun' }, async (page) => {
    // Place 8 was read a day ago with little brood.
    await put(page, 8, 0);
    await line(page).waitFor();
    const said = await line(page).innerText();
    assert.match(said, /^Place 8 is far off: brood 8, foreseen \d to \d\. Perhaps .+ in 10/);
    await page.reload();
    await line(page).waitFor();
    assert.equal(await line(page).innerText(), said);
    await tapNamed(page, '4 of eight brood');
    await line(page).waitFor({ state: 'detached' });
    assert.match(await page.locator('.visit-told').innerText(), /^Place 8: brood 8, food 0\./);
  }));

test('V21 one tap takes the bar up again, and a reading as foreseen takes the line away', () =>
  onAlder({ theme: 'paper' }, async (page) => {
    await put(page, 8, 0);
    await page.getByRole('button', { name: 'Look again at place 8' }).click();
    await page.getByRole('heading', { name: /place 8$/ }).waitFor();
    await put(page, 3, 4);
    await page
      .locator('.visit-told')
      .getByText(/^Place 8: brood 3, food 4\./)
      .waitFor();
    assert.equal(await line(page).count(), 0);
  }));

for (const size of [
  { theme: 'sun', width: 390, height: 844 },
  { theme: 'paper', width: 390, height: 844 },
  { theme: 'dusk', width: 390, height: 844 },
  { theme: 'sun', width: 1366, height: 768 },
  { theme: 'paper', width: 1366, height: 768 },
] as const) {
  test(`V21 the line moves nothing and hides nothing in ${size.theme} at ${size.width}×${size.height}`, () =>
    onAlder(size, async (page) => {
      await page.waitForTimeout(settleMs);
      const plain = await page.evaluate(places);
      await put(page, 8, 0);
      await line(page).waitFor();
      await page.waitForTimeout(settleMs);
      assert.deepEqual(await page.evaluate(places), plain);
      const button = await page.getByRole('button', { name: /^Look again/ }).boundingBox();
      assert.ok(button !== null && button.height >= 72 && button.width >= 38);
      const { violations } = await new AxeBuilder({ page }).analyze();
      assert.deepEqual(
        violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ''}`),
        [],
      );
    }));
}

/** The strip is drawn for its new room a moment after a tap. */
const settleMs = 400;

/** Runs in the page: where the rulers and Down stand, and by how much the page is longer than the window. */
function places(): readonly number[] {
  return [
    ...['.visit-read', '.visit-act .visit-go'].map((name) =>
      Math.round(document.querySelector(name)?.getBoundingClientRect().top ?? -1),
    ),
    document.documentElement.scrollHeight - window.innerHeight,
  ];
}
