/**
 * Sheets of paper: a page for print with its marks inside, the sheet of one hive, and a blank sheet to
 * fill in with a pencil at the hive, with the rulers of eight that the screen has. Black on white, lines
 * and no greys, so that a copy of a copy can be read. Words come from the caller.
 */
import type { BarView } from '../colony/view.ts';
import { markDefs, sharedPrefix } from './marks.ts';
import { strip, type StripOptions } from './strip.ts';
import { element, safe } from './svg.ts';
import { depthOfShare, taperOf } from './taper.ts';
import { themeCss } from './themes.ts';

export type PaperSize = 'A4' | 'letter';

export interface BlankNames {
  readonly title: string;
  readonly hive: string;
  readonly date: string;
  readonly observer: string;
  readonly place: string;
  readonly brood: string;
  readonly food: string;
  readonly eggs: string;
  readonly youngest: string;
  readonly cells: string;
  readonly queen: string;
  readonly signs: string;
  readonly strip: string;
  readonly closing: string;
}

export type BlankOptions = Omit<StripOptions, 'density' | 'width' | 'height' | 'label' | 'prefix' | 'hiveBars' | 'bay'> & {
  readonly size: PaperSize;
  /** Language of the page's words. */
  readonly language: string;
};

/** Inside width of the page in CSS pixels (96 an inch): A4 less 12 mm margins; letter less the same. */
const insidePx: Readonly<Record<PaperSize, number>> = { A4: 702, letter: 725 };

/** A whole page for print; `inside` may use the shared marks. */
export function page(title: string, inside: string, options: { readonly size: PaperSize; readonly language: string }): string {
  const css = `:root{${themeCss('print')}}@page{size:${options.size} portrait;margin:12mm}${sheetCss}`;
  const sprite = element(
    'svg',
    { xmlns: 'http://www.w3.org/2000/svg', class: 'mark-sprite', width: 0, height: 0, 'aria-hidden': 'true' },
    markDefs(sharedPrefix),
  );
  const usesMarks = inside.includes(`url(#${sharedPrefix}-`);
  return `<!doctype html>
<html lang="${safe(options.language)}"><head><meta charset="utf-8"/><title>${safe(title)}</title><style>${css}</style></head>
<body class="sheet sheet-${options.size}">${usesMarks ? sprite : ''}${inside}</body></html>
`;
}

const serif = '"Source Serif 4 Variable","Source Serif 4",serif';
const sans = '"Source Sans 3 Variable","Source Sans 3",sans-serif';
const sheetCss = [
  `body{margin:0 auto;max-width:186mm;background:var(--paper);color:var(--ink);font:11pt/1.3 ${sans}}`,
  'body{font-variant-numeric:tabular-nums}',
  `h1{font:650 17pt/1.2 ${serif};margin:0 0 2mm}`,
  `h2{font:650 12pt/1.2 ${serif};margin:3mm 0 1mm}`,
  'svg{display:block;max-width:100%;height:auto}',
  '.mark-sprite{position:absolute}',
  'table{border-collapse:collapse;width:100%;margin-top:3mm}',
  'th{font-size:9pt;font-weight:600;text-align:left;vertical-align:bottom;padding:0 1mm}',
  'td{border-top:.2mm solid var(--ink);height:7mm;padding:0 1mm;vertical-align:middle}',
  'tr{break-inside:avoid}',
  'p .line{min-width:140mm}',
  '.line{display:inline-block;border-bottom:.3mm solid var(--ink);min-width:38mm}',
  '.head{display:flex;gap:6mm;align-items:baseline;margin-bottom:2mm}',
  'td.num{font-weight:650;text-align:right;width:8mm}',
  'td.ruler{width:43mm}',
  'td.box{width:11mm}',
  '.sheet-letter td{height:6.2mm}',
].join('');

/** Eight steps to fill from the left; the middle and the ends stand out so that they are counted at a glance. */
export function pencilRuler(): string {
  const steps = Array.from({ length: 8 }, (_, i) =>
    element('rect', {
      x: 0.5 + i * 19,
      y: 1,
      width: 19,
      height: 16,
      fill: 'none',
      stroke: 'var(--ink)',
      'stroke-width': 0.8,
    }),
  );
  const middle = element('path', { d: 'M76.5 0V18', stroke: 'var(--ink)', 'stroke-width': 2 });
  return element(
    'svg',
    { class: 'ruler', viewBox: '0 0 153 18', width: 153, height: 18, 'aria-hidden': 'true' },
    steps.join('') + middle,
  );
}

function tickBoxes(count: number): string {
  const boxes = Array.from({ length: count }, (_, i) =>
    element('rect', { x: 1 + i * 17, y: 1, width: 13, height: 13, fill: 'none', stroke: 'var(--ink)' }),
  );
  return element(
    'svg',
    { class: 'ticks', viewBox: `0 0 ${count * 17} 15`, width: count * 17, height: 15, 'aria-hidden': 'true' },
    boxes.join(''),
  );
}

/** A blank sheet for one visit to a hive: head, the strip to draw in, a row a bar. */
export function blankVisitSheet(hiveBars: number, names: BlankNames, options: BlankOptions): string {
  const line = (name: string) => `<span>${safe(name)} <span class="line">\u00a0</span></span>`;
  const heads = [names.place, names.brood, names.food, names.eggs, names.cells, names.queen, names.youngest, names.signs];
  const rows = Array.from(
    { length: hiveBars },
    (_, i) =>
      `<tr><td class="num">${i + 1}</td><td class="ruler">${pencilRuler()}</td><td class="ruler">${pencilRuler()}</td>` +
      `<td class="box">${tickBoxes(1)}</td><td class="box"></td><td class="box">${tickBoxes(1)}</td><td class="box"></td><td></td></tr>`,
  );
  const inside =
    `<h1>${safe(names.title)}</h1><div class="head">${line(names.hive)}${line(names.date)}${line(names.observer)}</div>` +
    `<h2>${safe(names.strip)}</h2>${blankStrip(hiveBars, names.strip, options)}` +
    `<table><thead><tr>${heads.map((head) => `<th>${safe(head)}</th>`).join('')}</tr></thead><tbody>${rows.join('')}</tbody></table>` +
    `<p>${line(names.closing)}</p>`;
  return page(names.title, inside, options);
}

/** A trough with dotted combs at every place and eighths marked on its wall: to be drawn into. */
export function blankStrip(hiveBars: number, label: string, options: BlankOptions): string {
  const width = insidePx[options.size];
  const height = 118;
  const bars = Array.from({ length: hiveBars }, (_, i): BarView => ({
    place: i + 1,
    comb: null,
    mark: null,
    widthMm: options.barWidthMm ?? 1,
    kind: 'unknown',
    built: 1,
    shares: null,
    ink: 'guessed',
    bees: null,
    cells: null,
    queenSeen: false,
    readOn: null,
    spot: null,
  }));
  const drawn = strip(bars, {
    ...options,
    density: 'near',
    width,
    height,
    hiveBars,
    bay: { from: 1, to: hiveBars },
    label,
    numbers: true,
  });
  const [top, full] = [/data-top="([^"]+)"/, /data-full="([^"]+)"/].map((pattern) => Number(pattern.exec(drawn)?.[1]));
  const taper = taperOf(options);
  const eighths = Array.from({ length: 7 }, (_, i) => {
    const y = (top ?? 0) + (depthOfShare(taper, (i + 1) / 8) / taper.combDepthMm) * (full ?? 0);
    return `M${width - 5.5} ${y.toFixed(2)}h${i === 3 ? -9 : -5}`;
  });
  return drawn.replace(/<\/svg>$/, `${element('path', { d: eighths.join(''), stroke: 'var(--ink)', fill: 'none' })}</svg>`);
}

/** The sheet of one hive: its strip as last known and lines of text beneath, ready to be hung in the shed. */
export function hiveSheet(
  title: string,
  stripSvg: string,
  lines: readonly string[],
  options: { readonly size: PaperSize; readonly language: string },
): string {
  return page(title, `<h1>${safe(title)}</h1>${stripSvg}${lines.map((text) => `<p>${safe(text)}</p>`).join('')}`, options);
}
