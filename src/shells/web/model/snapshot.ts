/**
 * What is kept of a Picture to be shown at once when the page opens next time: all that the round
 * shows, the last visits, what the model told of the days ahead, no film. Ten years of thirty hives would otherwise
 * take longer to read back than a keeper waits; the whole follows a little later.
 */
import type { ColonyView } from '../../../colony/view.ts';
import type { Shown } from './shown.ts';

/** The visits of about a month: our choice. */
const visitsKept = 4;
const eventsKept = 6;

export function snapshotOf(shown: Shown): Shown {
  return { ...shown, picture: { ...shown.picture, colonies: shown.picture.colonies.map(keptOf) } };
}

function keptOf(view: ColonyView): ColonyView {
  return {
    ...view,
    film: [],
    bars: view.ended === null ? view.bars : [],
    visits: view.visits.slice(-visitsKept),
    events: view.events.slice(-eventsKept),
    foreseen: view.foreseen === null ? null : { ...view.foreseen, line: view.foreseen.line.filter((row) => row.day >= view.day) },
  };
}
