/** The demo yard on the screens: its own today, turned day by day, a film, a bar in hand, the combs on another day. */
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
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
