/**
 * The tables of the server's database and how an older one is brought up to date. Everything is text
 * but the numbers of arrival and version, and no query looks inside the JSON, so that the same tables
 * and queries fit a larger database later.
 */
import type { Generated, Kysely, Transaction } from 'kysely';
import { bad, good, type Result } from '../../numbers/result.ts';

export interface Tables {
  readonly entries: {
    readonly seq: Generated<number>;
    readonly id: string;
    readonly yard: string;
    readonly at: string;
    readonly noted: string;
    readonly by: string;
    readonly kind: string;
    readonly version: number;
    readonly corrects: string | null;
    readonly hash: string;
    readonly json: string;
    /** The opening of the database at which it arrived. */
    readonly run: string;
  };
  readonly facts: { readonly name: string; readonly value: string };
  readonly pairings: { readonly hash: string; readonly paired: string };
}

type Step = (db: Transaction<Tables>) => Promise<void>;

/** One step a version, never changed once it was released; the last one is what this program needs. */
const steps: readonly Step[] = [
  async (db) => {
    await db.schema
      .createTable('entries')
      .addColumn('seq', 'integer', (column) => column.primaryKey().autoIncrement())
      .addColumn('id', 'text', (column) => column.notNull().unique())
      .addColumn('yard', 'text', (column) => column.notNull())
      .addColumn('at', 'text', (column) => column.notNull())
      .addColumn('noted', 'text', (column) => column.notNull())
      .addColumn('by', 'text', (column) => column.notNull())
      .addColumn('kind', 'text', (column) => column.notNull())
      .addColumn('version', 'integer', (column) => column.notNull())
      .addColumn('corrects', 'text')
      .addColumn('hash', 'text', (column) => column.notNull())
      .addColumn('json', 'text', (column) => column.notNull())
      .execute();
    await db.schema.createIndex('entries_by_yard').on('entries').columns(['yard', 'seq']).execute();
    await db.schema
      .createTable('pairings')
      .addColumn('hash', 'text', (column) => column.primaryKey())
      .addColumn('paired', 'text', (column) => column.notNull())
      .execute();
  },
  async (db) => {
    await db.schema
      .alterTable('entries')
      .addColumn('run', 'text', (column) => column.notNull().defaultTo(''))
      .execute();
  },
];

export const schemaVersion = steps.length;

/** Brings the tables up to date; refuses, and changes nothing, when they come from a newer program. */
export async function migrate(db: Kysely<Tables>, freshEpoch: string): Promise<Result<{ readonly epoch: string }>> {
  return db.transaction().execute(async (transaction) => {
    await transaction.schema
      .createTable('facts')
      .ifNotExists()
      .addColumn('name', 'text', (column) => column.primaryKey())
      .addColumn('value', 'text', (column) => column.notNull())
      .execute();
    const rows = await transaction.selectFrom('facts').selectAll().execute();
    const facts = new Map(rows.map((row) => [row.name, row.value]));
    const version = Number(facts.get('schema') ?? 0);
    if (!Number.isInteger(version) || version > schemaVersion) {
      return bad({
        code: 'database-newer',
        path: 'festoon.db',
        found: `a database of version ${facts.get('schema')}`,
        expected: `at most ${schemaVersion}: use the program that wrote it, or a later one`,
      });
    }
    for (const step of steps.slice(version)) await step(transaction);
    const epoch = facts.get('epoch') ?? freshEpoch;
    if (version < schemaVersion) await keep(transaction, 'schema', String(schemaVersion));
    if (!facts.has('epoch')) await keep(transaction, 'epoch', epoch);
    return good({ epoch });
  });
}

async function keep(db: Transaction<Tables>, name: string, value: string): Promise<void> {
  await db
    .insertInto('facts')
    .values({ name, value })
    .onConflict((conflict) => conflict.column('name').doUpdateSet({ value }))
    .execute();
}
