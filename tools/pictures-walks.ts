/** Walks through what does not keep to the rulers, step by step, as pictures: each with what it shows. */
import type { Page } from 'playwright-core';
import { openFestoon, type Opened } from './browser/open.ts';
import { beginUsual, tapNamed } from './browser/thumb.ts';

export interface Walk {
  readonly title: string;
  readonly steps: readonly { readonly file: string; readonly says: string }[];
}

type Step = (says: string, whole?: boolean) => Promise<void>;

/** Makes the pictures of all walks in the folder and tells of them. */
export async function makeWalks(folder: string): Promise<readonly Walk[]> {
  const walks: Walk[] = [];
  for (const { title, name, walk } of all) {
    const opened = await openFestoon({ theme: name === 'on-paper' ? 'paper' : 'sun', ...(name === 'on-paper' ? wide : {}) });
    const steps: { file: string; says: string }[] = [];
    let page: Page | null = null;
    const step: Step = async (says, whole = false) => {
      const file = `${name}-${steps.length + 1}.png`;
      steps.push({ file, says });
      await page?.waitForTimeout(400);
      await page?.screenshot({ path: `${folder}/${file}`, fullPage: whole });
    };
    page = await opened.page('/');
    await page.locator('.slip').first().waitFor();
    await walk(page, step, opened);
    await opened.close();
    walks.push({ title, steps });
  }
  return walks;
}

const wide = { width: 1000, height: 1300 };

async function visitAlder(page: Page): Promise<void> {
  const stop = page.locator('.stop', { has: page.getByRole('link', { name: 'Alder', exact: true }) });
  await stop.locator('a[href^="/visit/"]').click();
  await page.locator('.visit-end .visit-go').waitFor();
  await beginUsual(page);
}

const all: readonly {
  readonly title: string;
  readonly name: string;
  readonly walk: (page: Page, step: Step, opened: Opened) => Promise<void>;
}[] = [
  {
    title: 'A cross comb, put right as far as it went',
    name: 'cross-comb',
    walk: async (page, step) => {
      await visitAlder(page);
      await tapNamed(page, 'More');
      await tapNamed(page, 'Grown together, pieces, board');
      await step('A comb runs over two bars: said of neighbours, under More.');
      await tapNamed(page, 'One comb runs across the bars');
      await page.getByText(/lift them as one/).waitFor();
      await step('From now on they are lifted, moved and read as one. The order of work, and when to stop.', true);
      await tapNamed(page, 'Done with this');
      await tapNamed(page, '5 of eight food');
      await step('Both are read as one.');
      await page.locator('.visit-act .visit-go').click();
      await page.getByRole('heading', { name: /place \d+$/ }).waitFor();
      await tapNamed(page, 'More');
      await tapNamed(page, 'Grown together, pieces, board');
      await page.getByRole('button', { name: 'One more: place' }).click();
      await page.getByText(/lift them as one/).waitFor();
      await tapNamed(page, 'too warm');
      await step('Too warm: written down as stopped, and the rest waits for a cool morning.');
    },
  },
  {
    title: 'A comb that fell',
    name: 'comb-fell',
    walk: async (page, step) => {
      await visitAlder(page);
      await tapNamed(page, 'Comb fell');
      await step('Comb fell is always there: the first tap.');
      await tapNamed(page, 'brood');
      await step('What hung on it.');
      await tapNamed(page, 'hung up again');
      await step('What was done with it. The round will ask for eggs when they tell.');
    },
  },
  {
    title: 'On paper',
    name: 'on-paper',
    walk: async (page, step) => {
      await page.getByRole('link', { name: /^On paper/ }).click();
      await page.locator('.cover-sheet').waitFor();
      await page.emulateMedia({ media: 'print' });
      await step('One page for whoever looks after the bees meanwhile, as it is printed.');
      await page.emulateMedia({ media: 'screen' });
      await page.getByText('Visit sheet, Alder', { exact: true }).click();
      await page.locator('.pencil-sheet').waitFor();
      await page.emulateMedia({ media: 'print' });
      await step('A visit sheet with the rulers of the screen, and faces at a scale, as they are printed.', true);
      await page.emulateMedia({ media: 'screen' });
      await page.getByText('Type in a filled sheet of Alder').click();
      await step('The filled sheet is typed in, a row a bar.');
    },
  },
];
