/** The page docs/figures.md: every figure by topic, with range, unit, condition and basis, then every source. */
import { checks } from '../checks/list.ts';
import type { Basis, Figure, Topic } from '../src/figures/figure.ts';
import { topics } from '../src/figures/figure.ts';
import { figures } from '../src/figures/list.ts';
import { type Source, sources, type SourceKey } from '../src/figures/sources.ts';
import { markdownTable, short } from './write-page.ts';

const all: readonly Figure[] = figures;
const sourceList: readonly (readonly [string, Source])[] = Object.entries(sources);

export function figuresPage(): string {
  return [
    '# Figures',
    'This page is written by `npm run pages` from `src/figures`; do not edit it.',
    `The program rests on ${all.length} figures: ${tally()}. A range holds about eight yards of ten; where a source gives no spread ` +
      'the range is ours and the note says so. A figure that is derived names what it is derived from; *our choice* gives the reason.',
    ...topics.flatMap(topicSection),
    '## Sources',
    "A title in square brackets is not the work's own: it says what the work is about.",
    sourceList.map(sourceLine).join('\n'),
  ]
    .join('\n\n')
    .concat('\n');
}

function topicSection(topic: Topic): readonly string[] {
  const own = all.filter((figure) => figure.topic === topic);
  if (own.length === 0) return [];
  const rows = own.map((figure) => [
    `\`${figure.key}\``,
    figure.title,
    short(figure.value),
    rangeText(figure),
    figure.unit,
    figure.when,
    basisText(figure.basis),
    figure.note ?? '',
  ]);
  return [
    `## ${topic.charAt(0).toUpperCase()}${topic.slice(1)}`,
    markdownTable(['key', 'what', 'value', 'range', 'unit', 'holds for', 'basis', 'note'], rows),
  ];
}

function rangeText({ low, high }: Figure): string {
  return low === high ? '' : `${short(low)}–${short(high)}`;
}

function basisText(basis: Basis): string {
  switch (basis.kind) {
    case 'source':
      return `${sourceLink(basis.source)}, ${basis.sureness}: ${basis.where}`;
    case 'derived':
      return `derived from ${basis.from.map((key) => `\`${key}\``).join(', ')}: ${basis.how}`;
    case 'common practice':
      return basis.note === undefined ? 'common practice' : `common practice: ${basis.note}`;
    case 'our choice':
      return `our choice: ${basis.why}`;
  }
}

export function sourceLink(key: SourceKey, page = ''): string {
  const { who, year }: Source = sources[key];
  return `[${who}${year === null ? '' : ` ${year}`}](${page}#${key})`;
}

function sourceLine([key, { who, year, title, where, doi }]: readonly [string, Source]): string {
  const count = all.filter(({ basis }) => basis.kind === 'source' && basis.source === key).length;
  const checked = checks.filter(({ origin }) => origin.kind === 'published' && origin.source === key).length;
  const date = year === null ? 'no date' : `${year}`;
  const link = doi === undefined ? '' : `, [doi:${doi}](https://doi.org/${doi})`;
  return (
    `- <a id="${key}"></a>${who} (${date}). ${title.replaceAll('[', '\\[').replaceAll(']', '\\]')}. ${where}${link}. ` +
    `*${count} ${count === 1 ? 'figure' : 'figures'}, ${checked} ${checked === 1 ? 'check' : 'checks'}.*`
  );
}

function tally(): string {
  const kinds = ['source', 'derived', 'common practice', 'our choice'] as const;
  const names = {
    source: 'with a source',
    derived: 'derived from others',
    'common practice': 'common practice',
    'our choice': 'our choice',
  };
  return kinds.map((kind) => `${all.filter(({ basis }) => basis.kind === kind).length} ${names[kind]}`).join(', ');
}
