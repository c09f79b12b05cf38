/** How a visit most likely begins, from what is believed of the colony: offered, never forced. */
import type { Stop } from '../../../apiary.ts';
import type { ColonyView } from '../../../colony/view.ts';
import type { VisitKind } from '../../../colony/visit.ts';
import type { Draft } from './draft.ts';
import type { JoinedBars } from './joined-bars.ts';

export function likelyKind(view: ColonyView, stop: Stop | null): VisitKind {
  const last = view.visits.at(-1);
  const swarmed = view.events.findLast(({ event }) => event.kind === 'swarm left' || event.kind === 'swarm hived');
  if (stop?.verb === 'glance') return 'glance';
  if (swarmed !== undefined && (last === undefined || swarmed.day >= last.day)) return 'after a swarm';
  if (last !== undefined && last.day.slice(0, 4) !== view.day.slice(0, 4)) return 'first of the year';
  return 'usual';
}

/**
 * Where the follower board stands. A bay that begins further in and reaches the far wall has it before
 * its first place; a bay that fills the trough has none, and is entered from the end without entrance.
 */
export function bayWithFollower(view: ColonyView): Draft['bay'] {
  const { from, to } = view.bay;
  const first = (from > 1 && to === view.hiveBars) || ((from > 1 || to === view.hiveBars) && view.entrance === 'last');
  return { from, to, follower: first ? 'first' : 'last' };
}

/** Bars that have grown together, as the journal says. */
export function joinedAtStart(view: ColonyView): readonly JoinedBars[] {
  return (view.joined ?? []).map(({ id, how, places }) => ({ id, how, bars: places, from: 0, to: null }));
}

/** Places where a comb is believed to hang. */
export function combPlaces(view: ColonyView): readonly number[] {
  return view.bars.filter((bar) => bar.kind === 'comb' && bar.built > 0).map((bar) => bar.place);
}
