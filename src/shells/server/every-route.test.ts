/** Every route under bad input made by dice: a refusal names the field, and nothing stored is lost. */
import assert from 'node:assert/strict';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import fc from 'fast-check';
import { canonicalText } from '../../journal/canonical.ts';
import { anyEntry, filled } from '../../journal/sample.contract.ts';
import { issuesIn, jarServer } from './jar-server.contract.ts';
import type { RunningServer } from './start-server.ts';

const folder = mkdtempSync(join(tmpdir(), 'festoon-routes-'));
let server: RunningServer;
before(async () => (server = await jarServer(folder)));
after(async () => {
  await server.close();
  rmSync(folder, { recursive: true });
});

async function stored(): Promise<ReadonlyMap<string, string>> {
  const page = (await (await fetch(`${server.url}/api/entries?limit=2000`)).json()) as { rows: { entry: { id: string } }[] };
  return new Map(page.rows.map((row) => [row.entry.id, canonicalText(row.entry)]));
}

/** Anything that can be sent, and things that are nearly right. */
const anyBody = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 60 }),
  fc.json({ maxDepth: 4 }),
  fc.jsonValue({ maxDepth: 3 }).map((value) => JSON.stringify({ entries: value })),
  fc.array(fc.jsonValue({ maxDepth: 3 }), { maxLength: 3 }).map((values) => JSON.stringify({ entries: values })),
  fc
    .tuple(
      anyEntry(30),
      fc.constantFrom('id', 'at', 'noted', 'by', 'kind', 'version', 'body', 'yard', 'corrects'),
      fc.jsonValue({ maxDepth: 2 }),
    )
    .map(([entry, field, value]) => JSON.stringify({ entries: [filled(99, 'z', 1), { ...entry, [field]: value }] })),
);

test('S18 whatever is sent to a route is answered in order: taken whole, or refused with issues and nothing changed', () =>
  fc.assert(
    fc.asyncProperty(fc.constantFrom('/api/entries', '/api/pair', '/api/hello', '/api/else'), anyBody, async (path, body) => {
      const before = await stored();
      const answer = await fetch(server.url + path, { method: 'POST', body, headers: { 'Content-Type': 'application/json' } });
      assert.ok(answer.status < 500, `${answer.status}`);
      const now = await stored();
      if (answer.status === 200) {
        const { added } = (await answer.json()) as { added: readonly string[] };
        assert.equal(now.size, before.size + added.length);
      } else {
        await issuesIn(answer);
        assert.equal(now.size, before.size);
      }
      for (const [id, text] of before) assert.equal(now.get(id), text);
    }),
    { numRuns: 90 },
  ));

test('S19 whatever is asked of a route is a page or a refusal with issues', () =>
  fc.assert(
    fc.asyncProperty(
      fc.constantFrom('/api/entries', '/api/hello', '/api', '/x.js'),
      fc.webQueryParameters(),
      fc.dictionary(fc.constantFrom('after', 'limit', 'x'), fc.oneof(fc.string(), fc.integer().map(String))),
      async (path, loose, named) => {
        const answer = await fetch(`${server.url}${path}?${loose}&${new URLSearchParams(named).toString()}`);
        assert.ok(answer.status < 500, `${answer.status}`);
        if (answer.status !== 200) await issuesIn(answer);
      },
    ),
    { numRuns: 100 },
  ));
