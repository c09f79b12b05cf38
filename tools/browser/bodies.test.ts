/** Awkward combs in a real browser: grown together and cut apart, a piece, the follower board, the bee escape. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { Page } from 'playwright-core';
import type { Entry } from '../../src/journal/entry.ts';
import { journalOnce } from './journal-of.ts';
import { isUnderThumb } from './legible.ts';
import { onAlder } from './on-alder.ts';
import type { OpenOptions } from './open.ts';
import { tapNamed } from './thumb.ts';

function awkward(
  options: OpenOptions,
  run: (page: Page, made: (count: number) => Promise<readonly Made[]>) => Promise<void>,
): Promise<void> {
  return onAlder(options, async (page) => {
    await tapNamed(page, 'More');
    await tapNamed(page, 'Grown together, pieces, board');
    await page.getByRole('heading', { name: /awkward combs$/ }).waitFor();
    // The screen answers before an entry is in the journal.
    await run(page, async (count) => ofVisit(await journalOnce(page, (entries) => ofVisit(entries).length >= count)));
  });
}

const byHand: ReadonlySet<string> = new Set(['combs-joined', 'comb-piece']);

/** What was written at the visit, and what takes it back. */
function ofVisit(journal: readonly Entry[]): readonly Made[] {
  const entries = journal.map(({ id, kind, body, corrects }) => ({ id, kind, corrects, body: body as Made['body'] }));
  const { visit } = entries.find(({ kind, body }) => byHand.has(kind) && typeof body['visit'] === 'string')?.body ?? {};
  const ours = entries.filter(({ body }) => visit !== undefined && body['visit'] === visit);
  const ids = new Set(ours.map(({ id }) => id));
  return [...ours, ...entries.filter(({ corrects }) => corrects !== undefined && ids.has(corrects))];
}

interface Made {
  readonly kind: string;
  readonly body: Readonly<Record<string, unknown>>;
}

/** The place that is chosen on the page. */
async function chosen(page: Page): Promise<number> {
  const said = await page.getByText(/^Place \d+: the comb hangs alone/).innerText();
  return Number(/\d+/.exec(said)?.[0]);
}

test('V90 two combs said to have grown together are read as one, and the journal holds what was read for both', () =>
  awkward({ theme: 'sun' }, async (page, made) => {
    const place = await chosen(page);
    await tapNamed(page, 'Wax between straight combs');
    await page.getByText(/have grown together: lift them as one/).waitFor();
    await tapNamed(page, 'Done with this');
    await page.getByRole('heading', { name: /as one$/ }).waitFor();
    await tapNamed(page, '5 of eight food');
    await page.locator('.visit-go').click();
    await page.getByRole('heading', { name: /place \d+$/ }).waitFor();
    const entries = await made(2);
    const reading = entries.find(({ kind }) => kind === 'reading');
    assert.deepEqual([reading?.body['of'], reading?.body['place']], ['set', place]);
    // The next bar is beyond both.
    const next = Number(/place (\d+)$/.exec(await page.locator('h1').innerText())?.[1]);
    const joined = entries.find(({ kind }) => kind === 'combs-joined')?.body['bars'] as { place: number }[];
    assert.ok(!joined.some((bar) => bar.place === next), `${next}`);
  }));

test('V91 cut apart as far as hands came, and the reason why they stopped; the last is taken back with one tap', () =>
  awkward({ theme: 'paper' }, async (page, made) => {
    await tapNamed(page, 'One comb runs across the bars');
    await page.getByText(/have grown together: lift them as one/).waitFor();
    await tapNamed(page, 'too warm');
    await page.getByText('Written down. Bars that hang alone are read alone.').waitFor();
    await tapNamed(page, 'Take it back');
    await page.getByText('Written down. These bars are lifted').waitFor();
    const kinds = (await made(3)).map(({ kind }) => kind).sort();
    assert.deepEqual(kinds, ['combs-joined', 'combs-parted', 'void']);
  }));

test('V92 a piece, comb on the follower board and the bee escape are each one entry, kept over a reload', () =>
  awkward({ theme: 'dusk' }, async (page, made) => {
    await tapNamed(page, 'A piece of comb');
    await tapNamed(page, 'Tub');
    await page.getByText('The piece takes its part').waitFor();
    await page.reload();
    await tapNamed(page, 'Follower board');
    await page.getByRole('button', { name: 'One more: of it food, eighths' }).click();
    await tapNamed(page, 'That is on it');
    await page.getByText('Written down for the follower board.').waitFor();
    await tapNamed(page, 'Bee escape');
    await page.getByRole('button', { name: /^Set after place/ }).click();
    await page.getByText('The round will remind you').waitFor();
    const entries = await made(3);
    assert.deepEqual(entries.map(({ kind }) => kind).sort(), ['bee-escape', 'comb-piece', 'reading']);
    const board = entries.find(({ kind }) => kind === 'reading')?.body;
    assert.deepEqual([board?.['of'], board?.['built8']], ['follower', 2]);
  }));

for (const options of [
  { theme: 'sun', width: 390, height: 844 },
  { theme: 'dusk', width: 390, height: 844 },
  { theme: 'paper', width: 1366, height: 768 },
] as const) {
  test(`V90 the page of awkward combs is legible and in reach in ${options.theme} at ${options.width}×${options.height}`, () =>
    awkward(options, async (page) => {
      await tapNamed(page, 'One comb runs across the bars');
      await page.getByText(/have grown together: lift them as one/).waitFor();
      await isUnderThumb(page);
    }));
}
