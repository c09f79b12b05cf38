/**
 * The folder that holds the server's data: made when it is missing, tried for writing, and held by
 * one program at a time. The hold is a lock of the operating system on a small database file, so it
 * ends with the process, however that ends; a file with a process number in it would outlive a crash.
 */
import Database from 'better-sqlite3';
import { existsSync, mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { bad, good, type Result } from '../../numbers/result.ts';

export interface HeldFolder {
  readonly path: string;
  readonly release: () => void;
}

export function holdFolder(path: string): Result<HeldFolder> {
  const probe = join(path, `.probe-${process.pid}`);
  try {
    makeFolder(resolve(path));
    writeFileSync(probe, '');
    rmSync(probe);
  } catch (error) {
    return bad({
      code: 'folder-unwritable',
      path,
      found: reason(error),
      expected: 'a folder that this program may write to (FESTOON_DATA names another)',
    });
  }
  try {
    const lock = new Database(join(path, 'lock.db'), { timeout: 0 });
    try {
      lock.exec('BEGIN EXCLUSIVE');
    } catch (error) {
      lock.close();
      throw error;
    }
    return good({ path, release: () => lock.close() });
  } catch (error) {
    if (!reason(error).startsWith('SQLITE_BUSY')) {
      return bad({
        code: 'folder-unwritable',
        path: join(path, 'lock.db'),
        found: reason(error),
        expected: 'a lock file that can be written',
      });
    }
    return bad({
      code: 'folder-in-use',
      path,
      found: 'another running program holds it',
      expected: 'one program for one folder: end the other, or name another folder',
    });
  }
}

/** Node's own recursive mkdir never returns where a file system answers ENOENT to every new name (Node 20, /proc), so it is not used. */
function makeFolder(path: string): void {
  if (existsSync(path)) return;
  makeFolder(dirname(path));
  mkdirSync(path);
}

/** The system's own short code (EACCES, SQLITE_BUSY), or the message. */
export function reason(error: unknown): string {
  if (error instanceof Error) return 'code' in error && typeof error.code === 'string' ? error.code : error.message;
  return String(error);
}
