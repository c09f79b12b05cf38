/**
 * How a device that is not this machine gets in: the server shows eight digits on its own screen,
 * the device sends them once and gets a secret in a cookie. A code serves one device. After five
 * wrong tries in a minute nobody may try until the minute is over; after twenty there is a new code.
 */
import { createHash, randomBytes, randomInt, timingSafeEqual } from 'node:crypto';
import { bad, good, type Result } from '../../numbers/result.ts';
import type { Pairings } from '../disk/sqlite-pairings.ts';

export const cookieName = 'festoon-device';

export interface PairingDesk {
  /** The code to be shown on the server's screen now. */
  code(): string;
  /** Trades the code for a secret. */
  pair(code: string): Promise<Result<string>>;
  knows(secret: string): Promise<boolean>;
}

const triesAMinute = 5;
const triesACode = 20;

/** `show` is called with every new code but the first. */
export function pairingDesk(pairings: Pairings, now: () => Date, show: (code: string) => void): PairingDesk {
  let code = newCode();
  let wrong: number[] = [];
  let wrongForCode = 0;

  function renew(): void {
    code = newCode();
    wrongForCode = 0;
    show(code);
  }

  return {
    code: () => code,
    pair: async (tried) => {
      const at = now().getTime();
      wrong = wrong.filter((time) => at - time < 60_000);
      if (wrong.length >= triesAMinute) {
        return bad({
          code: 'too-many-tries',
          path: 'code',
          found: `${wrong.length} wrong codes in a minute`,
          expected: 'a minute of patience',
        });
      }
      if (!same(tried, code)) {
        wrong.push(at);
        wrongForCode += 1;
        if (wrongForCode >= triesACode) renew();
        return bad({
          code: 'wrong-code',
          path: 'code',
          found: 'another code',
          expected: "the eight digits on the server's screen",
        });
      }
      const secret = randomBytes(32).toString('base64url');
      renew();
      await pairings.keep(hashOf(secret), `${now().toISOString().slice(0, 19)}Z`);
      return good(secret);
    },
    knows: (secret) => pairings.has(hashOf(secret)),
  };
}

function newCode(): string {
  return String(randomInt(100_000_000)).padStart(8, '0');
}

function hashOf(text: string): string {
  return createHash('sha256').update(text).digest('hex');
}

function same(a: string, b: string): boolean {
  return timingSafeEqual(createHash('sha256').update(a).digest(), createHash('sha256').update(b).digest());
}
