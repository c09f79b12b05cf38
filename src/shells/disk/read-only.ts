/**
 * The entries of a data folder without holding it: what commands that only read use, so that they
 * work while the server runs. A database from a newer version is refused like everywhere.
 */
import Database from 'better-sqlite3';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import type { Entry } from '../../journal/entry.ts';
import { bad, good, type Result } from '../../numbers/result.ts';
import { reason } from './data-folder.ts';
import { schemaVersion } from './sqlite-schema.ts';

export function readEntries(folder: string): Result<readonly Entry[]> {
  const file = join(folder, 'festoon.db');
  if (!existsSync(file)) {
    return bad({
      code: 'no-journal',
      path: folder,
      found: 'no journal',
      expected: 'a folder that festoon serve or import has written',
    });
  }
  let database: Database.Database | null = null;
  try {
    database = new Database(file, { readonly: true, timeout: 2000 });
    const version = Number(database.prepare("select value from facts where name = 'schema'").pluck().get());
    if (version > schemaVersion) {
      return bad({
        code: 'database-newer',
        path: file,
        found: `a database of version ${version}`,
        expected: `at most ${schemaVersion}`,
      });
    }
    const rows = database.prepare('select json from entries order by seq').pluck().all() as string[];
    return good(rows.map((json) => JSON.parse(json) as Entry));
  } catch (thrown) {
    return bad({ code: 'database-unusable', path: file, found: reason(thrown), expected: 'a database that this program wrote' });
  } finally {
    database?.close();
  }
}
