/**
 * A page that is killed at any moment of a visit, again and again: whatever it had shown as put down must be in the
 * journal or in the draft when it is opened again.
 */
import type { Page } from 'playwright-core';
import { journalOf } from '../browser/journal-of.ts';
import { type Opened, openFestoon } from '../browser/open.ts';
import { beginUsual, tapNamed } from '../browser/thumb.ts';
import type { Chance } from '../world/chance.ts';

export interface PageKills {
  readonly kills: number;
  /** Bars that were shown as put down. */
  readonly shown: number;
  /** Bars that were shown as put down, and are nowhere. */
  readonly lost: number;
}

const longestMs = 140;
const classes = ['food', 'food + brood', 'brood', 'building'] as const;

export async function killPages(kills: number, luck: Chance): Promise<PageKills> {
  const opened = await openFestoon();
  try {
    let page = await begun(opened);
    const known = await readingsOf(page);
    let [shown, lost] = [0, 0];
    for (let kill = 0; kill < kills; kill += 1) {
      if ((await page.getByRole('heading', { name: /place \d+$/ }).count()) === 0) page = await again(opened, page);
      const before = await page.locator('h1').innerText();
      await tapNamed(page, luck.pick(classes));
      void page
        .locator('.visit-act .visit-go')
        .click()
        .catch(() => undefined);
      await new Promise((resolve) => setTimeout(resolve, luck.between(0, longestMs)));
      const title = await page
        .locator('h1')
        .innerText({ timeout: 2000 })
        .catch(() => before);
      if (title !== before) shown += 1;
      await crash(opened, page);
      page = await opened.page(visitPath(page));
      await page.locator('h1').waitFor();
      await page.getByRole('heading', { name: /·/ }).waitFor();
      // What Down wrote goes from the draft into the journal as soon as the visit is open again.
      await page.waitForTimeout(300);
      const kept = (await readingsOf(page)) - known;
      lost += Math.max(0, shown - kept);
      shown = kept;
    }
    return { kills, shown, lost };
  } finally {
    await opened.close();
  }
}

async function begun(opened: Opened): Promise<Page> {
  const page = await opened.page('/');
  const stop = page.locator('.stop', { has: page.getByRole('link', { name: 'Alder', exact: true }) });
  await stop.locator('a[href^="/visit/"]').click();
  await page.locator('.visit-end .visit-go').waitFor();
  await beginUsual(page);
  return page;
}

/** All bars were read: the visit is thrown away, what is in the journal stays, and another one begins. */
async function again(opened: Opened, page: Page): Promise<Page> {
  await crash(opened, page);
  const fresh = await opened.page(visitPath(page));
  await fresh.evaluate(`(async () => {
    for (const { name } of await indexedDB.databases()) {
      const db = await new Promise((done) => { const asked = indexedDB.open(name); asked.onsuccess = () => done(asked.result); });
      if (db.objectStoreNames.contains('drafts')) db.transaction('drafts', 'readwrite').objectStore('drafts').clear();
      db.close();
    }
  })()`);
  await fresh.reload();
  await fresh.locator('.visit-end .visit-go').waitFor();
  await beginUsual(fresh);
  return fresh;
}

const visitPath = (page: Page): string => new URL(page.url()).pathname;

/** The page's process ends without a word. */
async function crash({ context }: Opened, page: Page): Promise<void> {
  const session = await context.newCDPSession(page);
  await Promise.race([session.send('Page.crash').catch(() => undefined), new Promise((resolve) => page.once('crash', resolve))]);
  await page.close().catch(() => undefined);
}

async function readingsOf(page: Page): Promise<number> {
  return (await journalOf(page)).filter(({ kind }) => kind === 'reading').length;
}
