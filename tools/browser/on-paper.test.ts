/** What is taken along on paper: one page for a substitute, sheets for the pencil, measured in millimetres in what would be printed. */
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import type { Page } from 'playwright-core';
import { demoDay, pictureOf } from '../../src/apiary.ts';
import { hiveMeasures, outlineOf } from '../../src/hive/hive-measures.ts';
import { printedBook } from '../../src/figures/book.ts';
import { demoApiary } from './demo-apiary.ts';
import { journalOf } from './journal-of.ts';
import { findsAxeNothing } from './legible.ts';
import { type Opened, openFestoon } from './open.ts';
import { pdfLines, pdfPages } from './pdf-lines.ts';

let opened: Opened;
before(async () => {
  opened = await openFestoon({ theme: 'paper', width: 1366, height: 900 });
});
after(async () => opened.close());

async function onPaper(): Promise<Page> {
  const page = await opened.page('/');
  await page.getByRole('link', { name: /^On paper/ }).click();
  await page.locator('.cover-sheet').waitFor();
  return page;
}

const apiary = demoApiary();

test('R40 the page for a substitute is one page of A4 and of letter, with every living hive, what is shut, and whom to call', async () => {
  const page = await onPaper();
  for (const format of ['A4', 'Letter'] as const) assert.equal(pdfPages(await page.pdf({ format })), 1, format);
  const text = await page.locator('.cover-sheet').innerText();
  const picture = pictureOf(apiary, demoDay);
  for (const { name } of picture.colonies.filter(({ ended }) => ended === null)) assert.ok(text.includes(name), name);
  const shut = picture.round.filter(({ verb }) => verb === 'leave shut').length;
  assert.ok(shut > 0);
  assert.equal(text.match(/Do not open until/g)?.length, shut);
  assert.match(text, /Authority for bee health: County apiary inspector/);
  assert.match(text, /Vet:\s+not entered/, 'what the keeper has not entered is a line to write on');
  await page.close();
});

test('R41 a visit sheet has a row a bar, and its lengths are true on paper: 100 mm are 100 mm, and the face is at its scale', async () => {
  const page = await onPaper();
  await page.getByText('Visit sheet, Alder', { exact: true }).click();
  await page.locator('.pencil-sheet').waitFor();
  const view = pictureOf(apiary, demoDay).colonies.find(({ name }) => name === 'Alder')!;
  const rows = await page.locator('.pencil-sheet tbody tr').count();
  assert.equal(rows, view.bay.to - view.bay.from + 3, 'the bars of the bay and two more');
  const pdf = await page.pdf({ format: 'A4' });
  assert.equal(pdfPages(pdf), 2);
  const level = pdfLines(pdf)
    .filter(({ isLevel }) => isLevel)
    .map(({ lengthMm }) => lengthMm);
  const nearest = (mm: number): number => Math.min(...level.map((length) => Math.abs(length - mm)));
  assert.ok(nearest(100) < 0.2, `100 mm missed by ${nearest(100)}`);
  const { attachmentMm } = outlineOf(hiveMeasures(apiary.state.hives.get(view.hive)!, printedBook), 1)!;
  const scale = Number(/1 : (\d+)/.exec(await page.locator('.pencil-faces h2').innerText())?.[1]);
  assert.ok(attachmentMm / scale <= 180 && attachmentMm / (scale - 1) > 170, `1 : ${scale}`);
  assert.ok(nearest(attachmentMm / scale) < 0.3, `the bar of the face missed by ${nearest(attachmentMm / scale)} mm`);
  await page.close();
});

test('R46 a filled sheet is typed in by keys alone, kept over a reload, and becomes a visit once it is understood', async () => {
  const page = await onPaper();
  const open = async (): Promise<void> => {
    await page.getByText('Visit sheet, Willow', { exact: true }).click();
    await page.getByText('Type in a filled sheet of Willow').click();
  };
  await open();
  const field = (place: number, name: string) => page.getByLabel(`Place ${place}: ${name}`, { exact: true });
  await field(2, 'Brood, of eight').focus();
  for (const value of ['5', '2', 's', 'e']) {
    await page.keyboard.type(value);
    await page.keyboard.press('Tab');
  }
  await field(3, 'Food, of eight').fill('9');
  await page.waitForTimeout(300);
  await page.reload();
  await page.locator('.cover-sheet').waitFor();
  await open();
  await page.waitForFunction(() =>
    [...document.querySelectorAll('.typed-rows input')].some((one) => (one as HTMLInputElement).value === '9'),
  );
  assert.equal(await field(2, 'Youngest').inputValue(), 'e');
  await page.getByRole('button', { name: 'Write it into the journal' }).click();
  await page.getByText(/place 3, food/).waitFor();
  const written = async () =>
    (await journalOf(page)).filter(({ body }) => JSON.stringify(body).includes('typed in from a sheet'));
  assert.equal((await written()).length, 0, 'nothing is written while a field is not understood');
  await field(3, 'Food, of eight').fill('8');
  await page.getByRole('button', { name: 'Write it into the journal' }).click();
  await page.getByText('Written into the journal.').waitFor();
  const [visit] = await written();
  const id = (visit?.body as { visit: string }).visit;
  const readings = (await journalOf(page)).filter(
    ({ kind, body }) => kind === 'reading' && (body as { visit: string }).visit === id,
  );
  assert.deepEqual(readings.map(({ body }) => (body as { place: number }).place).sort(), [2, 3]);
  await findsAxeNothing(page);
  await page.close();
});

test('R42 on paper is legible and in reach on the screen, too', async () => {
  const page = await onPaper();
  await findsAxeNothing(page);
  assert.deepEqual(opened.errors, []);
  await page.close();
});
