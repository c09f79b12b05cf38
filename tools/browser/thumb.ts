/**
 * The scripted thumb: reads bars with real clicks in a real browser and adds up the time that a thumb
 * would take: 0.8 s a tap and 1.5 s after Down, while the bar goes back and the next one is lifted.
 * The clicks are not slowed down; only the clock is nominal. Run by itself it prints taps and seconds.
 */
import type { Page } from 'playwright-core';
import { pathToFileURL } from 'node:url';
import { openFestoon, type Opened } from './open.ts';
import { journalOf } from './journal-of.ts';

export const secondsPerTap = 0.8;
export const secondsAfterDown = 1.5;

/** The taps of one bar before Down, by the names of the buttons. */
export type BarPlan = readonly string[];

/** Thirteen bars of a strong colony in May, from the follower inwards: a class for most, rulers and facts where they matter. */
export const thirteenBars: readonly BarPlan[] = [
  ['building'],
  ['food'],
  ['food', '7 of eight food'],
  ['food + brood'],
  ['food + brood', '5 of eight brood'],
  ['5 of eight brood', '2 of eight food', 'Eggs', 'larvae'],
  ['brood', 'Eggs', 'Seen'],
  ['brood', 'Eggs', 'Seen'],
  ['5 of eight brood', '2 of eight food', 'Cells', 'None seen'],
  ['brood'],
  ['food + brood', 'Queen', 'Seen'],
  ['food'],
  ['food'],
];

export interface ThumbRun {
  readonly taps: number;
  readonly downs: number;
  readonly seconds: number;
}

/** Reads the bars on an open Visit screen. Every tap is a click, and every Down is waited for until the next bar is in the hand. */
export async function readBars(page: Page, plans: readonly BarPlan[]): Promise<ThumbRun> {
  let taps = 0;
  for (const plan of plans) {
    for (const name of plan) {
      await tapNamed(page, name);
      taps += 1;
    }
    const title = await page.locator('h1').textContent();
    await page.locator('.visit-act .visit-go').click();
    taps += 1;
    await page.waitForFunction((before) => document.querySelector('h1')?.textContent !== before, title);
  }
  return { taps, downs: plans.length, seconds: taps * secondsPerTap + plans.length * secondsAfterDown };
}

/** A tap on the button of that name; facts say their answer behind their name. */
export async function tapNamed(page: Page, name: string): Promise<void> {
  const exact = page.getByRole('button', { name, exact: true });
  const fact = page.locator('.visit-facts button', { hasText: name });
  await exact.or(fact).first().click();
}

/** The first tap of a visit: what the Visit screen offers for a usual one. */
export async function beginUsual(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Usual', exact: true }).click();
  await page.locator('.visit-end .visit-go').click();
  await page.locator('.visit-act .visit-go').waitFor();
}

export interface DemoColony {
  readonly colony: string;
  /** Bars that a usual visit lifts. */
  readonly bars: number;
}

/** Living colonies of the demo, the largest first, by what the Visit screen says before it begins. */
export async function demoColonies(opened: Opened): Promise<readonly DemoColony[]> {
  const page = await opened.page('/');
  const links = page.locator('.stop a[href^="/visit/"]');
  await links.first().waitFor();
  const paths = await links.evaluateAll((all) => all.map((each) => each.getAttribute('href') ?? ''));
  const found: DemoColony[] = [];
  for (const path of new Set(paths)) {
    await page.goto(opened.address + path);
    await page.getByRole('button', { name: 'Usual', exact: true }).click();
    const lifts = await page.getByText(/ to lift, of places /).innerText();
    found.push({ colony: path.split('/').at(-1) ?? '', bars: Number(/(\d+) bars to lift/.exec(lifts)?.[1] ?? 1) });
  }
  await page.close();
  return found.sort((a, b) => b.bars - a.bars);
}

async function main(): Promise<void> {
  const opened = await openFestoon({ theme: 'sun' });
  try {
    const [largest] = await demoColonies(opened);
    const page = await opened.page(`/visit/${largest?.colony ?? ''}`);
    await beginUsual(page);
    const begun = `${new Date().toISOString().slice(0, 19)}Z`;
    const run = await readBars(page, thirteenBars);
    const made = (await journalOf(page)).filter((entry) => entry.kind === 'reading' && entry.noted >= begun);
    const readings = made.length;
    console.log(
      `${run.downs} bars, ${run.taps} taps, ${run.seconds.toFixed(1)} s of the thumb's clock; ${readings} readings in the journal`,
    );
  } finally {
    await opened.close();
  }
}

if (process.argv[1] !== undefined && import.meta.url === pathToFileURL(process.argv[1]).href) await main();
