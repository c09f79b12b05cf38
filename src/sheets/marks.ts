/**
 * The nine contents as engraved marks that picture what the eye sees in the cells, as SVG patterns in
 * three inks and two densities. Marks are lines first; colour lies under them and means time. Geometry
 * is data, so that tests can measure how much ink each lays down.
 */
import { type Content, contents, type Ink } from '../hive/contents.ts';
import { checkPrefix, element, px } from './svg.ts';

/** The four kinds of the far density: all food, open brood, sealed brood, empty cells. */
export const farKinds = ['food', 'open', 'capped', 'vacant'] as const;
export type FarKind = (typeof farKinds)[number];
export type Kind = Content | FarKind;

export const farKindOf: Readonly<Record<Content, FarKind>> = {
  honey: 'food',
  nectar: 'food',
  bread: 'food',
  empty: 'vacant',
  drone: 'capped',
  emerging: 'capped',
  sealed: 'capped',
  larva: 'open',
  egg: 'open',
};

/** One tile of a mark: its size, the lines, how heavy they are against the usual, and the tint under them. */
export interface Mark {
  readonly width: number;
  readonly height: number;
  readonly lines: string;
  readonly weight: number;
  readonly tint: string;
}

const lid = 'M.9 3.2Q.5 .9 3.2 .9H5.6Q8.3 .9 7.9 3.2L.9 3.2';
/** The same lid bitten open: its roof has a gap, and the bee's jaw shows in it. */
const nicked = 'M2.8 .9Q.5 .9 .9 3.2H7.9Q8.3 .9 6.4 .9M4.1 1.2L4.9 2.1';

/** A line repeated half a tile on, with what leaves the tile brought in again on the other side. */
export function staggered(width: number, height: number, d: string): string {
  const across = width / 2;
  return `${d}${moved(d, across, height / 2)}${moved(d, across - width, height / 2)}`;
}

/** The same lines elsewhere: only absolute M, L, H, V, Q and C are used. */
function moved(d: string, dx: number, dy: number): string {
  return d.replace(/([MLHVQC])([^MLHVQC]*)/g, (_all, letter: string, rest: string) => {
    const at = (rest.match(/-?\d*\.?\d+/g) ?? []).map(Number);
    const shift = (value: number, i: number) => (letter === 'V' || (letter !== 'H' && i % 2 === 1) ? value + dy : value + dx);
    return letter + at.map((value, i) => px(shift(value, i))).join(' ');
  });
}

const ring = 'M4.1 2.3C4.1 3.4 3.3 4.1 2.3 4.1C1.2 4.1.5 3.3.5 2.3C.5 1.2 1.3.5 2.3.5C3.4.5 4.1 1.3 4.1 2.3';

export const marks: Readonly<Record<Kind, Mark>> = {
  egg: { width: 7, height: 7, tint: 'egg', weight: 1.25, lines: staggered(7, 7, 'M2 .9V2.9') },
  larva: {
    width: 10,
    height: 10,
    tint: 'larva',
    weight: 1.2,
    lines: staggered(10, 10, 'M4.9 1.6C3.2.2.9 1.4 1.1 3.2C1.3 4.9 3.6 5.3 4.6 3.9'),
  },
  sealed: { width: 10, height: 7.2, tint: 'sealed', weight: 0.95, lines: staggered(10, 7.2, lid) },
  emerging: { width: 10, height: 7.2, tint: 'emerging', weight: 1.1, lines: staggered(10, 7.2, nicked) },
  drone: {
    width: 10,
    height: 10,
    tint: 'drone',
    weight: 1.15,
    lines: staggered(10, 10, 'M.6 4.6C.6.1 8 .1 8 4.6L.6 4.6M2.4 3C2.8 2.2 3.3 1.9 4 1.8'),
  },
  bread: {
    width: 6,
    height: 6,
    tint: 'bread',
    weight: 1.75,
    lines: 'M1.1 1.2H1.11M4.1.8H4.11M2.6 3.1H2.61M5.3 3.6H5.31M.9 4.9H.91M3.7 5.3H3.71',
  },
  nectar: { width: 11, height: 8, tint: 'nectar', weight: 0.9, lines: staggered(11, 8, 'M.8 1.4H7.2M2.9 2.9H5.1') },
  honey: { width: 12, height: 4.6, tint: 'honey', weight: 1, lines: 'M0 2.3Q3 -.5 6 2.3Q9 5.1 12 2.3' },
  empty: { width: 9, height: 9, tint: 'bare', weight: 0.7, lines: staggered(9, 9, ring) },
  food: { width: 12, height: 4.6, tint: 'honey', weight: 1, lines: 'M0 2.3Q3 -.5 6 2.3Q9 5.1 12 2.3' },
  open: { width: 7, height: 7, tint: 'egg', weight: 1.25, lines: staggered(7, 7, 'M2 .9V2.9') },
  capped: { width: 10, height: 7.2, tint: 'sealed', weight: 0.95, lines: staggered(10, 7.2, lid) },
  vacant: { width: 9, height: 9, tint: 'bare', weight: 0.7, lines: staggered(9, 9, ring) },
};

const inkLetter: Readonly<Record<Ink, string>> = { seen: 's', 'worked out': 'w', guessed: 'g' };
const farScale = 0.8;
export const inks: readonly Ink[] = ['seen', 'worked out', 'guessed'];
export const kinds: readonly Kind[] = [...contents, ...farKinds];

/** The prefix of the sprite that a page holds once. */
export const sharedPrefix = 'fm';

/** The id of a pattern; `url(#…)` of it fills an area. */
export function markId(prefix: string, kind: Kind, ink: Ink): string {
  return `${prefix}-${inkLetter[ink]}-${kind}`;
}

export function markFill(prefix: string, kind: Kind, ink: Ink): string {
  return `url(#${markId(prefix, kind, ink)})`;
}

/** The kind that a fill names, or null when it is no mark. */
export function kindOfFill(fill: string): Kind | null {
  const name = /^url\(#[\w-]*-[swg]-(\w+)\)$/.exec(fill)?.[1];
  return kinds.find((kind) => kind === name) ?? null;
}

function pattern(prefix: string, kind: Kind, ink: Ink, scale: number): string {
  const size = (farKinds as readonly string[]).includes(kind) ? scale * farScale : scale;
  return tilePattern(markId(prefix, kind, ink), marks[kind], ink, size);
}

/** Seen: full tint and line. Worked out: half the tint, fine line. Guessed: no tint, the line in dots. */
export function tilePattern(id: string, mark: Mark, ink: Ink, size: number): string {
  const tile = { d: `M0 0H${px(mark.width)}V${px(mark.height)}H0Z` };
  const paper = ink === 'seen' ? '' : element('path', { ...tile, fill: 'var(--paper)' });
  const tint =
    ink === 'guessed'
      ? ''
      : element('path', { ...tile, fill: `var(--${mark.tint})`, 'fill-opacity': ink === 'seen' ? null : 0.5 });
  const weight = ink === 'guessed' ? Math.min(2.1, mark.weight * 1.7) : mark.weight;
  const base = `var(--${ink === 'seen' ? 'mark' : 'fine'})`;
  const lines = element('path', {
    d: mark.lines,
    fill: 'none',
    stroke: 'var(--ink)',
    'stroke-linecap': 'round',
    'stroke-width': weight === 1 ? base : `calc(${base}*${px(weight)})`,
    'stroke-dasharray': ink === 'guessed' ? '0 1.7' : null,
  });
  return element(
    'pattern',
    {
      id,
      width: mark.width,
      height: mark.height,
      patternUnits: 'userSpaceOnUse',
      patternTransform: size === 1 ? null : `scale(${px(size)})`,
    },
    paper + tint + lines,
  );
}

export interface MarkKey {
  readonly kind: Kind;
  readonly ink: Ink;
}

/** `<defs>` with the patterns asked for (all by default); ids are unique as long as prefixes are. */
export function markDefs(prefix: string, scale = 1, only: readonly MarkKey[] = allKeys): string {
  checkPrefix(prefix);
  const seen = new Map(only.map((key) => [markId(prefix, key.kind, key.ink), key]));
  return element('defs', {}, [...seen.values()].map((key) => pattern(prefix, key.kind, key.ink, scale)).join(''));
}

const allKeys: readonly MarkKey[] = inks.flatMap((ink) => kinds.map((kind) => ({ kind, ink })));

/** All patterns in one hidden picture: put once at the head of a page's body, below the theme's rule. */
export function sharedDefs(): string {
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      class: 'mark-sprite',
      width: 0,
      height: 0,
      'aria-hidden': 'true',
      focusable: 'false',
    },
    markDefs(sharedPrefix),
  );
}

/** A small square of one mark for a legend; the caller writes the word beside it. */
export function markSample(
  kind: Kind,
  ink: Ink = 'seen',
  options: { readonly size?: number; readonly prefix?: string } = {},
): string {
  const size = options.size ?? 34;
  const own = options.prefix === undefined ? '' : markDefs(options.prefix, 1, [{ kind, ink }]);
  const inside = element('rect', {
    x: 1,
    y: 1,
    width: size - 2,
    height: size - 2,
    fill: markFill(options.prefix ?? sharedPrefix, kind, ink),
    ...edgeOf(ink),
  });
  const box = `0 0 ${px(size)} ${px(size)}`;
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      class: 'mark',
      viewBox: box,
      width: size,
      height: size,
      'aria-hidden': 'true',
    },
    own + inside,
  );
}

/** How an edge is drawn in each ink: full, fine, dots. */
export function edgeOf(ink: Ink): Readonly<Record<string, string | null>> {
  return {
    stroke: 'var(--ink)',
    'stroke-width': ink === 'seen' ? 'var(--edge)' : ink === 'guessed' ? 'var(--edge)' : 'var(--fine)',
    'stroke-dasharray': ink === 'guessed' ? '0 2.6' : null,
    'stroke-linecap': ink === 'guessed' ? 'round' : null,
  };
}
