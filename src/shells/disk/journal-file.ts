/**
 * A journal as a file of JSON lines. Reading gives the text, or one issue; writing puts the new file
 * in place only when it is whole and on disk, so that a cut leaves the old one.
 */
import { closeSync, fsyncSync, openSync, readFileSync, renameSync, rmSync, statSync, writeSync } from 'node:fs';
import type { Entry } from '../../journal/entry.ts';
import { linesOf } from '../../journal/lines.ts';
import { bad, good, type Result } from '../../numbers/result.ts';
import { reason } from './data-folder.ts';

/** What fits one text in memory: about a million entries. */
export const largestFile = 500 * 1024 * 1024;

export function readJournalFile(path: string): Result<string> {
  try {
    const { size } = statSync(path);
    if (size > largestFile)
      return bad({ code: 'file-too-large', path, found: `${size} bytes`, expected: `at most ${largestFile}` });
    const text = new TextDecoder('utf-8', { fatal: true }).decode(readFileSync(path));
    return good(text);
  } catch (error) {
    if (error instanceof TypeError)
      return bad({ code: 'not-utf-8', path, found: 'bytes that are no UTF-8 text', expected: 'JSON lines in UTF-8' });
    return bad({ code: 'file-unreadable', path, found: reason(error), expected: 'a file that can be read' });
  }
}

export function writeJournalFile(path: string, entries: readonly Entry[]): Result<null> {
  const part = `${path}.part`;
  try {
    const file = openSync(part, 'w');
    try {
      const bytes = Buffer.from(linesOf(entries));
      for (let done = 0; done < bytes.length;) done += writeSync(file, bytes, done);
      fsyncSync(file);
    } finally {
      closeSync(file);
    }
    renameSync(part, path);
    return good(null);
  } catch (error) {
    rmSync(part, { force: true });
    return bad({ code: 'file-unwritable', path, found: reason(error), expected: 'a file that can be written' });
  }
}
