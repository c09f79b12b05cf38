/**
 * Weighing: no advice is given that another, given for the same colony and day, forbids. What forbids comes
 * first: a sign that means stop beats everything, then the greater loss beats the smaller. An advice whose
 * own forbids would speak against a stronger one is itself put aside.
 */
import type { Act, Advice, Forbid } from './advice.ts';

export interface Silenced {
  readonly advice: Advice;
  /** What spoke against it: it forbids this advice, or would be forbidden by it. */
  readonly by: Advice;
}

export interface Weighed {
  /** The strongest first. */
  readonly kept: readonly Advice[];
  readonly silenced: readonly Silenced[];
}

/** Parts advice of one or many colonies into what is given and what is put aside, each with what spoke against it. */
export function weigh(advice: readonly Advice[]): Weighed {
  const kept: Advice[] = [];
  const silenced: Silenced[] = [];
  for (const next of [...advice].sort(strongerFirst)) {
    const against = kept.find((other) => clash(other, next));
    if (against === undefined) kept.push(next);
    else silenced.push({ advice: next, by: against });
  }
  return { kept, silenced };
}

/** True when one of two advices forbids what the other asks for, on a day that both cover. */
export function clash(a: Advice, b: Advice): boolean {
  if (a === b || a.colony !== b.colony || a.day !== b.day) return false;
  return forbidsOf(a, b) || forbidsOf(b, a);
}

/** Everything that an advice does: its act, and what cannot be done without doing it. */
export function actsOf(advice: Advice): ReadonlySet<Act> {
  const acts = new Set<Act>([advice.act, ...(implied[advice.act] ?? [])]);
  if (advice.verb === 'open') acts.add('open');
  if (advice.verb === 'glance') acts.add('glance');
  return acts;
}

/** Acts that need the hive opened or brood lifted. Feeding, calling, asking and waiting need neither. */
const implied: Readonly<Partial<Record<Act, readonly Act[]>>> = {
  open: ['lift brood'],
  'lift brood': ['open'],
  'give a bare bar': ['open'],
  'give several bare bars': ['open'],
  'spread the brood': ['open', 'lift brood', 'move combs'],
  'cut queen cells': ['open', 'lift brood'],
  split: ['open', 'lift brood', 'move combs'],
  unite: ['open', 'move combs'],
  'take honey': ['open'],
  'move combs': ['open'],
  'test with a comb of eggs': ['open', 'lift brood'],
  'bend comb straight': ['glance'],
  'mark the queen': ['open', 'lift brood'],
};

function forbidsOf(forbidding: Advice, asking: Advice): boolean {
  const acts = actsOf(asking);
  return forbidding.forbids.some((forbid) => acts.has(forbid.act) && overlaps(forbid, asking));
}

function overlaps(forbid: Forbid, advice: Advice): boolean {
  return forbid.window.earliest <= advice.window.latest && advice.window.earliest <= forbid.window.latest;
}

/** Stop signs first, then the heavier; equal ones by rule and act, so that the order never depends on the input. */
function strongerFirst(a: Advice, b: Advice): number {
  const stop = Number(isStop(b)) - Number(isStop(a));
  if (stop !== 0) return stop;
  if (a.weight !== b.weight) return b.weight - a.weight;
  return orderKey(a) < orderKey(b) ? -1 : orderKey(a) > orderKey(b) ? 1 : 0;
}

function isStop(advice: Advice): boolean {
  return advice.act === 'call the authority';
}

function orderKey(advice: Advice): string {
  return [advice.colony, advice.rule, advice.act, advice.window.earliest, advice.window.latest, advice.say.key].join(' ');
}
