/** A figure of one's own shows what it would change before it is written down. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { printed } from '../../src/figures/book.ts';
import { journalOf } from './journal-of.ts';
import { findsAxeNothing } from './legible.ts';
import { openFestoon } from './open.ts';

test('R48 while a figure of one’s own is typed, the handbook shows what it would change, and writes nothing', async () => {
  const opened = await openFestoon({ theme: 'sun' });
  const page = await opened.page('/');
  await page.locator('.slip').first().waitFor();
  await page.getByRole('link', { name: 'Handbook' }).click();
  const { title, value } = printed('honey-kg-per-dm2-cm');
  await page.getByRole('searchbox').fill(title);
  const line = page.locator('.figure', { hasText: title }).first();
  await line.getByRole('button').first().click();
  await page.getByLabel('Not more than').fill(String(value * 4));
  await page.getByLabel('Your value').fill(String(value * 2));
  await page.getByRole('heading', { name: 'What it would change today' }).waitFor();
  await page
    .getByText(/^Honey: .* then /)
    .first()
    .waitFor();
  assert.ok((await page.locator('.override-effect b').count()) >= 6);
  assert.equal(
    (await journalOf(page)).filter(({ kind, body }) => kind === 'figure-override' && JSON.stringify(body).includes('dm2-cm'))
      .length,
    0,
  );
  await findsAxeNothing(page);
  assert.deepEqual(opened.errors, []);
  await opened.close();
});
