/**
 * The strip of a visit that is going on: bars read today in full ink, all others as unknown, the bar
 * in the hand under the pointer. Once a bar is put down, two thin outlines stand at its sides: last
 * time at the left, today's expectation, dashed, at the right.
 */
import { bareShares } from '../../../apiary/visit-terms.ts';
import type { BarView, ColonyView } from '../../../colony/view.ts';
import { type Edges, lensAround, leftOf, widthOf } from '../../../sheets/places.ts';
import { strip, stripBody, type StripOptions } from '../../../sheets/strip.ts';
import { element, px } from '../../../sheets/svg.ts';
import { depthOfShare, taperOf, type Trough } from '../../../sheets/taper.ts';
import type { Expected } from './ports.ts';

export interface VisitStrip {
  readonly view: ColonyView;
  readonly trough: Trough;
  /** Bars read today, by place. */
  readonly read: ReadonlyMap<number, BarView>;
  /** Places from which the bar was taken: nothing is drawn there. */
  readonly gaps: ReadonlySet<number>;
  readonly current: number | null;
  /** The place at the follower board: looked at when no bar is in the hand. */
  readonly end: number;
  readonly bay: { readonly from: number; readonly to: number };
  readonly width: number;
  readonly height: number;
  readonly label: string;
  /** The bar put down last, with what was expected of it. */
  readonly told: { readonly place: number; readonly expected: Expected } | null;
}

export function visitStrip(asked: VisitStrip): string {
  const { view, bay } = asked;
  const bars = Array.from({ length: bay.to - bay.from + 1 }, (_, index) => bay.from + index)
    .filter((place) => !asked.gaps.has(place))
    .map((place) => asked.read.get(place) ?? unopened(place, view));
  const around = asked.current ?? asked.end;
  const options: StripOptions = {
    ...asked.trough,
    density: 'near',
    width: asked.width,
    height: asked.height,
    hiveBars: view.hiveBars,
    bay,
    entrance: view.entrance,
    label: asked.label,
    lens: lensAround(around, view.hiveBars),
    numbers: true,
    prefix: 'visit',
    ...(asked.current === null ? {} : { current: asked.current }),
  };
  const svg = strip(bars, options);
  if (asked.told === null) return svg;
  const { edges, barTop, floor } = stripBody(bars, options);
  return svg.replace(/<\/svg>$/, `${outlines(asked, asked.told, { edges, barTop, floor })}</svg>`);
}

/** A bar of which this visit knows nothing yet, whatever is believed of it: no shares, no depth, no bees. */
function unopened(place: number, view: ColonyView): BarView {
  const widthMm = view.bars.find((bar) => bar.place === place)?.widthMm ?? view.bars[0]?.widthMm ?? 35;
  return {
    place,
    comb: null,
    mark: null,
    widthMm,
    kind: 'unknown',
    built: 1,
    shares: null,
    ink: 'guessed',
    bees: null,
    cells: null,
    queenSeen: false,
    readOn: null,
    spot: null,
  };
}

/** A bar hung in at this visit. */
export function bareBar(place: number, view: ColonyView): BarView {
  return { ...unopened(place, view), kind: 'bare', built: 0, shares: bareShares, ink: 'seen' };
}

interface Where {
  readonly edges: Edges;
  readonly barTop: number;
  readonly floor: number;
}

const barHeight = 6.5;
/** How much of a bar's width its comb takes in the strip, and the slim gauge beside it. */
const combShare = 0.72;
const gauge = { width: 4, gap: 1 };

function outlines(asked: VisitStrip, told: NonNullable<VisitStrip['told']>, where: Where): string {
  const { lastTime, today } = told.expected.outlines;
  const wide = widthOf(where.edges, told.place);
  const middle = leftOf(where.edges, told.place) + wide / 2;
  const edge = (wide * combShare) / 2 + gauge.gap;
  const left = lastTime === null ? '' : outline(lastTime, asked.trough, where, middle - edge - gauge.width, 'told-last', null);
  const right = today === null ? '' : outline(today, asked.trough, where, middle + edge, 'told-today', '2 1.4');
  return left + right;
}

/** A slim box as deep as the comb was, with a line where food ends and one where brood ends. */
function outline(bar: BarView, trough: Trough, where: Where, x: number, name: string, dashes: string | null): string {
  const shares = bar.shares ?? bareShares;
  const food = shares.honey + shares.nectar + shares.bread;
  const brood = shares.egg + shares.larva + shares.sealed + shares.emerging + shares.drone;
  const top = where.barTop + barHeight;
  const taper = taperOf(trough);
  const built = bar.kind === 'bare' ? 0 : bar.built;
  const y = (share: number) => px(top + (depthOfShare(taper, share * built) * (where.floor - top)) / trough.depthMm);
  const [from, to] = [px(x), px(x + gauge.width)];
  const d = `M${from} ${px(top)}H${to}V${y(1)}H${from}ZM${from} ${y(food)}H${to}M${from} ${y(food + brood)}H${to}`;
  return element(
    'g',
    { class: name },
    element('path', { d, fill: 'var(--paper)', stroke: 'var(--ink)', 'stroke-width': 1, 'stroke-dasharray': dashes }),
  );
}
