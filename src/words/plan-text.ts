/** What fits the minutes that the keeper has, in one or two sentences. */
import type { Fitted, Stop } from '../advice/plan.ts';
import type { Id } from '../journal/entry.ts';
import { formatList } from './format-place.ts';
import { type Manner, plainManner } from './say.ts';
import { text } from './text.ts';

/** "You have 90 minutes: open Alder and glance at Rowan."; `names` by colony. */
export function planText(fitted: Fitted, minutes: number, names: ReadonlyMap<Id, string>, manner: Manner = plainManner): string {
  const nameOf = (stop: Stop): string => names.get(stop.colony) ?? stop.colony;
  const what = formatList(fitted.chosen.map(({ stop }) => text(verbKey(stop), { name: nameOf(stop) }, manner)), manner);
  const first = what === '' ? text('plan.none-fit', { minutes }, manner) : text('plan.minutes', { minutes, what }, manner);
  if (fitted.left.length === 0) return first;
  return `${first} ${text('plan.left', { names: formatList(fitted.left.map(nameOf), manner) }, manner)}`;
}

function verbKey(stop: Stop): 'plan.open' | 'plan.glance' | 'plan.feed' | 'plan.at-hive' {
  if (stop.verb === 'open') return 'plan.open';
  if (stop.verb === 'glance') return 'plan.glance';
  return stop.first?.act === 'feed' ? 'plan.feed' : 'plan.at-hive';
}
