/**
 * Writes build/gallery.html: every mark, strip, film, chart and paper sheet with invented contents, to be
 * looked at in the three themes and in print (add #paper, #dusk, #sun or #print to the address). The
 * contents are made up here and mean nothing; the demo yard has the real ones.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import type { BarView, FilmFrame } from '../src/colony/view.ts';
import { bareShares, type Content, contents, type Ink, type Shares } from '../src/hive/contents.ts';
import { addDays, type Day } from '../src/numbers/day.ts';
import { chart } from '../src/sheets/chart.ts';
import { combFace } from '../src/sheets/comb-face.ts';
import { film } from '../src/sheets/film.ts';
import { farKinds, markSample, sharedDefs } from '../src/sheets/marks.ts';
import { blankVisitSheet } from '../src/sheets/paper.ts';
import { strip, type StripOptions } from '../src/sheets/strip.ts';
import { themeCss, themeNames } from '../src/sheets/themes.ts';

type Part = Partial<Record<Content, number>>;
const trough = { topWidthMm: 420, depthMm: 300, wallAngleDeg: 22, sideGapMm: 8, floorGapMm: 20 };

function shares(part: Part): Shares {
  const all = { ...bareShares, empty: 0, ...part };
  const sum = contents.reduce((total, content) => total + all[content], 0);
  return Object.fromEntries(contents.map((content) => [content, all[content] / sum])) as Record<Content, number>;
}

function hung(place: number, comb: string, built: number, part: Part, more: Partial<BarView> = {}): BarView {
  return {
    place,
    comb,
    mark: null,
    widthMm: place > 12 ? 38 : 34,
    kind: 'comb',
    built,
    shares: shares(part),
    ink: 'seen',
    bees: 0.7,
    cells: null,
    queenSeen: false,
    readOn: '2014-05-08',
    spot: null,
    ...more,
  };
}

function bare(place: number): BarView {
  return {
    place,
    comb: null,
    mark: null,
    widthMm: 34,
    kind: 'bare',
    built: 0,
    shares: null,
    ink: 'seen',
    bees: null,
    cells: null,
    queenSeen: false,
    readOn: null,
    spot: null,
  };
}

const nest: readonly (readonly [number, Part])[] = [
  [0.95, { honey: 0.55, bread: 0.2, empty: 0.25 }],
  [1, { honey: 0.3, bread: 0.15, sealed: 0.3, emerging: 0.1, empty: 0.15 }],
  [1, { honey: 0.15, bread: 0.1, emerging: 0.2, sealed: 0.25, larva: 0.15, empty: 0.15 }],
  [1, { honey: 0.12, bread: 0.08, sealed: 0.2, larva: 0.2, egg: 0.25, empty: 0.15 }],
  [1, { honey: 0.12, bread: 0.08, sealed: 0.25, larva: 0.15, egg: 0.2, drone: 0.06, empty: 0.14 }],
  [1, { honey: 0.18, bread: 0.1, emerging: 0.25, sealed: 0.25, empty: 0.22 }],
  [0.95, { honey: 0.4, bread: 0.15, sealed: 0.15, drone: 0.12, nectar: 0.18 }],
  [0.9, { honey: 0.5, nectar: 0.4, empty: 0.1 }],
  [0.7, { nectar: 0.6, empty: 0.4 }],
  [0.3, { empty: 1 }],
];

function nestBars(count = nest.length, more: (place: number) => Partial<BarView> = () => ({})): BarView[] {
  return nest.slice(0, count).map(([built, part], i) => hung(i + 1, `c${i + 1}`, built, part, more(i + 1)));
}

const asView = nestBars(10, (place) => ({
  ink: place < 4 ? 'guessed' : place < 8 ? 'worked out' : 'seen',
  bees: place < 4 ? null : ([0, 0.3, 0.9, 1, 1, 1, 0.8, 0.5, 0.4, 0.9][place - 1] ?? 0),
}));
const swarmy = nestBars(8, (place) => ({
  cells:
    place === 3
      ? { open: 1, sealed: 3, torn: 0, emerged: 0 }
      : place === 4
        ? { open: 0, sealed: 0, torn: 2, emerged: 0 }
        : place === 6
          ? { open: 0, sealed: 0, torn: 0, emerged: 1 }
          : place === 7
            ? { open: 4, sealed: 0, torn: 0, emerged: 0 }
            : null,
  queenSeen: place === 5,
})).map((bar) => (bar.place === 8 || bar.place === 1 ? { ...bar, kind: 'unknown' as const, shares: null, bees: null } : bar));

function options(width: number, height: number, more: Partial<StripOptions> = {}): StripOptions {
  return {
    ...trough,
    density: width < 500 ? 'far' : 'near',
    width,
    height,
    hiveBars: 24,
    bay: { from: 1, to: 12 },
    entrance: 'first',
    label: 'An invented colony',
    barWidthMm: 34,
    ...more,
  };
}

function frames(): FilmFrame[] {
  const days: Day[] = ['2014-04-18', '2014-04-29', '2014-05-08', '2014-05-14', '2014-05-28'];
  return days.map((day, i) => {
    const count = [5, 7, 10, 9, 8][i] ?? 5;
    let bars = nestBars(count);
    if (i === 2)
      bars = bars.map((bar) =>
        bar.place === 1 || bar.place === 9 ? { ...bar, kind: 'unknown', shares: null, bees: null } : bar,
      );
    if (i === 3)
      bars = bars.map((bar) => (bar.place === 3 ? { ...bar, comb: 'c4' } : bar.place === 4 ? { ...bar, comb: 'c3' } : bar));
    if (i === 4) bars = bars.filter((bar) => bar.place > 2).map((bar) => ({ ...bar, place: bar.place - 2 }));
    return {
      visit: `v${i}`,
      day,
      kind: 'usual',
      by: 'o1',
      bars: [...bars, bare(bars.length + 1)],
      follower: bars.length + 2,
      event:
        i === 3
          ? { kind: 'swarm left', window: { earliest: '2014-05-10', latest: '2014-05-12' }, child: null, hived: true }
          : i === 4
            ? { kind: 'split off', child: 'x', queenSide: 'went', combs: ['c1', 'c2'] }
            : null,
    };
  });
}

const names: Readonly<Record<string, string>> = {
  honey: 'sealed honey',
  nectar: 'nectar',
  bread: 'bee bread',
  empty: 'empty',
  drone: 'sealed drone',
  emerging: 'emerging',
  sealed: 'sealed',
  larva: 'larvae',
  egg: 'eggs',
  food: 'food',
  capped: 'sealed brood',
  open: 'open brood',
  vacant: 'empty',
};
const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];
const dayText = (day: Day) => `${Number(day.slice(8))} ${months[Number(day.slice(5, 7)) - 1] ?? ''}`;
const inks: readonly Ink[] = ['seen', 'worked out', 'guessed'];

function legend(): string {
  const rows = inks.map((ink) => {
    const kinds = [...contents, ...(ink === 'seen' ? farKinds : [])];
    const samples = kinds.map((kind) => `<span>${markSample(kind, ink)} ${names[kind] ?? ''}</span>`);
    return `<h2>${ink}</h2><div class="legend">${samples.join('')}</div>`;
  });
  return rows.join('');
}

function faces(id: string): string {
  const face = (i: number, ink: Ink, prefix: string, more: object = {}) =>
    combFace(
      {
        built: nest[i]?.[0] ?? 1,
        shares: shares(nest[i]?.[1] ?? {}),
        ink,
        bees: 0.6,
        cells: null,
        queenSeen: false,
        ...more,
      },
      { ...trough, width: 328, label: 'A face', prefix: id + prefix, sharedMarks: true },
    );
  return `<div class="faces">${face(4, 'seen', 'fa', { cells: { open: 1, sealed: 2, torn: 1, emerged: 1 }, queenSeen: true })}
${face(2, 'worked out', 'fb')}${face(6, 'guessed', 'fc')}${face(8, 'seen', 'fd')}${face(9, 'seen', 'fe')}</div>`;
}

function charts(width: number): string {
  const from = '2014-04-04';
  const at = (d: number) => addDays(from, d);
  const likely = (d: number) => 7 + 15 / (1 + Math.exp(-(d - 44) / 11));
  const spread = (d: number) => likely(d) * (0.07 + 0.004 * Math.max(0, d - 34));
  const band = (factor: number) =>
    Array.from({ length: 47 }, (_, i) => i * 2).map((d) => {
      const m = likely(d) * factor;
      const s = spread(d) * factor;
      return {
        day: at(d),
        wide: { low: m - 1.3 * s, likely: m, high: m + 1.3 * s },
        half: { low: m - 0.7 * s, likely: m, high: m + 0.7 * s },
      };
    });
  const counted = [4, 15, 26, 34].map((d) => {
    const m = likely(d) * (1 + ((d % 4) - 1.5) * 0.05);
    return { day: at(d), range: { low: m * 0.85, likely: m, high: m * 1.18 }, ink: 'seen' as Ink };
  });
  const panel = (title: string, factor: number) => ({
    title,
    points: counted.map((c) => ({
      ...c,
      range: { low: c.range.low * factor, likely: c.range.likely * factor, high: c.range.high * factor },
    })),
    bands: band(factor),
  });
  return chart([panel('Bees, thousands', 1), panel('Brood, thousands of cells', 1.4), panel('Honey, kilograms', 0.35)], {
    width,
    panelHeight: width < 500 ? 130 : 170,
    from,
    to: at(92),
    today: at(42),
    todayLabel: 'today',
    dayLabel: dayText,
    valueLabel: (value) => String(value),
    label: 'Bees, brood and honey, counted and likely',
  });
}

function wide(width: number): string {
  const near = width > 500;
  const films = film(
    frames().map((frame) => ({ frame, date: dayText(frame.day), note: frame.event?.kind ?? null })),
    {
      ...options(width, near ? 84 : 62),
      frameHeight: near ? 84 : 62,
      label: 'The film of an invented colony',
      spacing: 'even',
    },
  );
  const far = Math.min(width, 360);
  const parts: readonly (readonly [string, string])[] = [
    ['far', strip(nestBars(), options(far, 74))],
    ['far, worked out and guessed', strip(asView, options(far, 74, { numbers: true }))],
    ['far, cells, queen, unopened', strip(swarmy, options(far, 74, { ...side, numbers: true }))],
    ['lens', strip(asView, options(width, 124, { ...lens, current: 6 }))],
    ['lens, cells', strip([...swarmy, bare(9)], options(width, 124, { ...lens, current: 4 }))],
    ['lens and letters of full sun', strip(asView, options(width, 132, { ...lens, current: 6, textSize: 20 }))],
    ['near', near ? strip(asView, options(width, 110, { numbers: true })) : ''],
    ['near, entrance last', near ? strip([...swarmy, bare(9), bare(10)], options(width, 110, last)) : ''],
    ['film', films],
    ['chart', charts(width)],
    ['marks', legend()],
    ['faces', faces(near ? 'near' : 'far')],
  ];
  const shown = parts.filter(([, drawn]) => drawn !== '').map(([title, drawn]) => `<h2>${title}</h2>${drawn}`);
  return `<section id="w${width}" style="width:${width + 32}px"><h1>${width} px</h1>${shown.join('\n')}</section>`;
}

const lens: Partial<StripOptions> = { density: 'far', lens: { from: 3, to: 9 }, numbers: true };
const side: Partial<StripOptions> = { bay: { from: 1, to: 9 }, entrance: 'side' };
const last: Partial<StripOptions> = { numbers: true, entrance: 'last', bay: { from: 1, to: 10 } };

function page(): string {
  const rules = themeNames.map((name) => `html.${name}{${themeCss(name)}}`).join('\n');
  const font = '../node_modules/@fontsource-variable';
  return `<!doctype html><html lang="en" class="paper"><head><meta charset="utf-8"><title>Gallery</title><style>
@font-face{font-family:GallerySans;src:url(${font}/source-sans-3/files/source-sans-3-latin-wght-normal.woff2);font-weight:200 900}
@font-face{font-family:GallerySerif;src:url(${font}/source-serif-4/files/source-serif-4-latin-wght-normal.woff2);font-weight:200 900}
${rules}
body{margin:0;background:var(--paper);color:var(--ink);font:16px/1.4 GallerySans,sans-serif;display:flex;gap:24px;align-items:flex-start}
section{flex:none;padding:16px;box-sizing:border-box}
h1{font:650 22px/1.2 GallerySerif,serif;margin:0}
h2{font:600 15px/1.2 GallerySerif,serif;margin:14px 0 4px}
svg text{font-family:GallerySans,sans-serif}svg{display:block;max-width:100%;height:auto}.mark-sprite{position:absolute}
.legend{display:flex;flex-wrap:wrap;gap:8px 14px}.legend span{display:flex;gap:6px;align-items:center;width:126px}
.faces{display:flex;flex-wrap:wrap;gap:16px}
</style></head><body>${sharedDefs()}<script>
const [theme, width] = location.hash.slice(1).split('/');
document.documentElement.className = theme || 'paper';
addEventListener('DOMContentLoaded', () => {
  for (const section of document.querySelectorAll('section')) section.hidden = width !== undefined && section.id !== width;
});
</script>
${wide(328)}${wide(828)}</body></html>`;
}

mkdirSync('build', { recursive: true });
writeFileSync('build/gallery.html', page());
writeFileSync(
  'build/blank-sheet.html',
  blankVisitSheet(
    24,
    {
      title: 'Visit sheet',
      hive: 'Hive',
      date: 'Date',
      observer: 'Read by',
      place: 'Place',
      brood: 'Brood, of eight',
      food: 'Food, of eight',
      eggs: 'Eggs',
      youngest: 'Youngest',
      cells: 'Cells',
      queen: 'Queen',
      signs: 'Signs, notes',
      strip: 'The combs as they hang',
      closing: 'Before closing',
    },
    { ...trough, size: 'A4', language: 'en', entrance: 'first', barWidthMm: 34 },
  ),
);
