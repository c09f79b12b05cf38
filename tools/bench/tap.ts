/**
 * How long a tap on the Visit screen takes on a phone slowed four times: from the event of the click
 * until the frame that shows it is painted. The draft is on disk before anything is shown, so storing
 * is in it. Downs, which also write the reading into the journal, are counted among the taps and apart.
 */
import { loadavg } from 'node:os';
import { pathToFileURL } from 'node:url';
import type { Page } from 'playwright-core';
import { openFestoon } from '../browser/open.ts';
import { beginUsual, demoColonies, readBars, tapNamed, thirteenBars } from '../browser/thumb.ts';

export interface TapLatency {
  readonly taps: number;
  /** Milliseconds from the event to the painted frame. */
  readonly p50: number;
  readonly p95: number;
  readonly worst: number;
  /** The same for Down alone. */
  readonly downP95: number;
  readonly slowedBy: number;
  /** Processes that wanted the machine during the last minute: above its cores, the figure is the machine's and not the program's. */
  readonly load: number;
}

export const aimMs = 50;
const slowedBy = 4;
const rounds = 4;

export async function tapLatency(): Promise<TapLatency> {
  const opened = await openFestoon({ theme: 'sun' });
  try {
    const [largest] = await demoColonies(opened);
    const page = await opened.page(`/visit/${largest?.colony ?? ''}`);
    await page.locator('.visit-end .visit-go').waitFor();
    const session = await opened.context.newCDPSession(page);
    await session.send('Emulation.setCPUThrottlingRate', { rate: slowedBy });
    await page.evaluate(watchTaps);
    for (let round = 0; round < rounds; round += 1) await oneVisit(page);
    const rows = (await page.evaluate('globalThis.tapRows')) as { readonly ms: number; readonly down: boolean }[];
    const all = rows.map((row) => row.ms);
    const downs = rows.filter((row) => row.down).map((row) => row.ms);
    return {
      taps: all.length,
      p50: quantile(all, 0.5),
      p95: quantile(all, 0.95),
      worst: quantile(all, 1),
      downP95: quantile(downs, 0.95),
      slowedBy,
      load: loadavg()[0] ?? NaN,
    };
  } finally {
    await opened.close();
  }
}

/** Thirteen bars, then all of it thrown away, so that the next round begins as this one did. */
async function oneVisit(page: Page): Promise<void> {
  await beginUsual(page);
  await readBars(page, thirteenBars.slice(0, -1));
  await tapNamed(page, 'More');
  await tapNamed(page, 'Throw this visit away');
  await tapNamed(page, 'Throw it away');
  await page.locator('.visit-end .visit-go').waitFor();
}

/** Runs in the page: each click within the bar's screen, and the time until a frame with the change is painted. */
const watchTaps = `(() => {
  globalThis.tapRows = [];
  let open = null;
  addEventListener('click', (event) => {
    const button = event.target instanceof Element ? event.target.closest('.visit-desk button') : null;
    open = button === null ? null : { at: event.timeStamp, down: button.matches('.visit-act .visit-go') };
  }, true);
  new MutationObserver(() => {
    if (open === null) return;
    const { at, down } = open;
    open = null;
    requestAnimationFrame(() => {
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = () => globalThis.tapRows.push({ ms: performance.now() - at, down });
      port2.postMessage(null);
    });
  }).observe(document.body, { subtree: true, childList: true, attributes: true, characterData: true });
})()`;

function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.ceil(share * sorted.length) - 1)] ?? NaN;
}

async function main(): Promise<void> {
  const { taps, p50, p95, worst, downP95, load } = await tapLatency();
  const ms = (value: number) => `${value.toFixed(1)} ms`;
  console.log(
    `tap stored and drawn, CPU slowed ${slowedBy}×: ${taps} taps, p50 ${ms(p50)}, p95 ${ms(p95)}, worst ${ms(worst)}; ` +
      `Down alone p95 ${ms(downP95)} (aim: p95 at most ${aimMs} ms); load of the machine ${load.toFixed(1)}`,
  );
}

if (process.argv[1] !== undefined && import.meta.url === pathToFileURL(process.argv[1]).href) await main();
