/**
 * Full honey between the brood and the bars that are free: the queen seldom goes beyond it, so that the colony is short
 * of room beside empty bars. It asks for one of those bars at the edge of the brood; it leaves out taking honey.
 */
import type { BarView } from '../colony/view.ts';
import { value } from '../figures/book.ts';
import { windowOf } from '../numbers/window.ts';
import type { Advice } from './advice.ts';
import { figureNumber, fromEntries, placeSlot, placesSlot, saying, windowSlot } from './cited.ts';
import type { Facts, Rule } from './rule.ts';
import { inBuildingSeason } from './season.ts';
import { broodEdge, isKnownBare, nestEntries, outsideHarm, soon } from './view-facts.ts';
import { weights } from './weights.ts';

export const honeyBarrier: Rule = {
  key: 'honey-barrier',
  about: 'Finds honey that hangs between the brood and the free bars, and asks for one of those bars at the brood.',
  advise: (facts) => {
    const { view, book } = facts;
    const edge = broodEdge(view, book);
    const barrier = edge === null || !inBuildingSeason(facts) ? null : barrierFrom(facts, edge);
    if (edge === null || barrier === null) return [];
    const window = outsideHarm(facts, soon(view.day, value(book, 'act-soon-days')));
    return window === null ? [] : [moveBar(facts, edge, barrier, windowOf(window.earliest, window.latest))];
  },
};

interface Barrier {
  readonly honey: readonly number[];
  /** The nearest bar beyond it that is known to be bare. */
  readonly free: number;
}

/** Combs of honey from the edge of the brood outward, up to a bar that is known to be bare; null where there is none. */
function barrierFrom({ view, book }: Facts, edge: number): Barrier | null {
  const outward = view.entrance === 'last' ? -1 : 1;
  const bars = new Map(view.bars.map((bar) => [bar.place, bar]));
  const least = value(book, 'honey-barrier-share');
  const honey: number[] = [];
  for (let place = edge; ; place += outward) {
    const bar = bars.get(place);
    if (bar === undefined) return null;
    if (isKnownBare(bar)) return honey.length === 0 ? null : { honey, free: place };
    if (honeyShare(bar) < least) return null;
    honey.push(place);
  }
}

function honeyShare({ shares, built }: BarView): number {
  return shares === null ? 0 : (shares.honey + shares.nectar) * built;
}

function moveBar(facts: Facts, edge: number, { honey, free }: Barrier, window: Advice['window']): Advice {
  const { view, book } = facts;
  const cite = fromEntries(nestEntries(view), 'honey-barrier-share');
  return {
    rule: 'honey-barrier',
    colony: view.colony,
    day: view.day,
    verb: 'open',
    act: 'move combs',
    places: [free, ...honey],
    window,
    say: saying('barrier.say', { free: placeSlot(free, cite), edge: placeSlot(edge, cite), window: windowSlot(window, cite) }),
    reasons: [
      saying('barrier.seen', {
        places: placesSlot(
          [...honey].sort((a, b) => a - b),
          cite,
        ),
      }),
      saying('barrier.why'),
      saying('barrier.one', { n: figureNumber(book, 'most-unbuilt-bars', 'bars') }),
    ],
    chance: null,
    wouldChange: [saying('barrier.change-brood'), saying('barrier.change-flow')],
    forbids: [{ act: 'give a bare bar', window, why: saying('barrier.have-one', { free: placeSlot(free, cite) }) }],
    cautions: ['stings', 'smoker', 'lifting'],
    weight: weights.honeyBarrier,
  };
}
