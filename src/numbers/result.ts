/**
 * The answer of anything that reads input from outside: a value, or a list of issues.
 * An issue holds facts only; the sentence for the keeper is made in `words`.
 */
export interface Issue {
  /** What is wrong, as a stable kebab-case code ("unknown-field", "comb-in-two-places"). */
  readonly code: string;
  /** Where: the field, dotted, with the entry id first when there is one ("faces.0.brood8"). */
  readonly path: string;
  /** What was found, already as short text. */
  readonly found: string;
  /** What is expected, as short text. */
  readonly expected: string;
  /** The entry at fault, when the input is a journal. */
  readonly entry?: string;
}

export type Result<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly issues: readonly Issue[] };

export function good<T>(value: T): Result<T> {
  return { ok: true, value };
}

export function bad<T = never>(...issues: Issue[]): Result<T> {
  return { ok: false, issues };
}

/** One line a fault, as the commands print it: `field: what was found; what is expected`. */
export function issueLine(issue: Issue): string {
  const where = issue.entry === undefined ? issue.path : `${issue.entry} ${issue.path}`;
  return `${where}: ${issue.found}; ${issue.expected}`;
}
