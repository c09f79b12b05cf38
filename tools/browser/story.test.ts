/**
 * The offline story, in a real browser with a server that is really killed: a first yard, a visit
 * recorded from the device's own store, the tab closed in its middle, the server back, and a second
 * browser that sees the visit. One test, because each step stands on the one before.
 */
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import { type Browser, chromium, type Page } from 'playwright-core';
import type { Reading } from '../../src/colony/reading.ts';
import type { VisitBody } from '../../src/colony/visit.ts';
import type { Entry } from '../../src/journal/entry.ts';
import { chromiumFlags, findChromium } from '../chromium.ts';
import { journalOf } from './journal-of.ts';
import { openFestoon, type Opened } from './open.ts';
import { beginUsual, readBars, tapNamed } from './thumb.ts';

let opened: Opened;
let second: Browser | null = null;

before(async () => {
  opened = await openFestoon({ theme: 'paper', book: null });
});
after(async () => {
  await second?.close();
  await opened.close();
});

/** What a browser says by itself of a server that does not answer; nothing else is forgiven. */
function ofDeadServer(line: string): boolean {
  return line.startsWith('Failed to load resource: net::ERR_CONNECTION_REFUSED (' + opened.address + '/api/');
}

async function unsentSaid(page: Page): Promise<string> {
  const line = page.locator('.standing p', { hasText: 'not yet on the server' });
  await line.waitFor();
  return line.innerText();
}

const bodies = <B>(entries: readonly Entry[], kind: string) =>
  entries.filter((entry) => entry.kind === kind).map((entry) => entry.body as B);

async function firstYard(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Begin my yard' }).click();
  await page.getByLabel('How many bars lie on it').fill('24');
  await page.getByLabel('How wide it is inside, at the top').fill('44');
  await page.getByLabel('How deep it is inside').fill('28');
  await page.getByRole('button', { name: 'Set up the hive' }).click();
  await page.getByRole('button', { name: 'Hived today' }).click();
  await page.locator('.stop').first().waitFor();
}

/** The journal once advice and forecast of the visit stand in it: they are written when the visit is left. */
async function issuedJournal(page: Page): Promise<readonly Entry[]> {
  for (let tries = 0; tries < 100; tries += 1) {
    const entries = await journalOf(page);
    if (bodies(entries, 'forecast-issued').length > 0) return entries;
    await page.waitForTimeout(100);
  }
  return assert.fail('advice and forecast of the visit were not written');
}

test('a first yard, a dead server, a visit cut in its middle, and a second browser that sees it', async () => {
  let page = await opened.page('/');
  await firstYard(page);
  await page.locator('.standing', { hasText: 'not yet on the server' }).waitFor({ state: 'detached' });
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  const colony = bodies<{ child: string }>(await journalOf(page), 'swarm')[0]?.child;
  assert.ok(colony);
  const atFirst = (await journalOf(page)).length;

  await opened.killServer();
  await assert.rejects(fetch(opened.address), 'the server is dead');
  await page.reload();
  await page.locator('.stop').first().waitFor();
  await page.getByRole('link', { name: /^(Open|Glance|Visit).* Hive 1$/ }).click();
  await page.getByRole('heading', { name: 'Visit Hive 1' }).waitFor();
  await beginUsual(page);
  await readBars(page, [['bare'], ['building'], ['food']]);
  await tapNamed(page, 'food + brood');
  await tapNamed(page, 'Eggs');
  await tapNamed(page, 'Seen');
  await page.locator('.visit-facts', { hasText: /Eggs\s*seen/ }).waitFor();
  const inHand = await handOf(page);
  await page.close();

  page = await opened.page(`/visit/${colony}`);
  await page.locator('.visit-act .visit-go').waitFor();
  assert.deepEqual(await handOf(page), inHand, 'the draft goes on as it was');
  await page.locator('.visit-act .visit-go').click();
  await page.getByRole('heading', { name: /place 2$/ }).waitFor();
  await readBars(page, [['brood']]);
  await tapNamed(page, 'food');
  await page.locator('.visit-act .visit-go').click();
  await page.getByRole('heading', { name: /end of the row$/ }).waitFor();
  await page.locator('.visit-end .visit-go').click();
  await tapNamed(page, 'calm');
  await page.locator('.visit-end .visit-go').click();
  await page.locator('.visit-sentence').waitFor();
  await page.locator('.visit-end .visit-go').click();
  await page.getByText('The visit is in the journal.').waitFor();
  await page.getByRole('link', { name: 'Back to the round' }).click();

  const here = await issuedJournal(page);
  assert.equal(bodies<Reading>(here, 'reading').length, 6);
  assert.equal(bodies<VisitBody>(here, 'visit').length, 1);
  assert.equal(await unsentSaid(page), `${here.length - atFirst} entries are not yet on the server`);

  await opened.startServer();
  // The loop tries again by itself after a while; a device that comes online tries at once.
  await page.evaluate(() => dispatchEvent(new Event('online')));
  await page.locator('.standing', { hasText: 'not yet on the server' }).waitFor({ state: 'detached' });

  const seen = await seenElsewhere(colony);
  assert.deepEqual(seen.ids, here.map((entry) => entry.id).sort());
  assert.match(seen.film, /^Hive 1: the nest at one visit/);
  assert.deepEqual(
    opened.errors.filter((line) => !ofDeadServer(line)),
    [],
  );
});

async function handOf(page: Page): Promise<readonly string[]> {
  const texts = await page.locator('h1, main [aria-pressed="true"], .visit-facts').allInnerTexts();
  return texts.map((text) => text.replace(/\s+/g, ' ').trim());
}

interface Elsewhere {
  readonly ids: readonly string[];
  /** What the drawing of the colony's visits says of itself. */
  readonly film: string;
}

/** Another browser with an empty disk opens the same address and the keeper's own yard. */
async function seenElsewhere(colony: string): Promise<Elsewhere> {
  second = await chromium.launch({ executablePath: findChromium() ?? '', args: [...chromiumFlags] });
  const page = await second.newPage({ viewport: { width: 1366, height: 900 } });
  page.on('console', (message) => {
    if (message.type() === 'error') opened.errors.push(message.text());
  });
  page.on('pageerror', (error) => opened.errors.push(error.message));
  await page.goto(opened.address);
  await page.getByRole('button', { name: 'Begin my yard' }).click();
  await page.locator('.stop').first().waitFor();
  await page.goto(`${opened.address}/colony/${colony}`);
  const film = page.locator('.film svg').first();
  await film.waitFor();
  const entries = await journalOf(page);
  return { ids: entries.map((entry) => entry.id).sort(), film: (await film.getAttribute('aria-label')) ?? '' };
}
