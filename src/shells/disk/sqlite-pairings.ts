/** Devices that were paired with this server, kept as hashes of their secrets, so that the file alone opens nothing. */
import type { Kysely } from 'kysely';
import type { Instant } from '../../journal/entry.ts';
import type { Tables } from './sqlite-schema.ts';

export interface Pairings {
  keep(hash: string, paired: Instant): Promise<void>;
  has(hash: string): Promise<boolean>;
}

export function sqlitePairings(db: Kysely<Tables>): Pairings {
  return {
    keep: async (hash, paired) => {
      await db
        .insertInto('pairings')
        .values({ hash, paired })
        .onConflict((conflict) => conflict.doNothing())
        .execute();
    },
    has: async (hash) =>
      (await db.selectFrom('pairings').select('hash').where('hash', '=', hash).executeTakeFirst()) !== undefined,
  };
}
