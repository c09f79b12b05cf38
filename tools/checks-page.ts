/** The page docs/checks.md: what counts, what is circular, and where sources differ from the figure we chose. */
import { type Verdict, verdictOf } from '../checks/answer.ts';
import { type Check, checkTopics, type Origin } from '../checks/check.ts';
import { checks } from '../checks/list.ts';
import { sourceLink } from './figures-page.ts';
import { markdownTable, short } from './write-page.ts';

const judged = checks.map((check) => ({ check, verdict: verdictOf(check) }));

type Judged = (typeof judged)[number];

export function checksPage(): string {
  const differing = judged.filter(({ check }) => check.differs !== undefined);
  const circular = judged.filter(({ check }) => check.circular && check.differs === undefined);
  const counting = judged.filter(({ check }) => !check.circular && check.differs === undefined);
  return [
    '# Checks',
    'This page is written by `npm run pages` from `checks`; do not edit it. `npm run checks` prints the same and fails ' +
      'when a check does not stand.',
    `${checks.length} checks: ${counting.length} count, ${circular.length} are circular, ${differing.length} are known to differ.`,
    "Where the question is whether a published value lies in our range, *ours* is the figure's value and the error is the " +
      'distance from the nearer end of the range: 0 inside it.',
    '## Where sources differ',
    'These values do not agree with the figure that was chosen; each says why, and is a fault the day it agrees.',
    markdownTable(
      ['check', 'what', 'theirs', 'ours', 'from', 'why they differ'],
      differing.map(({ check, verdict }) => [
        `\`${check.id}\``,
        check.what,
        theirs(check),
        oursText(verdict),
        originText(check.origin),
        check.differs ?? '',
      ]),
    ),
    ...checkTopics.flatMap((topic) =>
      section(
        topic,
        counting.filter(({ check }) => check.topic === topic),
      ),
    ),
    '## Circular',
    'The expected value comes from the row that our figure comes from. These show only that nothing was mistyped, and count for nothing.',
    table(circular),
  ]
    .join('\n\n')
    .concat('\n');
}

function section(topic: string, rows: readonly Judged[]): readonly string[] {
  return rows.length === 0 ? [] : [`## ${topic.charAt(0).toUpperCase()}${topic.slice(1)}`, table(rows)];
}

function table(rows: readonly Judged[]): string {
  return markdownTable(
    ['check', 'what', 'theirs', 'ours', 'error', 'tolerance', 'from', 'why this tolerance'],
    rows.map(({ check, verdict }) => [
      `\`${check.id}\``,
      check.what,
      theirs(check),
      oursText(verdict),
      errorText(verdict),
      toleranceText(check),
      originText(check.origin),
      check.why,
    ]),
  );
}

function theirs(check: Check): string {
  return typeof check.expected === 'number' ? `${short(check.expected)} ${check.unit}` : check.expected;
}

function oursText({ ours }: Verdict): string {
  return typeof ours === 'number' ? short(ours) : (ours ?? 'no answer');
}

/** Rounding of the machine prints as 0, so that the page is the same everywhere. */
function errorText({ error, share }: Verdict): string {
  if (error === null) return '';
  const size = Math.abs(error) < 1e-9 ? '0' : short(Number(error.toPrecision(3)));
  return share === null || size === '0' ? size : `${size} (${Math.round(100 * share)} %)`;
}

function toleranceText(check: Check): string {
  if (check.ask.kind === 'range') return 'in the range';
  return check.tolerance === 0 ? 'exact' : short(check.tolerance);
}

function originText(origin: Origin): string {
  switch (origin.kind) {
    case 'published':
      return `${sourceLink(origin.source, 'figures.md')}, ${origin.sureness}: ${origin.where}`;
    case 'common practice':
      return 'common practice';
    case 'worked apart':
      return `worked apart: ${origin.how}`;
  }
}
