/** When a colony was last opened, or how it began, in a few words behind its name. */
import type { ColonyView } from '../../../colony/view.ts';
import type { Wording } from '../frame/manner.tsx';
import { dayPart, windowPart } from '../frame/parts.ts';

export function lastSeen(view: ColonyView, t: Wording['t']): string {
  const last = view.visits.at(-1);
  if (last !== undefined) return t('round.seen', { day: dayPart(last.day) });
  if (view.origin === 'swarm') return t('round.swarm-hived', { window: windowPart(view.began) });
  return t('round.never-opened');
}
