/**
 * Judges one push: what was confirmed must be good in the eyes of the second validator, what was
 * refused must be wrong in its eyes or for a reason that a schema cannot say, and a refusal must name
 * field and expectation.
 */
import type { Issue } from '../../src/numbers/result.ts';
import type { Judge } from './second-validator.ts';

export interface Tally {
  pushes: number;
  confirmed: number;
  refused: number;
  requests: number;
  files: number;
  /** Refusals by code. */
  readonly codes: Record<string, number>;
  /** What should not be; empty is good. */
  readonly findings: string[];
}

export interface Judged {
  readonly judge: Judge;
  /** Sorted JSON text of what was confirmed, by id. */
  readonly kept: Map<string, string>;
  readonly today: string;
  readonly tally: Tally;
}

export function newTally(): Tally {
  return { pushes: 0, confirmed: 0, refused: 0, requests: 0, files: 0, codes: {}, findings: [] };
}

/** Reasons that no schema can say; `wrong-value` stands for the checks of bodies that are functions. */
const beyondSchema: ReadonlySet<string> = new Set([
  'ahead-of-now',
  'duplicate-id',
  'missing',
  'corrects-itself',
  'unknown-field',
  'too-deep',
  'endless-number',
  'broken-text',
  'entry-too-large',
  'wrong-value',
]);

export async function judgePush(text: string, answer: Response, judged: Judged): Promise<void> {
  const { tally } = judged;
  tally.pushes += 1;
  const told = (await answer.json().catch(() => null)) as { readonly issues?: readonly Issue[] } | null;
  if (answer.status === 200) {
    tally.confirmed += 1;
    judgeConfirmed(text, judged);
    return;
  }
  tally.refused += 1;
  if (answer.status >= 500) tally.findings.push(`status ${answer.status} for ${text.slice(0, 300)}`);
  const issues = told?.issues ?? [];
  if (issues.length === 0) tally.findings.push(`status ${answer.status} without an issue`);
  for (const issue of issues) {
    tally.codes[issue.code] = (tally.codes[issue.code] ?? 0) + 1;
    if (issue.path === '' || issue.found === '' || issue.expected === '')
      tally.findings.push(`an issue that says nothing: ${JSON.stringify(issue)}`);
  }
  judgeRefused(text, issues, judged);
}

function judgeConfirmed(text: string, { judge, kept, today, tally }: Judged): void {
  const entries = entriesIn(text);
  if (entries === null) {
    tally.findings.push(`confirmed what is no batch: ${text.slice(0, 200)}`);
    return;
  }
  for (const entry of entries) {
    const { id, kind, version, body, at } = entry;
    const shown = JSON.stringify(entry).slice(0, 400);
    if (!judge.envelope(entry)) tally.findings.push(`confirmed against the second validator (envelope): ${shown}`);
    if (judge.body(String(kind), Number(version), body) === false)
      tally.findings.push(`confirmed against the second validator (body): ${shown}`);
    if (typeof at === 'string' && at.slice(0, 10) > today) tally.findings.push(`confirmed ahead of now: ${shown}`);
    const sorted = sortedText(entry);
    const before = kept.get(String(id));
    if (before !== undefined && before !== sorted) tally.findings.push(`confirmed other content under a known id: ${shown}`);
    kept.set(String(id), sorted);
  }
}

function judgeRefused(text: string, issues: readonly Issue[], { judge, tally }: Judged): void {
  const entries = entriesIn(text);
  if (entries === null) return;
  const good = entries.every(
    (entry) => judge.envelope(entry) && judge.body(String(entry['kind']), Number(entry['version']), entry['body']) !== false,
  );
  const beyond = issues.every((issue) => beyondSchema.has(issue.code));
  if (good && !beyond)
    tally.findings.push(`refused against the second validator: ${JSON.stringify(issues[0])} for ${text.slice(0, 400)}`);
}

type Loose = Readonly<Record<string, unknown>>;

function entriesIn(text: string): readonly Loose[] | null {
  try {
    const value = JSON.parse(text) as { readonly entries?: unknown } | null;
    return Array.isArray(value?.entries)
      ? value.entries.map((entry: unknown) => (typeof entry === 'object' && entry !== null ? (entry as Loose) : {}))
      : null;
  } catch {
    return null;
  }
}

/** Fields sorted, written by this file's own hand and not by the program's canonical text. */
function sortedText(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(sortedText).join(',')}]`;
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const record = value as Loose;
  return `{${Object.keys(record)
    .sort()
    .map((key) => `${JSON.stringify(key)}:${sortedText(record[key])}`)
    .join(',')}}`;
}
