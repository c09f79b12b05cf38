/** What the journal says beside the Picture: people, boxes, own figures, names, and what became of single entries. */
import type { Apiary, Picture } from '../../../apiary.ts';
import { value } from '../../../apiary/handbook.ts';
import { allKinds } from '../../../apiary/kinds.ts';
import { readerBiases } from '../../../apiary/views.ts';
import { correctEntries } from '../../../journal/correct.ts';
import type { Entry, Id } from '../../../journal/entry.ts';
import { kindMap } from '../../../journal/read-entry.ts';
import { inBase } from '../../../numbers/units.ts';
import type { Trough } from '../../../sheets/taper.ts';
import type { Aside } from '../model/shown.ts';

const kinds = kindMap(allKinds);

export function asideOf(apiary: Apiary, entries: readonly Entry[], picture: Picture): Aside {
  const { state } = apiary;
  return {
    observers: [...state.observers.values()],
    biases: readerBiases(state, apiary.book),
    contacts: [...state.contacts.values()],
    hives: [...state.hives.values()],
    troughs: troughsOf(apiary),
    measurements: [...state.measurements],
    overrides: state.overrides.map((one) => ({ ...one })),
    names: namesOf(apiary),
    queens: queensOf(apiary),
    filmLengths: Object.fromEntries(picture.colonies.map((view) => [view.colony, view.film.length])),
    struck: [...apiary.struck],
    amended: amendedOf(entries),
    conflicts: apiary.conflicts.map(({ target, amendments }) => ({ target, amendments })),
    notUnderstood: entries.filter((entry) => entry.version > (kinds.get(entry.kind)?.version ?? 0)).map((entry) => entry.id),
  };
}

function amendedOf(entries: readonly Entry[]): Readonly<Record<Id, Entry>> {
  const targets = new Set(entries.flatMap((entry) => entry.corrects ?? []));
  if (targets.size === 0) return {};
  const { entries: standing } = correctEntries(entries, kinds);
  return Object.fromEntries(standing.filter((entry) => targets.has(entry.id)).map((entry) => [entry.id, entry]));
}

function troughsOf({ state, book }: Apiary): Readonly<Record<Id, Trough>> {
  const troughs: Record<Id, Trough> = {};
  const gaps = { sideGapMm: value(book, 'side-gap'), floorGapMm: value(book, 'floor-gap') };
  for (const { id, topWidth, depth, wallAngleDeg } of state.hives.values()) {
    const topWidthMm = inBase(topWidth, 'mm');
    const depthMm = inBase(depth, 'mm');
    if (topWidthMm !== null && depthMm !== null) troughs[id] = { topWidthMm, depthMm, wallAngleDeg, ...gaps };
  }
  return troughs;
}

function namesOf({ state }: Apiary): Readonly<Record<Id, string>> {
  const names: Record<Id, string> = {};
  for (const one of [...state.yards.values(), ...state.hives.values(), ...state.observers.values(), ...state.colonies.values()])
    names[one.id] = one.name;
  return names;
}

function queensOf({ state }: Apiary): Aside['queens'] {
  const queens: Record<Id, { queen: Id; mark: string | null }> = {};
  for (const [colony, reigns] of state.reigns) {
    const reign = reigns.findLast((one) => one.ended === null);
    if (reign !== undefined) queens[colony] = { queen: reign.queen, mark: state.queens.get(reign.queen)?.mark ?? null };
  }
  return queens;
}
