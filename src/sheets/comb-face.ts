/**
 * One face of a comb under its bar, with its contents as bands and rings. Only painted faces know where
 * things lie; from shares alone the areas are true and the edges between contents are drawn as guessed.
 */
import { combOutline, type Outline, widthAt } from '../hive/outline.ts';
import type { Content, Ink, Shares } from '../hive/contents.ts';
import type { CellCounts } from '../colony/reading.ts';
import { assert } from '../numbers/assert.ts';
import { type FaceLayers, faceLayers } from './face-layers.ts';
import { edgeOf, markDefs, markFill, type MarkKey, sharedPrefix } from './marks.ts';
import { beads, cellStatesOf, queenCell, queenMark } from './small-marks.ts';
import { checkPrefix, element, picture, px } from './svg.ts';
import type { Trough } from './taper.ts';

export interface FaceOptions extends Trough {
  readonly width: number;
  readonly label: string;
  /** Unique in the document: the face clips its layers to its outline by an id of its own. */
  readonly prefix: string;
  /** True: the marks come from the page's sprite and only the clip is the face's own. */
  readonly sharedMarks?: boolean;
}

export interface FaceSeen {
  readonly built: number;
  /** Null: a comb of which nothing is known. */
  readonly shares: Shares | null;
  readonly ink: Ink;
  readonly bees: number | null;
  readonly cells: CellCounts | null;
  readonly queenSeen: boolean;
}

const barPx = 12;
const footPx = 16;
const sidePx = 8;

export function combFace(face: FaceSeen, options: FaceOptions): string {
  checkPrefix(options.prefix);
  const full = outlineOf(options, 1);
  const outline = face.built >= 1 ? full : outlineOf(options, face.built);
  const scale = (options.width - 2 * sidePx) / full.attachmentMm;
  const height = barPx + full.depthMm * scale + footPx;
  const at = (x: number, y: number) => `${px(options.width / 2 + x * scale)} ${px(barPx + y * scale)}`;
  const rim = rimPath(outline, at);
  const marks: MarkKey[] = [];
  const marksFrom = options.sharedMarks === true ? sharedPrefix : options.prefix;
  const fill = (kind: Content) => {
    marks.push({ kind, ink: face.ink });
    return markFill(marksFrom, kind, face.ink);
  };
  const laid = face.shares === null || rim === '' ? null : faceLayers(outline, full.attachmentMm / 2, face.shares);
  const clipId = `${options.prefix}-face`;
  const inside = laid === null ? '' : element('g', { 'clip-path': `url(#${clipId})` }, layers(laid, full, at, scale, fill));
  const clip = laid === null ? '' : element('defs', {}, element('clipPath', { id: clipId }, element('path', { d: rim })));
  const ownMarks = options.sharedMarks === true || marks.length === 0 ? '' : markDefs(options.prefix, 1.15, marks);
  const bar = element('rect', {
    x: 1,
    y: 1,
    width: options.width - 2,
    height: barPx - 2,
    fill: face.ink === 'seen' ? 'var(--ink)' : 'none',
    ...edgeOf(face.ink),
  });
  const room =
    face.built >= 1
      ? ''
      : element('path', {
          class: 'room',
          d: rimPath(full, at),
          fill: 'none',
          stroke: 'var(--hair)',
          'stroke-width': 'var(--edge)',
        });
  const edge =
    rim === ''
      ? ''
      : element('path', {
          class: 'rim',
          d: rim,
          fill: 'none',
          ...(laid === null ? edgeOf('guessed') : outerEdge(face.ink)),
        });
  const drawn = ownMarks + clip + room + bar + inside + edge + onFace(face, outline, at, scale);
  return picture('comb-face', options.width, height, options.label, drawn);
}

function outlineOf(trough: Trough, builtShare: number): Outline {
  const outline = combOutline({ ...trough, builtShare });
  assert(outline !== null, 'a trough with room for comb');
  return outline;
}

function outerEdge(ink: Ink): Readonly<Record<string, string | null>> {
  return ink === 'seen' ? { stroke: 'var(--ink)', 'stroke-width': 'var(--rule)' } : edgeOf(ink);
}

type Place = (x: number, y: number) => string;

function rimPath(outline: Outline, at: Place): string {
  if (outline.points.length < 3) return '';
  return `M${outline.points.map(([x, y]) => at(x, y)).join('L')}Z`;
}

/** Back to front: empty cells, brood from outside in, drone in the corners, food from below up. */
function layers(laid: FaceLayers, full: Outline, at: Place, scale: number, fill: (kind: Content) => string): string {
  const wide = full.attachmentMm / 2 + 2;
  const deep = full.depthMm + 2;
  const box = (from: number) => `L${at(wide, from)}L${at(-wide, from)}Z`;
  // An arch through `middle` at x = 0 that is `drop` lower at the ends of the bar, as one quadratic curve.
  const arch = (middle: number, drop: number) => {
    const end = middle + drop * (wide / laid.halfMm) ** 2;
    return `M${at(-wide, end)}Q${at(0, 2 * middle - end)} ${at(wide, end)}`;
  };
  let drawn = element('path', { d: `M${at(-wide, -1)}L${at(wide, -1)}${box(deep)}`, fill: fill('empty') });
  const [cx, cy] = at(0, laid.centreMm).split(' ').map(Number);
  for (const ring of laid.brood) {
    if (ring.radiusMm <= 0) continue;
    drawn += element('ellipse', {
      cx: cx ?? 0,
      cy: cy ?? 0,
      rx: ring.radiusMm * laid.ratio * scale,
      ry: ring.radiusMm * scale,
      fill: fill(ring.kind),
    });
  }
  if (laid.droneFromMm !== null)
    drawn += element('path', { d: arch(laid.droneFromMm, -laid.riseMm) + box(deep), fill: fill('drone') });
  for (const band of [...laid.food].reverse()) {
    drawn += element('path', { d: arch(band.toMm, laid.archMm) + box(-2), fill: fill(band.kind) });
  }
  return element('g', { ...edgeOf('guessed'), 'stroke-width': 'var(--edge)' }, drawn);
}

/** Bees as beads along the rim as far up as they cover, queen cells at the tip, the queen on the face. */
function onFace(face: FaceSeen, outline: Outline, at: Place, scale: number): string {
  const [middle, tip] = at(0, outline.depthMm).split(' ').map(Number);
  if (middle === undefined || tip === undefined) return '';
  let drawn = '';
  if (face.bees !== null && face.bees > 0 && outline.depthMm > 0) {
    const from = outline.depthMm * (1 - Math.min(1, face.bees));
    const out = 4 / scale;
    const side = [{ y: from, half: widthAt(outline, from) / 2 }, ...outline.levels.filter((level) => level.y > from)];
    const right = side.map(({ y, half }) => at(half + out * (half > 0 ? 1 : 0), y + out * (y / outline.depthMm) ** 3));
    const left = side.map(({ y, half }) => at(-half - out * (half > 0 ? 1 : 0), y + out * (y / outline.depthMm) ** 3));
    drawn += beads(`M${[...left, ...right.reverse()].join('L')}`, 3.2, 1.35);
  }
  const states = cellStatesOf(face.cells);
  states.forEach((state, i) => {
    drawn += queenCell(state, middle + (i - (states.length - 1) / 2) * 26, tip - 8, 1.8);
  });
  if (face.queenSeen) drawn += queenMark(middle + 34, barPx + (tip - barPx) / 2, 1.3);
  return drawn;
}
