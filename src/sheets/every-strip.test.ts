/** Properties of every strip: what is read back from its rectangles is what was put in, in any trough and density. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import type { BarView } from '../colony/view.ts';
import { contents, type Ink, type Shares } from '../hive/contents.ts';
import { combFace } from '../hive/comb-face.ts';
import { drawnFaults, faultOf, idFaults } from './drawn.contract.ts';
import { farKindOf, type Kind } from './marks.ts';
import { layersOf, strip, type StripOptions } from './strip.ts';
import { areasFromStrip } from './strip-areas.ts';

const fixed = { seed: 20140516, numRuns: 150 };

const someShares: fc.Arbitrary<Shares> = fc
  .array(fc.oneof(fc.constant(0), fc.double({ min: 0.01, max: 1, noNaN: true })), { minLength: 9, maxLength: 9 })
  .filter((parts) => parts.some((part) => part > 0))
  .map((parts) => {
    const sum = parts.reduce((a, b) => a + b, 0);
    return Object.fromEntries(contents.map((content, i) => [content, (parts[i] ?? 0) / sum])) as unknown as Shares;
  });

const someTrough = fc
  .record({
    topWidthMm: fc.double({ min: 280, max: 520, noNaN: true }),
    depthMm: fc.double({ min: 200, max: 330, noNaN: true }),
    wallAngleDeg: fc.double({ min: 0, max: 32, noNaN: true }),
    sideGapMm: fc.constant(8),
    floorGapMm: fc.double({ min: 5, max: 30, noNaN: true }),
  })
  .filter((trough) => combFace(trough) !== null);

function someBar(place: number): fc.Arbitrary<BarView> {
  return fc.record({
    place: fc.constant(place),
    comb: fc.constant(`c${place}`),
    mark: fc.constant(null),
    widthMm: fc.integer({ min: 30, max: 42 }),
    kind: fc.constantFrom('bare', 'comb', 'comb', 'comb', 'unknown'),
    built: fc.double({ min: 0.05, max: 1, noNaN: true }),
    shares: someShares,
    ink: fc.constantFrom<Ink>('seen', 'worked out', 'guessed'),
    bees: fc.option(fc.double({ min: 0, max: 1, noNaN: true })),
    cells: fc.option(fc.record({ open: fc.nat(3), sealed: fc.nat(3), torn: fc.nat(2), emerged: fc.nat(2) })),
    queenSeen: fc.boolean(),
    readOn: fc.constant(null),
    spot: fc.constant(null),
  });
}

const someStrip: fc.Arbitrary<{ bars: readonly BarView[]; options: StripOptions }> = fc
  .record({
    hiveBars: fc.integer({ min: 7, max: 34 }),
    trough: someTrough,
    count: fc.integer({ min: 1, max: 12 }),
    from: fc.integer({ min: 1, max: 12 }),
  })
  .chain(({ hiveBars, trough, count, from }) => {
    const first = Math.min(from, hiveBars);
    const last = Math.min(hiveBars, first + count - 1);
    const bars = fc.tuple(...Array.from({ length: last - first + 1 }, (_, i) => someBar(first + i)));
    return fc.record({
      bars,
      options: fc
        .record({
          density: fc.constantFrom<'far' | 'near'>('far', 'near'),
          width: fc.integer({ min: 300, max: 900 }),
          height: fc.integer({ min: 74, max: 140 }),
          hiveBars: fc.constant(hiveBars),
          bay: fc.constant({ from: first, to: last }),
          entrance: fc.constantFrom<'first' | 'last' | 'side'>('first', 'last', 'side'),
          label: fc.string(),
          lens: fc.constantFrom(null, { from: first, to: Math.min(first + 6, hiveBars) }),
          numbers: fc.boolean(),
          barWidthMm: fc.constant(35),
        })
        .map((options) => ({ ...options, ...trough })),
    });
  });

test('D4 areas read back from a strip agree with the shares within one part in a hundred, in both densities and in a lens', () => {
  fc.assert(
    fc.property(someStrip, ({ bars, options }) => {
      const drawn = areasFromStrip(strip(bars, options), options);
      const combs = bars.filter((bar) => bar.kind === 'comb');
      assert.deepEqual(
        [...drawn.keys()].sort((a, b) => a - b),
        combs.map((bar) => bar.place),
      );
      for (const bar of combs) {
        const found = drawn.get(bar.place);
        assert.ok(found !== undefined && bar.shares !== null);
        assert.ok(Math.abs(found.built - bar.built) <= 0.01 * bar.built, `built ${found.built} for ${bar.built} at ${bar.place}`);
        const near = options.lens ? bar.place >= options.lens.from && bar.place <= options.lens.to : options.density === 'near';
        for (const [kind, share] of layersOf(bar.shares, near)) {
          const read = found.shares.get(kind) ?? 0;
          assert.ok(Math.abs(read - share) <= 0.01, `${kind}: ${read} for ${share}`);
        }
      }
    }),
    fixed,
  );
});

test('D4 the far density sums all contents into four kinds and loses none', () => {
  fc.assert(
    fc.property(someShares, (shares) => {
      const far = new Map<Kind, number>(layersOf(shares, false));
      for (const kind of new Set(Object.values(farKindOf))) {
        const sum = contents.reduce((total, content) => total + (farKindOf[content] === kind ? shares[content] : 0), 0);
        assert.ok(Math.abs((far.get(kind) ?? 0) - sum) < 1e-12);
      }
    }),
    fixed,
  );
});

test('D5 every strip is well-formed, names no colour, and answers its own references when it carries its marks', () => {
  fc.assert(
    fc.property(someStrip, ({ bars, options }) => {
      const svg = strip(bars, { ...options, prefix: 'own' });
      assert.equal(faultOf(svg), null);
      assert.deepEqual(drawnFaults(svg.replace(/aria-label="[^"]*"/, '')), []);
      assert.deepEqual(idFaults(svg), []);
      assert.equal(svg.match(/role="img"/g)?.length, 1);
    }),
    fixed,
  );
});

test('D4 comb that no one opened has an outline in dots and nothing inside', () => {
  fc.assert(
    fc.property(someStrip, ({ bars, options }) => {
      const unknown = bars.map((bar): BarView => ({
        ...bar,
        kind: 'unknown',
        shares: null,
        bees: null,
        cells: null,
        queenSeen: false,
      }));
      const svg = strip(unknown, options);
      assert.equal(areasFromStrip(svg, options).size, 0);
      assert.doesNotMatch(svg, /url\(/);
      assert.equal(svg.match(/class="unknown"/g)?.length, unknown.length);
    }),
    { ...fixed, numRuns: 30 },
  );
});
