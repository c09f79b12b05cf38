/** The pyramid of ages against numbers that are given: areas, sides, heights. What it looks like is for the eye. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { madeUpMixedAges } from '../colony/foreseen.contract.ts';
import type { Ages } from '../colony/foreseen.ts';
import { agePyramid, type PyramidOptions } from './age-pyramid.ts';
import { drawnFaults, faultOf, idFaults } from './drawn.contract.ts';

const base: PyramidOptions = {
  width: 360,
  height: 230,
  label: 'Ages',
  prefix: 'a',
  oldWord: 'old',
  newWord: 'new',
  adultsWord: 'bees',
  broodWord: 'brood',
  olderWord: 'older',
  ageLabel: (days) => `${days} d`,
};

interface Bar {
  readonly side: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

function barsOf(svg: string): readonly Bar[] {
  return [...svg.matchAll(/<rect class="(old|new)" x="([^"]+)" y="([^"]+)" width="([^"]+)" height="([^"]+)"/g)].map((found) => ({
    side: found[1] ?? '',
    x: Number(found[2]),
    y: Number(found[3]),
    width: Number(found[4]),
    height: Number(found[5]),
  }));
}

const areaOf = (bars: readonly Bar[]) => bars.reduce((sum, bar) => sum + bar.width * bar.height, 0);

test('D11 an area is a number of bees, whatever the width of its class of ages and whichever side it lies on', () => {
  const ages: Ages = {
    adults: [
      { fromAge: 0, toAge: 2, ofOld: 0, ofNew: 3000 },
      { fromAge: 3, toAge: 11, ofOld: 1500, ofNew: 3000 },
    ],
    brood: [{ fromAge: 0, toAge: 20, ofOld: 0, ofNew: 12_000 }],
  };
  const bars = barsOf(agePyramid(ages, base));
  const all = areaOf(bars) / 19_500;
  const counted = bars.map((bar) => areaOf([bar]) / all);
  const want = [3000, 1500, 3000, 12_000];
  counted.forEach((bees, i) => assert.ok(Math.abs(bees / (want[i] ?? 0) - 1) < 0.01, `${bees} for ${want[i]}`));
});

test('D11 the old queen’s daughters lie to the left of the middle and the new queen’s to the right', () => {
  const svg = agePyramid(madeUpMixedAges, base);
  const bars = barsOf(svg);
  const old = bars.filter((bar) => bar.side === 'old');
  const young = bars.filter((bar) => bar.side === 'new');
  assert.ok(old.length > 0 && young.length > 0);
  const middle = young[0]?.x ?? 0;
  assert.ok(young.every((bar) => Math.abs(bar.x - middle) < 0.02));
  assert.ok(old.every((bar) => Math.abs(bar.x + bar.width - middle) < 0.02));
  assert.ok(svg.includes('>old<') && svg.includes('>new<'));
});

test('D11 time runs up: brood under the ground, bees over it, the older the higher, and no bar leaves the drawing', () => {
  const svg = agePyramid(madeUpMixedAges, base);
  const ground = Number(/class="ground" d="M0 ([\d.]+)H/.exec(svg)?.[1]);
  const bars = barsOf(svg);
  const bees = bars.slice(0, 18);
  const brood = bars.slice(18);
  assert.equal(brood.length, 7);
  assert.ok(bees.every((bar) => bar.y + bar.height <= ground + 0.02));
  assert.ok(brood.every((bar) => bar.y >= ground - 0.02));
  for (const part of [bees, brood]) part.slice(1).forEach((bar, i) => assert.ok(bar.y < (part[i]?.y ?? 0)));
  assert.ok(bars.every((bar) => bar.x >= 0 && bar.x + bar.width <= base.width));
});

test('D11 classes leave no gap, and the last, which holds all that are older, is drawn no longer than the others, with its word', () => {
  const adults = [
    ...Array.from({ length: 11 }, (_, i) => ({ fromAge: i * 7, toAge: i * 7 + 6, ofOld: 700, ofNew: 0 })),
    { fromAge: 77, toAge: 79, ofOld: 4000, ofNew: 0 },
  ];
  const svg = agePyramid({ adults, brood: [] }, base);
  const bars = barsOf(svg);
  bars.slice(1).forEach((bar, i) => assert.ok(Math.abs(bar.y + bar.height - (bars[i]?.y ?? 0)) < 0.03));
  const [last, first] = [bars.at(-1), bars[0]];
  assert.ok(last && first && last.width <= first.width + 0.02);
  assert.ok(Math.abs(areaOf([last]) / areaOf([first]) / (4000 / 700) - 1) < 0.01);
  assert.ok(svg.includes('>older<'));
});

test('D11 with daughters of one queen only, no head names an old one', () => {
  const ages: Ages = { adults: [{ fromAge: 0, toAge: 2, ofOld: 0, ofNew: 900 }], brood: [] };
  assert.ok(!agePyramid(ages, base).includes('>old<'));
});

test('D11 names of ages never run into each other, for summer bees and for winter bees, in letters of 13 and of 20', () => {
  for (const oldest of [45, 90, 210])
    for (const textSize of [13, 20.5]) {
      const adults = Array.from({ length: oldest / 3 }, (_, i) => ({ fromAge: i * 3, toAge: i * 3 + 2, ofOld: 0, ofNew: 90 }));
      const brood = [{ fromAge: 0, toAge: 20, ofOld: 0, ofNew: 50 }];
      const svg = agePyramid({ adults, brood }, { ...base, textSize });
      const names = /<g class="ages"[^>]*>(.*?)<\/g>/.exec(svg)?.[1] ?? '';
      const ys = [...names.matchAll(/ y="([^"]+)"/g)].map((found) => Number(found[1])).sort((a, b) => a - b);
      assert.ok(ys.length >= 4, `${oldest} days: ${ys.join()}`);
      ys.slice(1).forEach((y, i) =>
        assert.ok(y - (ys[i] ?? 0) >= textSize * 0.95, `${oldest} days at ${textSize}: ${ys.join()}`),
      );
    }
});

test('D11 little brood leaves room for its word, and none has no word', () => {
  const adults = [{ fromAge: 0, toAge: 60, ofOld: 0, ofNew: 900 }];
  const eggs = agePyramid({ adults, brood: [{ fromAge: 0, toAge: 1, ofOld: 0, ofNew: 9 }] }, base);
  const y = Number(new RegExp(`y="([^"]+)"[^>]*>${base.broodWord}<`).exec(eggs)?.[1]);
  assert.ok(y <= Number(/height="([^"]+)"/.exec(eggs)?.[1]), `${y}`);
  assert.ok(!agePyramid({ adults, brood: [] }, base).includes(`>${base.broodWord}<`));
});

test('D5 pyramids of nothing and of both queens are well-formed, name no colour and answer their references', () => {
  for (const ages of [{ adults: [], brood: [] }, madeUpMixedAges]) {
    const svg = agePyramid(ages, base);
    assert.equal(faultOf(svg), null);
    assert.deepEqual([...drawnFaults(svg), ...idFaults(svg)], []);
  }
});
