/**
 * The plan for the minutes of a round, in a real browser: by the rules at once, with what a model made up asks once
 * it has been told; which hives, how long, which bars and why, and what is left out.
 */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import type { Foreseen, Look } from '../../src/colony/foreseen.ts';
import { madeUpDay, madeUpForeseen } from '../../src/colony/foreseen.contract.ts';
import { madeUpRecord } from '../../src/colony/record.contract.ts';
import { tellMadeUp } from './made-up.ts';
import { type Opened, openFestoon, type OpenOptions } from './open.ts';

const laying: Foreseen['queen'] = { states: [{ state: 'laying', chance: 1 }], nextTelling: null, harmful: [] };
const cells: Look = {
  changesAct: 0.3,
  questions: [
    { ask: 'cells', chance: 0.3, places: [7, 5] },
    { ask: 'eggs', chance: 0.2, places: [5] },
  ],
  openOn: madeUpDay,
  openFor: 'cells',
  harms: false,
};

async function openRound(options: OpenOptions, look: Look): Promise<{ readonly opened: Opened; readonly page: Page }> {
  const opened = await openFestoon(options);
  await tellMadeUp(opened.context, madeUpForeseen('none', { queen: laying, look }), madeUpRecord());
  const page = await opened.page('/');
  await page.locator('.plan li').first().waitFor();
  return { opened, page };
}

const minutes = (page: Page, count: number) => page.locator('.minutes label', { hasText: new RegExp(`^${count}$`) }).click();
const planned = (page: Page) => page.locator('.plan li').allInnerTexts();

test('R21 the plan says hives in order with their minutes, the fewest bars and why, and what no time is left for', async () => {
  const { opened, page } = await openRound({}, cells);
  try {
    await minutes(page, 120);
    const asked = page.locator('.plan li', { hasText: 'Lift places 5 and 7 only, for queen cells and eggs.' });
    await asked.first().waitFor({ timeout: 60_000 });
    assert.match(
      await asked.first().innerText(),
      /^\w[\w ]+, about 13 minutes\. Lift places 5 and 7 only, for queen cells and eggs\.$/,
    );
    const all = await planned(page);
    // What a rule asks for comes first: Birch has laying workers.
    assert.match(all[0] ?? '', /^Birch, about 25 minutes\. /);
    assert.ok(all.length >= 3);
    const takes = all.map((line) => Number(/about (\d+) minutes/.exec(line)?.[1]));
    assert.ok(takes.reduce((sum, each) => sum + each, 0) <= 120);
    await minutes(page, 30);
    await page.getByText('No time is left for').waitFor();
    assert.match((await planned(page))[0] ?? '', /^Birch/);
    assert.ok((await planned(page)).length < all.length);
    assert.deepEqual(opened.errors, []);
  } finally {
    await opened.close();
  }
});

test('R21 hives that a look would harm are named as left shut; what a rule asks for stays', async () => {
  const { opened, page } = await openRound({}, { ...cells, harms: true });
  try {
    await minutes(page, 120);
    await page.getByText('Left shut, since a look would do harm: ').waitFor({ timeout: 60_000 });
    assert.ok((await planned(page)).every((line) => !line.includes('Lift places')));
    assert.match((await planned(page))[0] ?? '', /^Birch/);
  } finally {
    await opened.close();
  }
});

for (const size of [
  { theme: 'sun', width: 390, height: 844 },
  { theme: 'dusk', width: 1366, height: 768 },
] as const) {
  test(`R21 the plan fits its place, and axe finds nothing in it, in ${size.theme} at ${size.width}×${size.height}`, async () => {
    const { opened, page } = await openRound(size, cells);
    try {
      await minutes(page, 120);
      await page.getByText('Lift places').first().waitFor({ timeout: 60_000 });
      const wide = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
      assert.ok(wide <= 0, `${wide} px too wide`);
      const { violations } = await new AxeBuilder({ page }).include('.minutes').analyze();
      assert.deepEqual(
        violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ''}`),
        [],
      );
    } finally {
      await opened.close();
    }
  });
}
