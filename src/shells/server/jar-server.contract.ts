/** A server with the small test kinds, for tests in this process and, run as a program, in one that can be killed. */
import { pathToFileURL } from 'node:url';
import assert from 'node:assert/strict';
import { jarKinds } from '../../journal/sample.contract.ts';
import type { Issue } from '../../numbers/result.ts';
import { type RunningServer, type ServerOptions, startServer } from './start-server.ts';

export async function jarServer(dataDir: string, more: Partial<ServerOptions<never>> = {}): Promise<RunningServer> {
  const started = await startServer({
    port: 0,
    host: '127.0.0.1',
    dataDir,
    staticDir: `${dataDir}/app`,
    version: '0.0.0-test',
    kinds: jarKinds,
    now: () => new Date('2020-06-01T12:00:00Z'),
    trouble: (error) => console.error(error),
    ...more,
  });
  assert.ok(started.ok, JSON.stringify(started));
  return started.value;
}

/** The issues of a refusal; fails when the answer is not one with a field and what is expected. */
export async function issuesIn(answer: Response): Promise<readonly Issue[]> {
  const { issues } = (await answer.json()) as { readonly issues: readonly Issue[] };
  assert.ok(Array.isArray(issues) && issues.length > 0);
  for (const issue of issues) {
    assert.match(issue.code, /^[a-z0-9-]+$/);
    assert.ok(typeof issue.path === 'string' && issue.found.length > 0 && issue.expected.length > 0, JSON.stringify(issue));
  }
  return issues;
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const server = await jarServer(process.argv[2] ?? '');
  console.log(server.url);
}
