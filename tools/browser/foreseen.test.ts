/**
 * The screens of what a model tells, with made-up telling, so that every part of them is there: outlook, queen, ages,
 * what may come, surprises, whether to look, and the record. On a phone, a laptop and paper; axe in three themes.
 */
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { madeUpForeseen } from '../../src/colony/foreseen.contract.ts';
import { madeUpRecord } from '../../src/colony/record.contract.ts';
import { tellMadeUp } from './made-up.ts';
import { type Opened, type OpenOptions, openFestoon } from './open.ts';

const record = madeUpRecord();

async function open(options: OpenOptions): Promise<Opened> {
  const opened = await openFestoon(options);
  await tellMadeUp(opened.context, madeUpForeseen(), record);
  return opened;
}

async function openColony(opened: Opened, path = '/'): Promise<Page> {
  const page = await opened.page(path);
  await page.getByRole('link', { name: 'Alder', exact: true }).first().click();
  await page.locator('.outlook').nth(2).waitFor();
  await page.locator('.outlook').getByText('“as last time”').first().waitFor();
  return page;
}

let phone: Opened;
before(async () => {
  phone = await open({});
});
after(async () => phone.close());

test('R15 a colony shows bees, brood and honey behind and ahead, in words and drawn, in place of its bare history', async () => {
  const page = await openColony(phone);
  const parts = page.locator('.outlook');
  assert.equal(await parts.count(), 3);
  assert.deepEqual(await parts.locator('h3').allInnerTexts(), [
    'Bees bees, in thousands',
    'Sealed worker brood cells, in thousands',
    'Honey kilograms',
  ]);
  assert.match(await parts.first().locator('p').innerText(), /^Today 10 thousand \(8\.5 to 12\)\. On 6 June: 13 thousand/);
  assert.equal(await page.getByRole('heading', { name: 'Through the visits' }).count(), 0);
  // What was seen comes later, one visit after another.
  await parts.first().locator('.counted').first().waitFor();
  await page.close();
});

test('R16 where the model was no better than “as last time”, that comes first in words and is drawn', async () => {
  const page = await openColony(phone);
  const honey = page.locator('.outlook').nth(2);
  await honey.locator('.level').waitFor({ state: 'attached' });
  assert.match(await honey.locator('p').innerText(), /As last time: 7\.4 kg.*the model was no better than that so far; it says/s);
  assert.equal(await page.locator('.outlook').first().locator('.level').count(), 0);
  await page.close();
});

test('R17 the queen is told as chances out of ten with her marks, a ribbon, harmful days and the day from which a look tells', async () => {
  const page = await openColony(phone);
  const chances = await page.locator('.chances li').allInnerTexts();
  assert.ok(chances.length >= 3);
  for (const line of chances) assert.match(line, /(about \d|fewer than 1|more than 9) in 10/);
  assert.equal(await page.locator('svg.queen-ribbon').count(), 1);
  assert.ok((await page.locator('.queen-ribbon .word').allTextContents()).includes('virgin'));
  await page.getByText(/^A look does harm between 12 and 18 May: a virgin/).waitFor();
  await page.getByText('A look would tell from 24 May.').waitFor();
  await page.close();
});

test('R18 ages of both queens’ daughters, the days of the turnover, what may come, surprises, the worth of a look', async () => {
  const page = await openColony(phone);
  await page.locator('svg.age-pyramid').waitFor();
  assert.equal(await page.locator('.turnover > div').count(), 6);
  assert.equal(await page.locator('.coming > div').count(), 4);
  assert.equal(await page.locator('.surprises article').count(), 2);
  await page.getByText('no diagnosis').waitFor();
  await page.getByText('Opening is worth it from 24 May.').waitFor();
  await page.close();
});

test('E177 the colony page lists which comb probably hangs where, under what surprised, and nothing where none was moved', async () => {
  const page = await openColony(phone);
  assert.equal(await page.getByText('If combs were moved').count(), 0);
  await page.close();
  const opened = await openFestoon({});
  try {
    await tellMadeUp(opened.context, { ...madeUpForeseen(), moved: [{ today: 5, last: 6, chance: 0.72 }] }, record);
    const told = (await openColony(opened)).locator('.surprises');
    await told.getByText('If combs were moved, this is probably where they hang:').waitFor();
    await told.getByText('At place 5 now is the comb that hung at place 6: about 7 in 10.').waitFor();
    assert.equal(await told.locator('article').count(), 3);
  } finally {
    await opened.close();
  }
});

test('R19 the record is reached from Colony and from Round, tells every kind of forecast, and can be asked by year', async () => {
  const page = await openColony(phone);
  await page.getByRole('heading', { name: 'How right was it' }).waitFor();
  await page.getByRole('link', { name: 'How right the forecasts were' }).click();
  await page.getByRole('heading', { name: 'The year’s forecasts' }).waitFor();
  await page.locator('svg.record-dots').nth(3).waitFor();
  assert.equal(await page.locator('.score').count(), record.scores.length);
  assert.equal(await page.locator('.score').first().locator('circle').count(), record.scores[0]?.rows.length);
  await page.getByRole('button', { name: '2013' }).or(page.getByLabel('2013')).first().click();
  await page.goto(phone.address);
  await page.getByRole('link', { name: 'How right the forecasts were' }).click();
  await page.getByRole('heading', { name: 'The year’s forecasts' }).waitFor();
  await page.close();
});

test('R20 nothing of it is wider than a phone or leaves its drawing, in paper and in full sun', async () => {
  for (const theme of ['paper', 'sun'] as const) {
    const opened = await open({ theme });
    try {
      const page = await openColony(opened);
      await page.locator('svg.age-pyramid').waitFor();
      const wide = await page.evaluate(widerThanItsPlace);
      assert.deepEqual(wide, []);
      await page.goto(`${opened.address}/record`);
      await page.locator('svg.record-dots').first().waitFor();
      assert.deepEqual(await page.evaluate(widerThanItsPlace), []);
      assert.deepEqual(opened.errors, []);
    } finally {
      await opened.close();
    }
  }
});

/** Runs in the page: everything that reaches beyond the window, and every letter that reaches beyond its drawing. */
function widerThanItsPlace(): string[] {
  const found: string[] = [];
  if (document.documentElement.scrollWidth > window.innerWidth) found.push(`the page: ${document.documentElement.scrollWidth}`);
  for (const text of document.querySelectorAll(
    'svg.chart text, svg.queen-ribbon text, svg.age-pyramid text, svg.record-dots text',
  )) {
    const [own, whole] = [text.getBoundingClientRect(), text.closest('svg')?.getBoundingClientRect()];
    const next = text.nextElementSibling?.tagName === 'text' ? text.nextElementSibling.getBoundingClientRect() : null;
    if (text.closest('svg.record-dots') !== null && next !== null && next.left < own.right)
      found.push(`${text.textContent ?? ''}, over the next`);
    if (whole !== undefined && (own.left < whole.left - 1.5 || own.right > whole.right + 1.5)) found.push(text.textContent ?? '');
  }
  return found;
}

// The usual themes on a phone are held by the test of all screens; these two need what is made up here.
for (const size of [
  { theme: 'sun', width: 390, height: 844 },
  { theme: 'dusk', width: 1366, height: 900 },
] as const) {
  test(`R20 no axe violation in what the model tells, in ${size.theme} at ${size.width}×${size.height}`, async () => {
    const opened = await open(size);
    try {
      const page = await openColony(opened);
      await page.locator('svg.age-pyramid').waitFor();
      const found = await violations(page);
      await page.goto(`${opened.address}/record`);
      await page.locator('svg.record-dots').first().waitFor();
      assert.deepEqual([...found, ...(await violations(page))], []);
      assert.deepEqual(opened.errors, []);
    } finally {
      await opened.close();
    }
  });
}

const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

async function violations(page: Page): Promise<readonly string[]> {
  const result = await new AxeBuilder({ page }).withTags(tags).analyze();
  return result.violations.flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.html.slice(0, 200)}`));
}
