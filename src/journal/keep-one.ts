/**
 * Of several corrections of one entry that did not know of each other, one is kept whole: body and time as it alone left
 * them. Worked into the others it would keep what only they had changed.
 */
import { knownTo, settle } from './amendments.ts';
import { canonicalText } from './canonical.ts';
import { isAmendment, withCorrection } from './correct.ts';
import type { Entry, Id } from './entry.ts';
import type { CorrectionBody } from './kind-correction.ts';

export interface Kept {
  readonly kind: string;
  readonly version: number;
  readonly corrects: Id;
  readonly body: CorrectionBody | { readonly why: string; readonly knew: readonly Id[] };
}

/** The entry to write, by somebody who has seen all of them; `entries` is the journal. */
export function keepOne(entries: readonly Entry[], target: Entry, head: Entry, why: string): Kept {
  const byTarget = new Map<Id, Entry[]>();
  for (const entry of entries.filter(isAmendment)) {
    const list = byTarget.get(entry.corrects ?? '') ?? [];
    byTarget.set(entry.corrects ?? '', [...list, entry]);
  }
  const all = byTarget.get(target.id) ?? [];
  const knew = all.map((entry) => entry.id);
  const own = knownTo(head, new Map(all.map((entry) => [entry.id, entry])));
  byTarget.set(
    target.id,
    all.filter((entry) => entry === head || own.has(entry.id)),
  );
  const left = standing(target, byTarget, new Set());
  if (left === null) return { kind: 'void', version: 1, corrects: target.id, body: { why, knew } };
  const { at, body, version } = left;
  return { kind: 'correction', version: 1, corrects: target.id, body: { at, body, version, why, knew } };
}

/** The entry with what corrects it worked in; null when it is struck out. `under`: what is being worked on, against rings. */
function standing(entry: Entry, byTarget: ReadonlyMap<Id, readonly Entry[]>, under: ReadonlySet<Id>): Entry | null {
  const within = new Set([...under, entry.id]);
  const amendments = (byTarget.get(entry.id) ?? []).flatMap((one) =>
    within.has(one.id) ? [] : (standing(one, byTarget, within) ?? []),
  );
  const { chain } = settle(amendments, (a, b) => canonicalText(a.body) === canonicalText(b.body));
  let now = entry;
  let struck = false;
  for (const amendment of chain) {
    struck = amendment.kind === 'void';
    if (!struck) now = withCorrection(now, amendment.body as CorrectionBody);
  }
  return struck ? null : now;
}
