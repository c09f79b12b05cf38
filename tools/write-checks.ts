/** Writes docs/checks.md; with `--check` exit code 1 when it is stale. */
import { checksPage } from './checks-page.ts';
import { writePage } from './write-page.ts';

writePage('docs/checks.md', checksPage(), process.argv.slice(2));
