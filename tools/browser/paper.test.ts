/** A colony's page on paper, with what a model made up: as it is on the screen, in letters large enough, nothing to tap. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { madeUpForeseen } from '../../src/colony/foreseen.contract.ts';
import { madeUpRecord } from '../../src/colony/record.contract.ts';
import { tellMadeUp } from './made-up.ts';
import { openFestoon } from './open.ts';

/** A4 without its margins, in px of 1/96 inch. */
const sheet = { width: 710, height: 1017 };
const ninePoints = 12;

for (const size of [
  { theme: 'dusk', width: 1366, height: 768 },
  { theme: 'sun', width: 390, height: 844 },
] as const) {
  test(`R22 a colony printed from ${size.theme} at ${size.width} px is what was shown, in letters of nine points`, async () => {
    const opened = await openFestoon(size);
    try {
      await tellMadeUp(opened.context, madeUpForeseen(), madeUpRecord());
      const page = await opened.page('/');
      await page.getByRole('link', { name: 'Alder', exact: true }).first().click();
      await page.locator('.outlook').nth(2).waitFor();
      await page.locator('svg.age-pyramid').waitFor();
      await page.locator('svg.chart').nth(3).waitFor();
      const drawings = () => page.locator('svg[role="img"]').evaluateAll((all) => all.map((one) => one.getAttribute('viewBox')));
      const shown = await drawings();
      await page.emulateMedia({ media: 'print' });
      await page.setViewportSize(sheet);
      await page.waitForTimeout(300);
      assert.deepEqual(await drawings(), shown);
      assert.deepEqual(await page.evaluate(underSize, ninePoints), []);
      assert.equal(await page.locator('main button:visible, nav:visible, summary:visible').count(), 0);
      assert.equal(await page.locator('h1:visible').count(), 1);
      assert.equal(await page.evaluate(() => getComputedStyle(document.body).backgroundColor), 'rgb(255, 255, 255)');
      assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth));
    } finally {
      await opened.close();
    }
  });
}

/** Runs in the page: letters that are smaller on paper than so many px, those in drawings by the scale they are shown at. */
function underSize(least: number): string[] {
  const found: string[] = [];
  for (const element of document.querySelectorAll<HTMLElement | SVGTextElement>('main p, main li, main dd, main dt, main text')) {
    const box = element.getBoundingClientRect();
    if (box.width === 0 || (element.textContent ?? '').trim() === '') continue;
    const drawn = element instanceof SVGTextElement ? element.getScreenCTM() : null;
    const scale = drawn === null ? 1 : Math.hypot(drawn.a, drawn.b);
    const px = parseFloat(getComputedStyle(element).fontSize) * scale;
    if (px < least) found.push(`${px.toFixed(1)}: ${(element.textContent ?? '').slice(0, 40)}`);
  }
  return found;
}
