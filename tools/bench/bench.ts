/**
 * `npm run bench`: every benchmark one after the other, each a script of its own that prints its
 * figures with the aim beside them. Nothing fails on a time; the program must have been built.
 */
import { spawnSync } from 'node:child_process';
import { cpus, loadavg } from 'node:os';
import { fileURLToPath } from 'node:url';

const all = ['fold', 'server', 'bundle', 'open-round', 'tap', 'years', 'film', 'engine', 'kept', 'model-day', 'comb-match'];

const chosen = process.argv.slice(2);
console.log(`${cpus().length} cores, load ${(loadavg()[0] ?? 0).toFixed(1)}, node ${process.version}`);
for (const name of chosen.length > 0 ? chosen : all) {
  const script = fileURLToPath(new URL(`./${name}.ts`, import.meta.url));
  console.log(`\n${name}`);
  spawnSync(process.execPath, ['--import', 'tsx', script], { stdio: 'inherit' });
}
