/** Corrections of two people who did not know of each other, in a real browser: side by side, settled by one tap, and undone. */
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import type { Entry } from '../../src/journal/entry.ts';
import { journalOf } from './journal-of.ts';
import { type Opened, openFestoon, type OpenOptions } from './open.ts';

const demo = readFileSync('examples/ferry-road.jsonl', 'utf8')
  .trim()
  .split('\n')
  .map((line) => JSON.parse(line) as Entry);

function person(name: string): string {
  const found = demo.find(({ kind, body }) => kind === 'observer' && (body as { name: string }).name === name);
  return (found!.body as { observer: string }).observer;
}

const fed = demo.find(({ kind, at }) => kind === 'feeding' && at.startsWith('2013-09-10'))!;
const weighed = demo.find(({ kind, at }) => kind === 'measurement' && at.startsWith('2013-09-08'))!;

/** Written an hour apart on two phones that had not heard of each other; the body is what it changes. */
function amendment(n: number, of: Entry, by: string, change: object | null, why: string): Entry {
  return {
    id: `018f0000-0000-7000-8000-00000000000${n}`,
    yard: of.yard,
    at: '2014-05-15T20:00',
    noted: `2014-05-16T0${n}:00:00Z`,
    by: person(by),
    kind: change === null ? 'void' : 'correction',
    version: 1,
    corrects: of.id,
    body: { ...change, why, knew: [] },
  };
}

const ofFed = fed.body as { amount: object };
const ofWeighed = weighed.body as { typed: object };
const rivals = [
  amendment(1, fed, 'Ines', { body: { ...ofFed, amount: { unit: 'l', value: 5 } } }, 'The can holds five.'),
  amendment(2, fed, 'Tomas', { at: '2013-09-11T18:30' }, 'It was the day after.'),
  amendment(3, weighed, 'Ines', null, 'That was another comb.'),
  amendment(4, weighed, 'Tomas', { body: { ...ofWeighed, typed: { unit: 'kg', value: 2.9 } } }, 'Misread.'),
];

async function onRivals(options: OpenOptions, run: (page: Page, opened: Opened) => Promise<void>): Promise<void> {
  const opened = await openFestoon(options);
  try {
    const page = await opened.page('/');
    await page.locator('nav a[href="/journal"]').click();
    await page.locator('.entries li').first().waitFor();
    const lines = rivals.map((entry) => `${JSON.stringify(entry)}\n`).join('');
    await page
      .locator('input[type=file]')
      .setInputFiles({ name: 'other.jsonl', mimeType: 'application/x-ndjson', buffer: Buffer.from(lines) });
    await page.getByRole('button', { name: 'Add 4 entries' }).click();
    await page.locator('.rival').nth(3).waitFor();
    await run(page, opened);
    assert.deepEqual(opened.errors, []);
  } finally {
    await opened.close();
  }
}

/** The entries written here since the four came. */
async function written(page: Page): Promise<readonly Entry[]> {
  const before = new Set([...demo, ...rivals].map(({ id }) => id));
  return (await journalOf(page)).filter(({ id, corrects }) => !before.has(id) && corrects !== undefined);
}

test('J70 rival corrections stand side by side, with who, why and what each would leave; J71 one tap settles, and can be undone', () =>
  onRivals({}, async (page) => {
    const cards = page.getByRole('group', { name: /was fed/ }).locator('.rival');
    const [ines, tomas] = [await cards.nth(0).innerText(), await cards.nth(1).innerText()];
    assert.match(ines, /Ines[^]*The can holds five\.[^]*5 l\s+first written: 4 l/);
    assert.match(ines, /10 September 2013 18:30\s+as first written/);
    assert.match(tomas, /Tomas[^]*It was the day after\.[^]*11 September 2013 18:30\s+first written: 10 September 2013 18:30/);
    assert.match(tomas, /In use until you decide\./);
    const other = page.getByRole('group', { name: /Measured/ }).locator('.rival');
    assert.match(await other.nth(0).innerText(), /Struck out; it counts for nothing\./);
    const tops = await cards.evaluateAll((all) => all.map((one) => one.getBoundingClientRect().top));
    assert.equal(tops[0], tops[1], 'side by side on a phone');
    const level = await cards.evaluateAll((all) =>
      all.map((one) => [...one.querySelectorAll('.rival-value')].map((each) => each.getBoundingClientRect().top)),
    );
    assert.deepEqual(level[0], level[1], 'their lines stand level');

    await cards.nth(0).getByRole('button', { name: 'Keep this one' }).dblclick();
    await page.getByText('Kept: what Ines wrote').waitFor();
    assert.ok(await page.evaluate(() => document.activeElement?.textContent.startsWith('Kept: what Ines wrote')));
    assert.equal(await cards.count(), 0);
    assert.equal(await other.count(), 2, 'the other entry waits still');
    const [kept, ...more] = await written(page);
    assert.deepEqual(more, [], 'two taps are one');
    assert.equal(kept?.corrects, fed.id);
    const body = kept.body as { at: string; body: { amount: object }; knew: string[] };
    assert.deepEqual([body.at, body.body.amount], [fed.at, { unit: 'l', value: 5 }]);
    assert.deepEqual(body.knew.toSorted(), [rivals[0]!.id, rivals[1]!.id]);

    await page.getByRole('button', { name: 'Undo, and decide again' }).click();
    await cards.nth(1).getByRole('button').click();
    await page.getByText('Kept: what Tomas wrote').waitFor();
    await other.nth(0).getByRole('button').click();
    await other.first().waitFor({ state: 'detached' });
    // The page that comes anew has nothing to ask: the engine finds them settled.
    await page.reload();
    await page.locator('.entries li').first().waitFor();
    await page.getByLabel('Search the entries').fill('2013-09');
    await page.locator('.entries s').first().waitFor();
    await page.locator('.rivals').waitFor({ state: 'detached' });
    assert.match(await page.locator('.entries').innerText(), /11 September 2013/);
  }));

test('J72 the round says that corrections wait to be decided, and leads to them', () =>
  onRivals({}, async (page) => {
    await page.locator('nav a[href="/"]').click();
    const line = page.getByRole('link', { name: 'Two people corrected the same 2 entries: decide in the journal which holds' });
    await line.click();
    await page.locator('.rival').nth(3).waitFor();
    for (const left of [2, 0]) {
      await page.locator('.rival button').first().click();
      await page.waitForFunction((count) => document.querySelectorAll('.rival').length === count, left);
    }
    await page.locator('nav a[href="/"]').click();
    await page.locator('.stop').first().waitFor();
    await page.getByRole('link', { name: /^Two people corrected/ }).waitFor({ state: 'detached' });
  }));

for (const size of [
  { theme: 'paper', width: 390, height: 844 },
  { theme: 'sun', width: 390, height: 844 },
  { theme: 'dusk', width: 1366, height: 768 },
] as const) {
  test(`J70 nothing of it is wider than its place, and axe finds nothing in it, in ${size.theme} at ${size.width}×${size.height}`, () =>
    onRivals(size, async (page) => {
      const wide = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
      assert.ok(wide <= 0, `${wide} px too wide`);
      const out = await page
        .locator('.rival')
        .evaluateAll((all) => all.filter((one) => one.scrollWidth > one.clientWidth + 1).length);
      assert.equal(out, 0);
      const low = await page.locator('.rival button').evaluateAll((all) => Math.min(...all.map((one) => one.clientHeight)));
      assert.ok(low >= 44, `${low} px high`);
      const { violations } = await new AxeBuilder({ page }).include('.rivals').analyze();
      assert.deepEqual(
        violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ''}`),
        [],
      );
    }));
}
