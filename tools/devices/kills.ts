/** `npm run kills -- [--kills N] [--seed S]`: half of N kills for the server while entries are pushed, half for the page in a visit. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { killWhilePushing, missingIn } from '../../src/shells/server/killed-server.contract.ts';
import { chanceOf } from '../world/chance.ts';
import { killPages } from './kill-page.ts';

const { values } = parseArgs({ options: { kills: { type: 'string', default: '200' }, seed: { type: 'string', default: '1' } } });
const [kills, seed] = [Number(values.kills), Number(values.seed)];
if (!Number.isInteger(kills) || kills < 2 || !Number.isInteger(seed)) {
  console.error(`kills: ${values.kills}, seed: ${values.seed}; whole numbers are expected, two kills or more`);
  process.exit(2);
}
const luck = chanceOf(seed, 'kills');
const half = Math.floor(kills / 2);

const folder = mkdtempSync(join(tmpdir(), 'festoon-kills-'));
const pushes = { last: 0, confirmed: new Set<string>() };
let missing = 0;
for (let kill = 0; kill < half; kill += 1) {
  await killWhilePushing(folder, pushes, luck.between(0, 250));
  missing += (await missingIn(folder, pushes.confirmed)).length;
}
rmSync(folder, { recursive: true });
console.log(`server: killed ${half} times, ${pushes.confirmed.size} entries confirmed, ${missing} of them missing`);

const pages = await killPages(kills - half, luck);
console.log(`page: killed ${pages.kills} times, ${pages.shown} bars in the journal, ${pages.lost} shown as put down and nowhere`);
process.exit(missing + pages.lost > 0 ? 1 : 0);
