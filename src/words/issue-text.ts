/** A fault of what came from outside, as a sentence: where, what was found, what is expected. */
import type { Issue } from '../numbers/result.ts';
import { isTextKey, templateOf } from './catalogue.ts';
import { fill } from './fill.ts';
import { type Manner, plainManner } from './say.ts';
import { slotNames } from './template.ts';

/** The sentence of the issue's own code, or path, found and expected as they are. */
export function issueText(issue: Issue, manner: Manner = plainManner): string {
  const path = issue.path === '' ? fill('issue.whole', {}, manner) : issue.path;
  const where = issue.entry === undefined ? path : fill('issue.at-entry', { where: path, entry: issue.entry }, manner);
  const own = `issue.${issue.code}`;
  const key = isTextKey(own) ? own : 'issue.other';
  const facts = { where, found: issue.found, expected: issue.expected };
  const needed = slotNames(templateOf(key, manner));
  return fill(key, Object.fromEntries(Object.entries(facts).filter(([name]) => needed.has(name))), manner);
}
