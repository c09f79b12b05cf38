/**
 * Paper to be filled by pencil, measured in millimetres: a length of 100 mm to hold a ruler against, and the outline of a
 * face at a whole scale that fits the page. What is printed at another size shows it on the ruler.
 */
import { combOutline, type Outline } from '../hive/outline.ts';
import { assert } from '../numbers/assert.ts';
import { element } from './svg.ts';
import type { Trough } from './taper.ts';

/** Inside of a page on A4 and on letter, less margins of 11 mm and a little. */
const pageMm = 180;
export const rulerMm = 100;
const rimMm = 3;
const lineMm = 0.35;

/** A line of 100 mm with its ticks, true on paper that is printed at its own size. */
export function paperRuler(label: string): string {
  const d = `M${rimMm} ${rimMm}h${rulerMm}M${rimMm} 1v${rimMm + 1}M${rimMm + rulerMm} 1v${rimMm + 1}`;
  return inMm(rulerMm + 2 * rimMm, 2 * rimMm, label, 'paper-ruler', d);
}

/** The least whole number of times that the face must be made smaller to fit the page. */
export function faceScale(trough: Trough): number {
  return Math.ceil(wholeFace(trough).attachmentMm / (pageMm - 2 * rimMm));
}

/** An empty face under its bar, 1 : scale, with ticks a centimetre of comb along the bar. */
export function pencilFace(trough: Trough, scale: number, label: string): string {
  const { points, attachmentMm, depthMm } = wholeFace(trough);
  const [wide, deep] = [attachmentMm / scale, depthMm / scale];
  const corners = points.map(([x, y]) => `${mm(rimMm + wide / 2 + x / scale)} ${mm(rimMm + y / scale)}`);
  const ticks = Array.from({ length: Math.floor(attachmentMm / 10) + 1 }, (_, cm) => {
    return `M${mm(rimMm + (cm * 10) / scale)} ${rimMm}v${cm % 10 === 0 ? -2.4 : -1.2}`;
  });
  return inMm(wide + 2 * rimMm, deep + 2 * rimMm, label, 'paper-face', `M${corners.join('L')}Z${ticks.join('')}`);
}

function wholeFace(trough: Trough): Outline {
  const outline = combOutline({ ...trough, builtShare: 1 });
  assert(outline, 'a trough in which a comb can hang');
  return outline;
}

function inMm(width: number, height: number, label: string, name: string, d: string): string {
  const size = { viewBox: `0 0 ${mm(width)} ${mm(height)}`, width: `${mm(width)}mm`, height: `${mm(height)}mm` };
  const line = element('path', { d, fill: 'none', stroke: 'var(--ink)', 'stroke-width': lineMm });
  return element('svg', { class: name, ...size, role: 'img', 'aria-label': label }, line);
}

function mm(value: number): string {
  return String(Math.round(value * 1000) / 1000);
}
