/** The demo yard on the screens: its own today, turned day by day, a film, a bar in hand, the combs on another day, its record. */
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import { recordOf } from '../../src/apiary/record.ts';
import type { RecordScore } from '../../src/colony/record.ts';
import { methodLines } from '../../src/words/record-lines.ts';
import { demoApiary } from './demo-apiary.ts';
import { type Opened, openFestoon } from './open.ts';

let opened: Opened;
before(async () => {
  opened = await openFestoon({ book: null });
});
after(async () => opened.close());

test('R13 the address /demo opens the demo yard on its own today, which can be turned day by day', async () => {
  const page = await opened.page('/demo');
  await page.locator('.slip').first().waitFor();
  assert.equal(await page.locator('h1').innerText(), 'Fri 16 May 2014');
  assert.ok((await page.locator('.stop').count()) >= 6);
  await page.getByRole('button', { name: 'Day back', exact: true }).click();
  await page.getByRole('heading', { name: 'Thu 15 May 2014' }).waitFor();
  await page.getByRole('button', { name: 'Day on', exact: true }).click();
  await page.getByRole('heading', { name: 'Fri 16 May 2014' }).waitFor();
  await page.close();
});

test('R14 a colony shows its film, a bar in hand with what it holds, and its combs on another day', async () => {
  const page = await opened.page('/');
  await page.getByRole('link', { name: 'Alder', exact: true }).click();
  // The picture kept on the device, shown first, may be of the day that was turned to before.
  await page.getByRole('heading', { name: 'The combs as they should look on 16 May' }).waitFor();
  await page.locator('.one-bar').waitFor();
  const shares = (): Promise<string> => page.locator('.one-bar .shares').innerText();
  const today = await shares();
  assert.match(today, /\d+ %/);
  await page.getByRole('button', { name: '+ week', exact: true }).click();
  await page.getByRole('heading', { name: 'The combs as they should look on 23 May' }).waitFor();
  assert.notEqual(await shares(), today);
  await page.getByRole('button', { name: 'Today', exact: true }).click();
  await page.getByRole('heading', { name: 'The combs as they should look on 16 May' }).waitFor();
  assert.equal(await shares(), today);
  assert.ok((await page.getByRole('img', { name: /the nest at \d+ visits/ }).count()) >= 1);
  assert.deepEqual(opened.errors, []);
  await page.close();
});

/** The model lives seven colonies through meanwhile. */
const patienceMs = 60_000;
const apiary = demoApiary();
const met = (colony: string | null): readonly RecordScore[] => recordOf(apiary, colony, null).scores.filter(({ n }) => n > 0);

test('R21 the demo’s record is a table of figures for every kind of forecast that visits met', async () => {
  const page = await opened.page('/record');
  const tables = page.locator('table.methods');
  await tables.first().waitFor();
  const scores = met(null);
  assert.ok(scores.length >= 6);
  assert.deepEqual(
    await tables.evaluateAll((all) => all.map((table) => [...table.querySelectorAll('td')].map((cell) => cell.textContent))),
    scores.map((score) => methodLines(score).map(({ factor }) => factor)),
  );
  for (const text of await tables.locator('td').allTextContents()) assert.match(text, /^×\d+(\.\d+)?$/);
  await page.close();
});

test('R21 a colony of the demo says where its forecasts were no better than “as last time”, and nowhere else', async () => {
  const living = [...apiary.state.colonies.values()].filter((colony) => colony.ended === null);
  const noBetter = (colony: string) => met(colony).filter((score) => score.isBetter === false);
  const colony = living.find(({ id }) => met(id).some(isModelNoBetter)) ?? living[0]!;
  const page = await opened.page('/');
  await page.getByRole('link', { name: colony.name, exact: true }).first().click();
  const part = page.locator('section').filter({ has: page.getByRole('heading', { name: 'How right was it' }) });
  await part.locator('li').first().waitFor({ timeout: patienceMs });
  const lines = await part.locator('li').allInnerTexts();
  assert.equal(lines.length, met(colony.id).length);
  assert.equal(lines.filter((line) => line.includes(': no better.')).length, noBetter(colony.id).length);
  // About a round of brood ahead the outlook draws "as last time" in place of the model.
  const drawn = met(colony.id).filter(isModelNoBetter).length;
  await page.locator('.outlook').nth(2).waitFor({ timeout: patienceMs });
  if (drawn > 0) await page.locator('.outlook .level').first().waitFor({ state: 'attached' });
  assert.equal(await page.locator('.outlook .level').count(), drawn);
  assert.equal(
    await page
      .locator('.outlook')
      .getByText(/As last time: .* the model was no better than that so far/)
      .count(),
    drawn,
  );
  assert.deepEqual(opened.errors, []);
  await page.close();
});

function isModelNoBetter({ horizonDays, isBetter, logRmse }: RecordScore): boolean {
  return horizonDays === 21 && isBetter !== null && logRmse.engine! >= logRmse['as last time']!;
}
