/**
 * Lets the screens of a test show what a model made up: answers of the page's worker get a made-up `Foreseen` and a
 * made-up record on their way in. What the real one tells of the demo yard is tested apart.
 */
import type { BrowserContext } from 'playwright-core';
import type { Foreseen } from '../../src/colony/foreseen.ts';
import type { ForecastRecord } from '../../src/colony/record.ts';

export async function tellMadeUp(context: BrowserContext, foreseen: Foreseen, record: ForecastRecord): Promise<void> {
  await context.addInitScript(listenFirst, JSON.stringify({ foreseen, record }));
}

interface Answer {
  readonly picture?: { readonly colonies: { colony: string; foreseen: unknown }[] };
  readonly foreseen?: { readonly colony: string };
  readonly scores?: unknown;
}

/** Runs in the page before anything else: a message is one object for all who hear it, so what is changed first stays changed. */
function listenFirst(told: string): void {
  const Plain = globalThis.Worker;
  globalThis.Worker = class extends Plain {
    constructor(url: string | URL, options?: WorkerOptions) {
      super(url, options);
      this.addEventListener('message', ({ data }: MessageEvent<{ readonly answer?: Answer | null }>) => {
        const { foreseen, record } = JSON.parse(told) as { readonly foreseen: object; readonly record: object };
        const answer = data.answer ?? {};
        for (const view of answer.picture?.colonies ?? []) view.foreseen = { ...foreseen, colony: view.colony };
        if (answer.foreseen !== undefined) Object.assign(answer.foreseen, foreseen, { colony: answer.foreseen.colony });
        if (answer.scores !== undefined) Object.assign(answer, record);
      });
    }
  };
}
