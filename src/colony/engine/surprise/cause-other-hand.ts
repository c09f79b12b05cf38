/**
 * Counted by another hand, or in another manner: nothing befell the colony, but nothing is known any more of how
 * what was read stands to what is there, beyond how observers and manners of counting differ. Eggs, cells and the queen do not depend on
 * it; brood sealed and open is one reading of eighths, so that both are off alike.
 */
import { nextNormal } from '../../../numbers/streams.ts';
import { eyeGapAt, eyes, eyeVarianceAt, part } from '../particle.ts';
import type { CauseRule } from './cause.ts';

export const otherHand: CauseRule = {
  cause: 'counted by another hand',
  prior: ({ surprise }) => surprise.otherHand,
  change: ({ engine, surprise }, values, at, stream) => {
    const { middle } = engine.eyes;
    const spread = engine.eyes.spread.map((sd) => sd * surprise.handTimes);
    const alike = nextNormal(stream);
    eyes.forEach((name, i) => {
      const isBrood = /^(sealed|open)/.test(name);
      values[at + part[name]] = middle[i]! + (isBrood ? spread[i]! * alike : 0);
      values[at + eyeGapAt + i] = 0;
      values[at + eyeVarianceAt + i] = isBrood ? 0 : spread[i]! ** 2;
    });
    return 0;
  },
  reads: ['bees', 'bars', 'sealed', 'open', 'honeyKg', 'built'],
};
