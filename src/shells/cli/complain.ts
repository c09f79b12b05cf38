/** Issues to standard error, one line each. */
import { type Issue, issueLine } from '../../numbers/result.ts';
import type { Out } from './command.ts';

export function complainAll(out: Out, issues: readonly Issue[]): void {
  for (const issue of issues) out.complain(issueLine(issue));
}
