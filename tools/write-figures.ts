/** Writes docs/figures.md; with `--check` exit code 1 when it is stale. */
import { figuresPage } from './figures-page.ts';
import { writePage } from './write-page.ts';

writePage('docs/figures.md', figuresPage(), process.argv.slice(2));
