/**
 * A line between devices and a server that loses questions and answers, asks twice, and delivers in any order. Nothing
 * moves by itself: each step is delivered when the run says so.
 */
import type { Remote } from '../../src/journal/sync-ports.ts';
import { bad, type Result } from '../../src/numbers/result.ts';
import type { Chance } from '../world/chance.ts';

export interface Line {
  readonly over: (remote: Remote) => Remote;
  /** Steps on their way. */
  readonly waiting: () => number;
  /** Delivers any one of them. */
  readonly deliver: () => void;
  readonly heal: () => void;
}

/** How many of a hundred questions are lost, whose answers are lost, and that are asked twice. */
const lost = { question: 0.12, answer: 0.12, twice: 0.1 };

export function badLine(luck: Chance): Line {
  const steps: (() => void)[] = [];
  let healed = false;
  const later = <T>(make: () => T): Promise<T> =>
    new Promise((resolve) => {
      steps.push(() => resolve(make()));
    });
  const happens = (chance: number): boolean => !healed && luck.happens(chance);

  async function through<T>(ask: () => Promise<Result<T>>): Promise<Result<T>> {
    await later(() => null);
    if (happens(lost.question)) return silence();
    if (happens(lost.twice)) await ask();
    const answer = await ask();
    if (happens(lost.answer)) return later(() => silence());
    return later(() => answer);
  }

  return {
    over: (remote) => ({
      push: (entries) => through(() => remote.push(entries)),
      pull: (cursor, limit) => through(() => remote.pull(cursor, limit)),
    }),
    waiting: () => steps.length,
    deliver: () => {
      const [step] = steps.splice(luck.whole(0, Math.max(0, steps.length - 1)), 1);
      step?.();
    },
    heal: () => {
      healed = true;
    },
  };
}

function silence(): Result<never> {
  return bad({ code: 'no-answer', path: 'server', found: 'nothing', expected: 'an answer' });
}
