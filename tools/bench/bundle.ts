/**
 * What the phone loads before the first screen stands: the page's script with everything that it
 * imports at once, compressed. Parts that come when they are asked for, and the engine's worker, which
 * works beside the screen, are counted apart.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { gzipSync } from 'node:zlib';

export interface BundleSize {
  readonly firstLoadKb: number;
  readonly workerKb: number;
  readonly allScriptsKb: number;
}

const folder = 'build/web';
const bytesInKb = 1024;

export function bundleSize(): BundleSize {
  const page = readFileSync(join(folder, 'index.html'), 'utf8');
  const first = new Set<string>();
  const visit = (path: string): void => {
    if (first.has(path)) return;
    first.add(path);
    for (const found of readFileSync(join(folder, path), 'utf8').matchAll(/\b(?:import|from)\s*["']\.\/([\w.-]+\.js)["']/g)) {
      visit(`assets/${found[1] ?? ''}`);
    }
  };
  for (const found of page.matchAll(/(?:src|href)="\/(assets\/[\w.-]+\.js)"/g)) visit(found[1] ?? '');
  const scripts = readdirSync(join(folder, 'assets')).filter((name) => name.endsWith('.js'));
  const worker = scripts.filter((name) => name.startsWith('engine-worker'));
  return {
    firstLoadKb: zippedKb([...first]),
    workerKb: zippedKb(worker.map((name) => `assets/${name}`)),
    allScriptsKb: zippedKb(scripts.map((name) => `assets/${name}`)),
  };
}

function zippedKb(paths: readonly string[]): number {
  return paths.reduce((sum, path) => sum + gzipSync(readFileSync(join(folder, path))).length, 0) / bytesInKb;
}

function main(): void {
  const { firstLoadKb, workerKb, allScriptsKb } = bundleSize();
  const kb = (value: number) => `${value.toFixed(0)} KB`;
  console.log(
    `first-load script ${kb(firstLoadKb)} gzip (aim: at most 180 KB); ` +
      `the worker of the engine beside it ${kb(workerKb)}; all scripts ${kb(allScriptsKb)}`,
  );
}

if (process.argv[1] !== undefined && import.meta.url === pathToFileURL(process.argv[1]).href) main();
