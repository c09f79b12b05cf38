/** The Visit screen in a real browser: one visit end to end, kills at many points, a dead server, the thumb, sizes, axe. */
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import type { Reading } from '../../src/colony/reading.ts';
import type { VisitBody } from '../../src/colony/visit.ts';
import type { Entry } from '../../src/journal/entry.ts';
import { journalOf } from './journal-of.ts';
import { openFestoon, type Opened } from './open.ts';
import { beginUsual, type DemoColony, demoColonies, readBars, tapNamed, thirteenBars } from './thumb.ts';

const startedAt = `${new Date().toISOString().slice(0, 19)}Z`;
let opened: Opened;
let colonies: readonly DemoColony[];

before(async () => {
  opened = await openFestoon({ theme: 'sun' });
  colonies = await demoColonies(opened);
});
after(() => opened.close());

const goOn = (page: Page) => page.locator('.visit-go');

/** What the screen says of the bar in the hand: title, everything pressed, the facts, the way on. */
async function shown(page: Page): Promise<readonly string[]> {
  await goOn(page).first().waitFor();
  const texts = await page.locator('h1, [aria-pressed="true"], .visit-facts, .visit-go, .visit-told, textarea').allInnerTexts();
  const notes = await page.locator('textarea').evaluateAll((all) => all.map((each) => (each as HTMLTextAreaElement).value));
  return [...texts.map((text) => text.replace(/\s+/g, ' ').trim()), ...notes];
}

async function throwAway(page: Page): Promise<void> {
  await tapNamed(page, 'More');
  await tapNamed(page, 'Throw this visit away');
  await tapNamed(page, 'Throw it away');
  await page.locator('.visit-end .visit-go').waitFor();
}

function colonyAt(index: number): DemoColony {
  const found = colonies[index % colonies.length];
  assert.ok(found, 'the demo has living colonies');
  return found;
}

async function openVisit({ colony }: DemoColony): Promise<Page> {
  const page = await opened.page(`/visit/${colony}`);
  await goOn(page).first().waitFor();
  return page;
}

/** At the start of a new visit, whatever an earlier test left open. */
async function openFresh(which: DemoColony): Promise<Page> {
  const page = await openVisit(which);
  for (const name of ['Back', 'Back', 'To the bars']) {
    const button = page.getByRole('button', { name, exact: true });
    if ((await button.count()) > 0) await button.click();
  }
  if ((await page.locator('.visit-act').count()) > 0) await throwAway(page);
  await page.getByRole('button', { name: 'Usual', exact: true }).waitFor();
  return page;
}

function bodies<B>(entries: readonly Entry[], kind: string): readonly B[] {
  return entries.filter((entry) => entry.kind === kind).map((entry) => entry.body as B);
}

/** Entries made by taps since; the demo's own, which may still be on their way to the disk, were noted long ago. */
async function newEntries(page: Page, known: ReadonlySet<string>): Promise<readonly Entry[]> {
  return (await journalOf(page)).filter((entry) => !known.has(entry.id) && entry.noted >= startedAt);
}

async function idsOf(page: Page): Promise<ReadonlySet<string>> {
  return new Set((await journalOf(page)).map((entry) => entry.id));
}

/** The last Down is safe in the draft at once and in the journal a moment later: waited for, at most five seconds. */
async function readingsOnDisk(page: Page, known: ReadonlySet<string>, wanted: number): Promise<readonly Reading[]> {
  const until = Date.now() + 5000;
  for (;;) {
    const found = bodies<Reading>(await newEntries(page, known), 'reading');
    if (found.length >= wanted || Date.now() > until) return found;
    await page.waitForTimeout(100);
  }
}

test('V19 a thumb reads thirteen bars in at most 60 s of its clock, and all thirteen are in the journal', async () => {
  const page = await openFresh(colonyAt(0));
  const known = await idsOf(page);
  await beginUsual(page);
  const run = await readBars(page, thirteenBars);
  console.log(`thumb: ${run.downs} bars, ${run.taps} taps, ${run.seconds.toFixed(1)} s`);
  assert.ok(run.seconds <= 60, `${run.seconds} s`);
  const readings = await readingsOnDisk(page, known, thirteenBars.length);
  assert.equal(new Set(readings.map((reading) => reading.place)).size, thirteenBars.length);
  assert.equal(readings.length, thirteenBars.length);
  await page.close();
});

test('V11 the tab closed after any tap and opened again goes on with the same bar, answers, note and panel', async () => {
  let page = await openFresh(colonyAt(1));
  const known = await idsOf(page);
  await beginUsual(page);
  const taps: readonly string[] = [
    'Smoke',
    'food + brood',
    '5 of eight brood',
    'Eggs',
    'young larvae',
    'Cells',
    'One more: sealed',
    'One more: open',
    'Queen',
    'Seen',
    'Down',
    'food',
    '7 of eight food',
    'Undo',
    'Down',
    'Undo',
    '4 of eight food',
    'Down',
    'Sign',
    'Stop here',
    'small dark beetles',
    'Comb fell',
    'honey',
    'taken out',
    'brood',
    'Down',
    'Not opened',
    'More',
  ];
  for (const name of taps) {
    const before = await page.locator('main').innerHTML();
    if (name === 'Down') await page.locator('.visit-act .visit-go').click();
    else await tapNamed(page, name);
    await page.waitForFunction((html) => document.querySelector('main')?.innerHTML !== html, before);
    const seen = await shown(page);
    await page.close();
    page = await openVisit(colonyAt(1));
    assert.deepEqual(await shown(page), seen, `after ${name}`);
  }
  await tapNamed(page, 'Note');
  await page.locator('textarea').fill('honey run over the bar');
  await page.locator('.visit-facts b', { hasText: '✓' }).waitFor();
  const noted = await shown(page);
  await page.close();
  page = await openVisit(colonyAt(1));
  assert.deepEqual(await shown(page), noted);
  const entries = await newEntries(page, known);
  const kinds = entries.map((entry) => entry.kind).sort();
  assert.deepEqual(kinds, ['comb-fell', 'correction', 'reading', 'reading', 'reading']);
  await throwAway(page);
  await page.close();
});

test('V20 with the server killed a visit is recorded whole, the browser killed in its middle, and nothing is lost or doubled', async () => {
  const { bars } = colonyAt(0);
  assert.ok(bars >= thirteenBars.length);
  let page = await openFresh(colonyAt(0));
  const known = await idsOf(page);
  // The program is on the device once its service worker holds it.
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await opened.killServer();
  await page.reload();
  await goOn(page).first().waitFor();
  await beginUsual(page);
  const plans = [...Array.from({ length: bars - thirteenBars.length }, () => ['food']), ...thirteenBars];
  await readBars(page, plans.slice(0, -7));
  await tapNamed(page, 'brood');
  await tapNamed(page, 'Eggs');
  await page.getByRole('heading', { name: 'Eggs on this bar' }).waitFor();
  const seen = await shown(page);
  opened = await opened.killBrowser();
  page = await openVisit(colonyAt(0));
  assert.deepEqual(await shown(page), seen);
  await tapNamed(page, 'Seen');
  await page.locator('.visit-act .visit-go').click();
  await page.getByRole('heading', { name: /place 6$/ }).waitFor();
  await readBars(page, plans.slice(-6));
  await tapNamed(page, 'One more: bars hung in');
  await page.getByRole('button', { name: /as it should be/ }).click();
  await page.locator('.visit-end .visit-go').click();
  await tapNamed(page, 'calm');
  await tapNamed(page, 'after rain');
  await tapNamed(page, 'One more: bars with bees on them');
  await page.locator('.visit-end .visit-go').click();
  const sentence = await page.locator('.visit-sentence').innerText();
  assert.match(sentence, new RegExp(`${bars} bars read, all of the bay.*One bar hung in.*The bees were calm\\.`));
  await page.locator('.visit-end .visit-go').click();
  await page.getByText('The visit is in the journal.').waitFor();
  const entries = await newEntries(page, known);
  assert.deepEqual(
    bodies<Reading>(entries, 'reading')
      .map((reading) => reading.place)
      .sort((a, b) => a - b),
    plans.map((_, index) => index + 1),
  );
  const [visit, ...more] = bodies<VisitBody>(entries, 'visit');
  assert.deepEqual(more, []);
  assert.deepEqual(
    [visit?.temper, visit?.temperNotes, visit?.given, visit?.followerAfter, visit?.sentence],
    ['calm', ['after rain'], [bars + 1], bars + 1, sentence],
  );
  const eggs = bodies<Reading>(entries, 'reading')
    .filter((reading) => reading.eggs === 'seen')
    .map((reading) => reading.place);
  assert.deepEqual(
    eggs.sort((a, b) => a - b),
    [6, 7],
  );
  await page.getByRole('link', { name: /^What it means/ }).click();
  await page.waitForURL(/\/colony\//);
  await page.locator('h1').waitFor();
  await opened.startServer();
  await page.close();
});

interface Sizes {
  readonly scrolls: number;
  readonly small: readonly string[];
  readonly near: readonly string[];
}

for (const theme of ['sun', 'paper', 'dusk'] as const) {
  test(`V18 at 390×844 in ${theme} the bar stands on one screen, and every target is large and apart`, async () => {
    const page = await openFresh(colonyAt(2));
    await page.evaluate((name) => {
      document.documentElement.dataset['theme'] = name;
    }, theme);
    await beginUsual(page);
    await tapNamed(page, 'Smoke');
    await tapNamed(page, 'food + brood');
    await page.locator('.visit-act .visit-go').click();
    await page.locator('.visit-told p').waitFor();
    for (const panel of ['rulers', 'Eggs', 'Cells', 'Queen', 'Sign', 'Note', 'Comb fell']) {
      if (panel !== 'rulers') await tapNamed(page, panel);
      await page.waitForTimeout(60);
      const sizes = (await page.evaluate(measure)) as Sizes;
      assert.deepEqual(sizes, { scrolls: 0, small: [], near: [] }, panel);
    }
    if (theme === 'sun') {
      const least = (await page.evaluate(leastType)) as { size: number; weight: number };
      assert.ok(least.size >= 20 && least.weight >= 600, JSON.stringify(least));
    }
    await throwAway(page);
    await page.close();
  });
}

/** Runs in the page: what scrolls, what is smaller than a thumb, what stands nearer than 8 px and does not touch by intent. */
const measure = `(() => {
  const all = [...document.querySelectorAll('main button, main a.button')].filter((each) => each.offsetParent !== null);
  const boxes = all.map((each) => ({ each, name: each.getAttribute('aria-label') || each.textContent, box: each.getBoundingClientRect() }));
  const joined = (a, b) => ['.visit-ruler', '.visit-stepper'].some((of) => a.closest(of) !== null && a.closest(of) === b.closest(of));
  const near = [];
  for (const a of boxes) for (const b of boxes) {
    if (a === b || joined(a.each, b.each)) continue;
    const dx = Math.max(0, b.box.left - a.box.right, a.box.left - b.box.right);
    const dy = Math.max(0, b.box.top - a.box.bottom, a.box.top - b.box.bottom);
    if (Math.max(dx, dy) < 7.9) near.push(a.name + ' and ' + b.name);
  }
  return {
    scrolls: Math.max(0, document.documentElement.scrollHeight - innerHeight),
    small: boxes.filter(({ box }) => box.height < 71.9 || box.width < 38)
      .map(({ name, box }) => name + ' ' + box.width + '×' + box.height),
    near,
  };
})()`;

/** Runs in the page: the smallest and the lightest type of what is said in words (numbers under the strip are a drawing). */
const leastType = `(() => {
  const said = [...document.querySelectorAll('main *')].filter((each) => !each.closest('svg, .hidden-text')
    && [...each.childNodes].some((node) => node.nodeType === 3 && node.textContent.trim() !== ''));
  const styles = said.map((each) => getComputedStyle(each));
  return { size: Math.min(...styles.map((s) => parseFloat(s.fontSize))), weight: Math.min(...styles.map((s) => Number(s.fontWeight))) };
})()`;

test('V18 no axe violation on any step of a visit, in any theme', async () => {
  const page = await openFresh(colonyAt(3));
  const check = async (step: string) => {
    for (const theme of ['sun', 'paper', 'dusk']) {
      await page.evaluate((name) => {
        document.documentElement.dataset['theme'] = name;
      }, theme);
      const { violations } = await new AxeBuilder({ page }).analyze();
      assert.deepEqual(
        violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ''}`),
        [],
        `${step} in ${theme}`,
      );
    }
  };
  await check('start');
  await beginUsual(page);
  await tapNamed(page, 'food + brood');
  await page.locator('.visit-act .visit-go').click();
  await check('bar');
  for (const panel of ['Eggs', 'Cells', 'Queen', 'Sign', 'Note', 'Comb fell', 'More']) {
    await tapNamed(page, panel);
    await check(panel);
  }
  await tapNamed(page, 'End of the row, then close');
  await check('row');
  await page.locator('.visit-end .visit-go').click();
  await check('colony');
  await page.locator('.visit-end .visit-go').click();
  await check('confirm');
  await tapNamed(page, 'Back');
  await tapNamed(page, 'Back');
  await tapNamed(page, 'To the bars');
  await throwAway(page);
  await page.close();
});

test('V17 a sign that means stop says at once to stop, move nothing and call the authority', async () => {
  const page = await openFresh(colonyAt(4));
  await beginUsual(page);
  await tapNamed(page, 'Sign');
  await tapNamed(page, 'Stop here');
  assert.equal(await page.getByRole('alert').count(), 0);
  await tapNamed(page, 'small dark beetles');
  assert.match(await page.getByRole('alert').innerText(), /^Stop\. Close the hive, move nothing .* call the authority\./);
  await tapNamed(page, 'Sign');
  assert.match(await page.getByRole('alert').innerText(), /^Stop/);
  await throwAway(page);
  await page.close();
});

test('V15 before the keeper has read a bar nothing of what is believed of it is in the page', async () => {
  const page = await openFresh(colonyAt(5));
  await beginUsual(page);
  const strip = await page.locator('.visit-strip').innerHTML();
  for (const told of ['class="comb"', 'class="bees"', 'told-', 'class="queen"']) assert.ok(!strip.includes(told), told);
  assert.match(await page.locator('.visit-told').innerText(), /^Nothing is read/);
  await tapNamed(page, 'food');
  assert.match(await page.locator('.visit-told').innerText(), /^(Nothing is read|Place|$)/);
  assert.ok(!(await page.locator('.visit-strip').innerHTML()).includes('told-'));
  await page.locator('.visit-act .visit-go').click();
  await page.getByText(/^Place \d+: brood 0, food 6\./).waitFor();
  await throwAway(page);
  await page.close();
});

test('V18 the whole of this left no error in the console', () => {
  const expected = /Failed to load resource|ERR_CONNECTION_REFUSED/;
  assert.deepEqual(
    opened.errors.filter((error) => !expected.test(error)),
    [],
  );
});
