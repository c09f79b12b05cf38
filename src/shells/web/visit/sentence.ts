/** The sentence that the keeper confirms at the end of a visit, made of what is in the draft and of nothing else. */
import type { Slot } from '../../../advice/advice.ts';
import { winterTasks } from '../../../apiary/visit-terms.ts';
import type { Manner } from '../../../words/say.ts';
import { type SlotValue, text, type TextKey } from '../../../words/text.ts';
import { placeNamed } from './arrangement.ts';
import type { Draft, Written } from './draft.ts';
import { placesRead } from './next-place.ts';
import { rowEnd } from './to-entries.ts';

export function closingSentence(draft: Draft, colony: string, manner: Manner): string {
  const say = (key: TextKey, slots: Readonly<Record<string, SlotValue>> = {}) => text(key, slots, manner);
  const kind = say(`visiting.kind-said.${draft.visitKind}`);
  return [...opened(draft, colony, kind, say), ...seenOnBars(draft, say), ...wholeHive(draft, say)].join(' ');
}

/** Bars that hung in the bay when the visit began and were not read, by where they hung. */
export function notOpened(draft: Draft): readonly number[] {
  const { from, to } = draft.bay;
  const read = new Set([...draft.gaps, ...placesRead(draft)]);
  return Array.from({ length: Math.max(0, to - from + 1) }, (_, index) => from + index).filter((place) => !read.has(place));
}

type Say = (key: TextKey, slots?: Readonly<Record<string, SlotValue>>) => string;

function opened(draft: Draft, colony: string, kind: string, say: Say): readonly string[] {
  const read = placesRead(draft).length;
  const left = notOpened(draft).length;
  if (read === 0) return [say('visiting.sentence.read-none', { kind, colony })];
  if (left === 0) return [say('visiting.sentence.read-all', { kind, colony, read })];
  return [say('visiting.sentence.read', { kind, colony, read, left })];
}

function seenOnBars(draft: Draft, say: Say): readonly string[] {
  const { read } = draft;
  if (read.length === 0) return [];
  const at = (found: readonly Written[]): Slot => ({
    kind: 'places',
    places: found.map((row) => placeNamed(draft, row.place)).sort((a, b) => a - b),
    cite: { kind: 'entry', id: draft.visit },
  });
  const brood = read.filter((row) => (row.seen.brood8 ?? 0) > 0);
  const broodKnown = read.some((row) => row.seen.brood8 !== null);
  const eggs = read.filter((row) => row.seen.eggs === 'seen');
  const queen = read.filter((row) => row.seen.queen === 'seen');
  const sentences = [
    brood.length > 0
      ? say('visiting.sentence.brood', { places: at(brood) })
      : broodKnown
        ? say('visiting.sentence.no-brood')
        : '',
    eggs.length > 0
      ? say('visiting.sentence.eggs', { places: at(eggs) })
      : read.some((row) => row.seen.eggs === 'none seen')
        ? say('visiting.sentence.no-eggs')
        : '',
    cells(draft, say),
    queen.length > 0 ? say('visiting.sentence.queen', { places: at(queen) }) : '',
    draft.fell.length > 0
      ? say('visiting.sentence.fell', {
          places: {
            kind: 'places',
            places: draft.fell.map((bar) => placeNamed(draft, bar)),
            cite: { kind: 'entry', id: draft.visit },
          },
        })
      : '',
  ];
  return sentences.filter((sentence) => sentence !== '');
}

const cellStates = ['open', 'sealed', 'torn', 'emerged'] as const;

function cells({ read }: Draft, say: Say): string {
  const sum = { open: 0, sealed: 0, torn: 0, emerged: 0 };
  for (const { seen } of read) {
    if (seen.cells === null) continue;
    for (const state of cellStates) sum[state] += seen.cells[state];
  }
  const found = cellStates
    .filter((state) => sum[state] > 0)
    .map((state) => say('visiting.cells-of', { n: sum[state], what: say(`visiting.cell.${state}`) }));
  if (found.length > 0) return say('visiting.sentence.cells', { list: found.join(', ') });
  const looked = read.filter((row) => row.seen.cellsLooked === 'none seen').length;
  return looked > 0 ? say('visiting.sentence.no-cells', { n: looked }) : '';
}

function wholeHive(draft: Draft, say: Say): readonly string[] {
  const { closing, read } = draft;
  const moved = closing.given + closing.taken > 0 || closing.follower !== 0;
  const sentences = [
    closing.given > 0 ? say('visiting.sentence.given', { n: closing.given }) : '',
    closing.taken > 0 ? say('visiting.sentence.taken', { n: closing.taken }) : '',
    moved
      ? say(draft.bay.follower === 'last' ? 'visiting.row-end' : 'visiting.row-end-first', {
          place: String(rowEnd(draft)),
        })
      : '',
    draft.moves.length > 0 ? say('visiting.sentence.moves', { n: draft.moves.length }) : '',
    closing.beesBars !== null ? say('visiting.sentence.bees', { n: closing.beesBars }) : '',
    closing.straight !== null ? say('visiting.sentence.straight', { how: say(`straight.${closing.straight}`) }) : '',
    winterSaid(draft, 'done', say),
    winterSaid(draft, 'not done', say),
    closing.temper !== null ? say('visiting.sentence.temper', { temper: say(`temper.${closing.temper}`) }) : '',
    closing.cellsCut === true ? say('visiting.sentence.cut') : '',
    read.some((row) => row.seen.signs.length > 0) ? say('visiting.sentence.signs', { list: signList(draft, say) }) : '',
  ];
  return sentences.filter((sentence) => sentence !== '');
}

function winterSaid({ closing }: Draft, answer: 'done' | 'not done', say: Say): string {
  const tasks = winterTasks.filter((task) => closing.winter?.[task] === answer);
  if (tasks.length === 0) return '';
  return say(`visiting.sentence.winter-${answer}`, { list: tasks.map((task) => say(`winter.${task}`)).join(', ') });
}

function signList({ read }: Draft, say: Say): string {
  return [...new Set(read.flatMap((row) => row.seen.signs))].map((code) => say(`sign.${code}`)).join(', ');
}
