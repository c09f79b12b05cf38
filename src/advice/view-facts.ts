/**
 * Small questions that several rules ask of a view: when it was last opened, where the brood is, which
 * entries a statement about the nest rests on, and which days are kept free of looking.
 */
import type { Facts } from './rule.ts';
import type { Cite } from './advice.ts';
import type { BarView, ColonyView, VisitSummary } from '../colony/view.ts';
import { type FigureBook, value } from '../figures/book.ts';
import { broodContents } from '../hive/contents.ts';
import type { Id } from '../journal/entry.ts';
import { addDays, type Day, earlier, later } from '../numbers/day.ts';
import type { Window } from '../numbers/window.ts';

/** The last visit at which the hive was opened, a glance not counted. */
export function lastOpening(view: ColonyView): VisitSummary | null {
  return view.visits.findLast((visit) => visit.kind !== 'glance' && visit.day <= view.day) ?? null;
}

export function lastVisit(view: ColonyView): VisitSummary | null {
  return view.visits.findLast((visit) => visit.day <= view.day) ?? null;
}

/** The entries on which the nest as drawn today rests; never empty when a bar was read. */
export function nestEntries(view: ColonyView): readonly Id[] {
  const visit = lastOpening(view) ?? lastVisit(view);
  return visit === null ? view.events.slice(0, 1).map((event) => event.entry) : [visit.entry];
}

export function broodPlaces(view: ColonyView, book: FigureBook): readonly number[] {
  const least = value(book, 'brood-comb-share');
  return view.bars.filter((bar) => broodShare(bar) >= least).map((bar) => bar.place);
}

/** The place at the edge of the brood, away from the entrance; null when no brood comb is known. */
export function broodEdge(view: ColonyView, book: FigureBook): number | null {
  const places = broodPlaces(view, book);
  if (places.length === 0) return null;
  return view.entrance === 'last' ? Math.min(...places) - 1 : Math.max(...places) + 1;
}

/** From the view's day or later, for so many days more. */
export function soon(from: Day, days: number): Window {
  return { earliest: from, latest: addDays(from, days) };
}

/**
 * The window from today on, moved or cut so that no look falls on a virgin's days or on a day typed as too
 * cold; null when nothing is left of it.
 */
export function outsideHarm(facts: Facts, window: Window): Window | null {
  const { view } = facts;
  const earliest = later(isColdToday(facts) ? addDays(view.day, 1) : view.day, window.earliest);
  const latest = later(view.day, window.latest);
  if (earliest > latest) return null;
  const harm = virginDaysOf(view);
  if (harm === null || harm.latest < earliest || harm.earliest > latest) return { earliest, latest };
  if (harm.earliest > earliest) return { earliest, latest: earlier(latest, addDays(harm.earliest, -1)) };
  return harm.latest < latest ? { earliest: addDays(harm.latest, 1), latest } : null;
}

/**
 * The days on which a virgin or a newly mated queen may be there; null too where the eggs are known to be
 * those of laying workers or of a queen that lays drone, since dates reckoned from them mean nothing.
 */
export function virginDaysOf({ queen }: ColonyView): Window | null {
  return queen.state === 'laying workers' || queen.state === 'drone layer' ? null : queen.virginDays;
}

/** The highest temperature typed for the day stays under what lifting brood wants. */
export function isColdToday({ weather, book }: Facts): boolean {
  return weather !== null && weather.highC !== null && weather.highC < value(book, 'open-brood-least-temp');
}

export function broodShare(bar: BarView): number {
  const { shares } = bar;
  return shares === null ? 0 : broodContents.reduce((sum, content) => sum + shares[content], 0) * bar.built;
}

/** A bar that was seen without comb; of one that nobody read this is not known. */
export function isKnownBare(bar: BarView): boolean {
  return bar.kind === 'bare';
}

/** The last event of a kind, on or before the view's day. */
export function lastEvent(
  view: ColonyView,
  kind: ColonyView['events'][number]['event']['kind'],
): ColonyView['events'][number] | null {
  return view.events.findLast(({ event, day }) => event.kind === kind && day <= view.day) ?? null;
}

/** What the weather of the view's day rests on: its entry, or the figure it is held against when the entry is not known. */
export function weatherCite({ weather }: Facts): Cite {
  return weather?.entry === undefined ? { kind: 'figure', key: 'open-brood-least-temp' } : { kind: 'entry', id: weather.entry };
}
