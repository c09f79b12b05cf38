/** A colony that loses its virgin late has been without a queen's eggs for weeks: its workers lay soon. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { newStream } from '../../numbers/streams.ts';
import { stateIndex } from '../queen-chain/states.ts';
import { may, plainParticle, setupOn } from './for-tests.ts';
import { colonyModel } from './model.ts';
import { broodDays, part } from './particle.ts';

const { constants: c } = setupOn();

/** Days in the state of none when a broodless colony enters it, and days from then until workers lay; null where she was not lost. */
function lostVirgin(seed: number): { readonly entered: number; readonly until: number | null } | null {
  const values = plainParticle(c, 12_000, 0);
  values[part.queen] = stateIndex.virgin;
  let entered: { readonly days: number; readonly on: number } | null = null;
  for (let day = may; day < may + 70; day += 1) {
    colonyModel.step(c, day, values, 0, newStream(seed, 1, 0, day));
    const state = values[part.queen]!;
    if (state !== stateIndex.virgin && state !== stateIndex.none && state !== stateIndex['laying workers']) return null;
    if (entered === null && state === stateIndex.none) entered = { days: values[part.queenDays]!, on: day };
    if (entered !== null && state === stateIndex['laying workers']) return { entered: entered.days, until: day - entered.on };
  }
  return entered === null ? null : { entered: entered.days, until: null };
}

test('E154 who loses a virgin after weeks without brood has laying workers as soon as one who lost her queen so long ago', () => {
  const lost = Array.from({ length: 400 }, (_, seed) => lostVirgin(seed)).flatMap((one) => one ?? []);
  assert.ok(lost.length >= 50, `${lost.length} were lost`);
  assert.ok(lost.every(({ entered }) => entered === broodDays - c.chain.rescueDays));
  const soon = lost.filter(({ until }) => until !== null && until <= 14).length / lost.length;
  assert.ok(soon > 0.5, `${soon} within two weeks`);
});
