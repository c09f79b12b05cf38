/**
 * `npm run pictures`: the screens as they are, into docs/pictures: those that matter at phone and
 * laptop size in the three themes, one visit step by step, the page of a requeened colony, one surprise.
 * `npm run pictures -- requeened surprise` makes those two alone. To be looked at, not compared.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { madeUpForeseen } from '../src/colony/foreseen.contract.ts';
import { madeUpRecord } from '../src/colony/record.contract.ts';
import { tellMadeUp } from './browser/made-up.ts';
import { beginUsual, demoColonies, tapNamed } from './browser/thumb.ts';
import { openFestoon } from './browser/open.ts';
import { makeWalks, type Walk } from './pictures-walks.ts';
import { workedSeed, workedSurprises } from './surprises/show.ts';

const folder = 'docs/pictures';
const themes = ['paper', 'dusk', 'sun'] as const;
const sizes = [
  { name: '390x844', width: 390, height: 844 },
  { name: '1366x900', width: 1366, height: 900 },
] as const;

const screens = ['round', 'colony', 'outlook', 'queen', 'ages', 'record', 'visit', 'handbook'] as const;
type ScreenName = (typeof screens)[number];

async function picture(page: Page, name: string): Promise<void> {
  await page.evaluate(() => document.fonts.ready.then(() => undefined));
  await page.waitForTimeout(400);
  await page.screenshot({ path: `${folder}/${name}.png` });
}

const goTo: Readonly<Record<ScreenName, (page: Page, address: string, colony: string) => Promise<void>>> = {
  round: async (page, address) => {
    await page.goto(address);
    await page.locator('.slip').first().waitFor();
  },
  colony: async (page, address, colony) => {
    await page.goto(`${address}/colony/${colony}`);
    await page.locator('.other-day').waitFor();
  },
  outlook: (page, address, colony) => toPart(page, `${address}/colony/${colony}`, '.outlook'),
  queen: (page, address, colony) => toPart(page, `${address}/colony/${colony}`, '.chances'),
  ages: (page, address, colony) => toPart(page, `${address}/colony/${colony}`, '.pyramid'),
  record: async (page, address) => {
    await page.goto(`${address}/record`);
    await page.locator('main a[href="/"]').waitFor();
  },
  visit: async (page, address, colony) => {
    await page.goto(`${address}/visit/${colony}`);
    await beginUsual(page);
    await tapNamed(page, 'food + brood');
  },
  handbook: async (page, address) => {
    await page.goto(`${address}/handbook`);
    await page.locator('summary').first().waitFor();
    await page.getByRole('searchbox').or(page.locator('input').first()).first().fill('swarm');
  },
};

/** Brings a part of a colony's page to the head of the window, when the model has told of it. */
async function toPart(page: Page, address: string, part: string): Promise<void> {
  await page.goto(address);
  const found = page.locator(part).first();
  await found.waitFor({ timeout: 60_000 });
  await page.waitForTimeout(3000);
  await found.evaluate((element) => (element.closest('section') ?? element).scrollIntoView());
}

async function allScreens(): Promise<void> {
  for (const size of sizes) {
    for (const theme of themes) {
      const opened = await openFestoon({ theme, width: size.width, height: size.height });
      const [largest] = await demoColonies(opened);
      const page = await opened.page('/');
      for (const screen of screens) {
        await goTo[screen](page, opened.address, largest?.colony ?? '');
        await picture(page, `${screen}-${size.name}-${theme}`);
      }
      await opened.close();
    }
  }
}

/** One visit in the sun: what the keeper sees, in order. */
async function oneVisit(): Promise<readonly string[]> {
  const opened = await openFestoon({ theme: 'sun' });
  const [largest] = await demoColonies(opened);
  const page = await opened.page(`/visit/${largest?.colony ?? ''}`);
  const told: string[] = [];
  const step = async (says: string): Promise<void> => {
    told.push(says);
    await picture(page, `walk-${told.length}`);
  };
  const down = () => page.locator('.visit-act .visit-go').click();
  await page.locator('.visit-end .visit-go').waitFor();
  await step('The visit begins: what kind, from which end, bees left on or brushed off.');
  await beginUsual(page);
  await step('The first bar in the hand. Nothing of what is expected of it is shown.');
  await tapNamed(page, 'food');
  await step('One tap on a kind of comb sets both rulers.');
  await tapNamed(page, 'Cells');
  await step('What no area tells: here queen cells, open, sealed, torn, emerged.');
  await tapNamed(page, 'None seen');
  await down();
  await tapNamed(page, 'food + brood');
  await tapNamed(page, 'Eggs');
  await tapNamed(page, 'Seen');
  await down();
  await step('Down writes the reading. Only now last time and today’s expectation are told, and a surprise where there is one.');
  await tapNamed(page, 'More');
  await step('More: another bar, the smoker, the end of the row, leaving for now.');
  await tapNamed(page, 'End of the row, then close');
  await step('The end of the row: bars given or taken, the follower board, the count.');
  await page.locator('.visit-end .visit-go').click();
  await step('The colony: bees, temper, cells cut.');
  await page.locator('.visit-end .visit-go').click();
  await step('One sentence to confirm. Bars not opened stay unknown.');
  await opened.close();
  return told;
}

/** The whole page of a colony of the demo yard, three weeks after another queen was given to it. */
async function requeened(): Promise<void> {
  const opened = await openFestoon();
  const page = await opened.page('/');
  const path = await page.getByRole('link', { name: 'Linden', exact: true }).getAttribute('href');
  await page.evaluate(turnDemoTo, '2013-07-31');
  await page.goto(`${opened.address}${path}`);
  await page.locator('.turnover').waitFor({ timeout: 60_000 });
  await page.locator('.bars').evaluate((bars) => (bars.style.display = 'none'));
  await page.waitForTimeout(3000);
  await page.screenshot({ path: `${folder}/requeened.png`, fullPage: true });
  await opened.close();
}

/** Runs in the page: the day that the demo stands on when it is opened next. */
function turnDemoTo(day: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const opening = indexedDB.open('festoon-demo');
    opening.onerror = () => reject(new Error('the demo is not kept'));
    opening.onsuccess = () => {
      const work = opening.result.transaction('snapshots', 'readwrite');
      work.objectStore('snapshots').put(day, 'today');
      work.oncomplete = () => resolve();
    };
  });
}

/** What is told after a swarm that nobody saw, in the made-up world of docs/surprises.md: real sentences on a page of the demo. */
async function surprise(): Promise<void> {
  const opened = await openFestoon();
  await tellMadeUp(opened.context, { ...madeUpForeseen(), surprises: workedSurprises('swarmed', workedSeed) }, madeUpRecord());
  const page = await opened.page('/');
  await page.getByRole('link', { name: 'Alder', exact: true }).click();
  const told = page.locator('.surprises');
  await told.locator('article').first().waitFor();
  await told.screenshot({ path: `${folder}/surprise.png` });
  await opened.close();
}

function pageOf(told: readonly string[], walks: readonly Walk[]): string {
  const rows = screens.flatMap((screen) => [
    `## ${screen[0]?.toUpperCase() ?? ''}${screen.slice(1)}`,
    ...sizes.map((size) =>
      themes.map((theme) => `![${screen}, ${size.name}, ${theme}](${screen}-${size.name}-${theme}.png)`).join(' '),
    ),
  ]);
  const walk = told.map((says, i) => `${i + 1}. ${says}\n\n   ![step ${i + 1}](walk-${i + 1}.png)`);
  return (
    [
      '# Pictures',
      'Written by `npm run pictures` from the demo yard.',
      ...rows,
      '## A surprise, and a requeened colony',
      'After a swarm that nobody saw, in a made-up world; and a colony three weeks after it got another queen: both are told' +
        ' in [Surprises](../surprises.md).',
      '![surprise](surprise.png) ![requeened](requeened.png)',
      '## One visit',
      ...walk,
      ...walks.flatMap(({ title, steps }) => [
        `## ${title}`,
        ...steps.map(({ file, says }, i) => `${i + 1}. ${says}\n\n   ![${title}, step ${i + 1}](${file})`),
      ]),
    ].join('\n\n') + '\n'
  );
}

mkdirSync(folder, { recursive: true });
const alone = { requeened, surprise };
const asked = process.argv.slice(2);
for (const [name, make] of Object.entries(alone)) if (asked.length === 0 || asked.includes(name)) await make();
if (asked.length === 0) {
  await allScreens();
  writeFileSync(`${folder}/README.md`, pageOf(await oneVisit(), await makeWalks(folder)));
}
