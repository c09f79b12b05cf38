/** Moving bars in a real browser: taken, hung elsewhere, moved back; what the page shows and what the journal keeps. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { Page } from 'playwright-core';
import type { Entry } from '../../src/journal/entry.ts';
import { journalOf, journalOnce } from './journal-of.ts';
import { isUnderThumb } from './legible.ts';
import { onAlder } from './on-alder.ts';
import type { OpenOptions } from './open.ts';
import { tapNamed } from './thumb.ts';

function moving(options: OpenOptions, run: (page: Page) => Promise<void>): Promise<void> {
  return onAlder(options, async (page) => {
    await tapNamed(page, 'More');
    await tapNamed(page, 'Move bars');
    await page.getByRole('heading', { name: /moving bars$/ }).waitFor();
    await run(page);
  });
}

const said = (page: Page) => page.locator('p[role=status]');

test('V23 a bar is taken in hand and hung in two places further in: the page says where it was found, and the journal has both moves', () =>
  moving({ theme: 'sun' }, async (page) => {
    const known = new Set((await journalOf(page)).map(({ id }) => id));
    const title = await said(page).innerText();
    const place = Number(/Place (\d+)/.exec(title)?.[1]);
    await tapNamed(page, 'In hand');
    await page.getByText(`Place ${place}: no bar hangs here.`).waitFor();
    await page.getByText('One place has no bar').waitFor();
    for (let i = 0; i < 2; i += 1) await page.getByRole('button', { name: 'One less: place' }).click();
    await tapNamed(page, `In hand: the bar of place ${place}`);
    await page.getByText(`Place ${place - 2}: the bar that was found at place ${place}.`).waitFor();
    assert.equal(await page.getByText('One place has no bar').count(), 0);
    await page.reload();
    await page.getByText(/the bar that was found at place|hangs where it was found/).waitFor();
    await tapNamed(page, 'Done moving');
    // The next bar to be lifted made way outward, to where the first had hung.
    await page.getByRole('heading', { name: new RegExp(`place ${place}$`) }).waitFor();
    const movesIn = (entries: readonly Entry[]) => entries.filter(({ id, kind }) => kind === 'move' && !known.has(id));
    const moves = movesIn(await journalOnce(page, (entries) => movesIn(entries).length === 2));
    assert.deepEqual(
      moves.map(({ body }) => (body as { move: { do: string; place: number } }).move).map((one) => [one.do, one.place]),
      [
        ['take', place],
        ['put', place - 2],
      ],
    );
  }));

test('V23 moves are taken back one by one or all at once, and the journal takes them back from the last to the first', () =>
  moving({ theme: 'paper' }, async (page) => {
    const known = new Set((await journalOf(page)).map(({ id }) => id));
    await tapNamed(page, 'Turn it round');
    await tapNamed(page, 'Bare bar here, others make way');
    await page.getByText('a bare bar, hung in today').waitFor();
    await tapNamed(page, 'Follower board after it');
    await tapNamed(page, 'Undo the move');
    await page.getByRole('button', { name: 'All 2 moves back: as found' }).click();
    await page.getByText('hangs where it was found').waitFor();
    const voids = (entries: readonly Entry[]) => entries.filter(({ id, kind }) => kind === 'void' && !known.has(id)).length;
    const made = (await journalOnce(page, (entries) => voids(entries) === 3)).filter(({ id }) => !known.has(id));
    const byId = (a: { id: string }, b: { id: string }): number => (a.id < b.id ? -1 : 1);
    const moves = made.filter(({ kind }) => kind === 'move').sort(byId);
    const ids = moves.map(({ id }) => id);
    const back = made.filter(({ kind, corrects }) => kind === 'void' && ids.includes(corrects ?? '')).sort(byId);
    assert.deepEqual([ids.length, back.map(({ corrects }) => corrects)], [3, ids.toReversed()]);
  }));

for (const options of [
  { theme: 'sun', width: 390, height: 844 },
  { theme: 'dusk', width: 390, height: 844 },
  { theme: 'paper', width: 1366, height: 768 },
] as const) {
  test(`V23 the page of moves is legible and in reach in ${options.theme} at ${options.width}×${options.height}`, () =>
    moving(options, async (page) => {
      await tapNamed(page, 'Box');
      await page.getByText('no bar hangs here').waitFor();
      await isUnderThumb(page);
    }));
}
