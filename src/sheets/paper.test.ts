/** Sheets of paper as text: rows, rulers, colours. How they print is for the eye and the printer. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { drawnFaults, faultOf, idFaults } from './drawn.contract.ts';
import { type BlankNames, type BlankOptions, blankStrip, blankVisitSheet, hiveSheet, page } from './paper.ts';
import { markFill } from './marks.ts';
import { shareAbove, taperOf } from './taper.ts';

const trough = { topWidthMm: 420, depthMm: 300, wallAngleDeg: 22, sideGapMm: 8, floorGapMm: 20 };
const options: BlankOptions = { ...trough, size: 'A4', language: 'en', entrance: 'first', barWidthMm: 35 };
const names: BlankNames = {
  title: 'Visit <sheet>',
  hive: 'Hive',
  date: 'Date',
  observer: 'Read by',
  place: 'Place',
  brood: 'Brood',
  food: 'Food',
  eggs: 'Eggs',
  youngest: 'Youngest',
  cells: 'Cells',
  queen: 'Queen',
  signs: 'Signs',
  strip: 'Combs',
  closing: 'Before closing',
};
const body = (html: string) => html.replace(/^<!doctype html>\n/, '');

test('D9 a blank sheet has a row a bar, each with two rulers of eight steps to fill', () => {
  for (const bars of [7, 24, 30]) {
    const html = blankVisitSheet(bars, names, options);
    assert.equal(html.match(/<tr><td class="num">/g)?.length, bars);
    const rulers = html.match(/<svg class="ruler".*?<\/svg>/g) ?? [];
    assert.equal(rulers.length, bars * 2);
    for (const ruler of rulers) assert.equal(ruler.match(/<rect /g)?.length, 8);
    assert.equal(faultOf(body(html)), null);
    assert.deepEqual(idFaults(html), []);
  }
});

test('D9 paper is black and white only, on A4 or letter, with no colour outside the theme', () => {
  for (const size of ['A4', 'letter'] as const) {
    const html = blankVisitSheet(24, names, { ...options, size });
    assert.match(html, new RegExp(`@page\\{size:${size} portrait`));
    assert.deepEqual([...new Set(html.match(/#[0-9a-f]{6}\b/g))].sort(), ['#000000', '#ffffff']);
    assert.deepEqual(drawnFaults(body(html).replace(/<style>.*?<\/style>/s, '')), []);
  }
});

test('D9 the eighths on the wall of the blank strip stand at the depths that hold them', () => {
  const svg = blankStrip(24, 'Combs', options);
  const top = Number(/data-top="([^"]+)"/.exec(svg)?.[1]);
  const full = Number(/data-full="([^"]+)"/.exec(svg)?.[1]);
  const taper = taperOf(options);
  const ticks = [...(/<path d="([^"]*)"[^>]*\/><\/svg>$/.exec(svg)?.[1] ?? '').matchAll(/M\S+ (\S+)h/g)].map((found) =>
    Number(found[1]),
  );
  assert.equal(ticks.length, 7);
  ticks.forEach((y, i) => {
    const share = shareAbove(taper, ((y - top) / full) * taper.combDepthMm);
    assert.ok(Math.abs(share - (i + 1) / 8) < 0.005, `${share} at ${i + 1} eighths`);
  });
});

test('D9 a page carries the marks when its drawings use them, and not otherwise', () => {
  const marked = page('a', `<svg><rect fill="${markFill('fm', 'egg', 'seen')}"/></svg>`, {
    size: 'A4',
    language: 'en',
  });
  assert.deepEqual(idFaults(marked), []);
  assert.doesNotMatch(page('a', '<p>b</p>', { size: 'A4', language: 'en' }), /<pattern/);
  assert.match(hiveSheet('Alder', '<svg/>', ['A & B'], { size: 'letter', language: 'en' }), /<p>A &amp; B<\/p>/);
});
