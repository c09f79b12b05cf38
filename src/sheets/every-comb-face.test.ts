/** Properties of every face: areas of its layers and of its shapes as drawn, for random shares and built shares. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { type Content, contents, type Shares } from '../hive/contents.ts';
import { combOutline } from '../hive/outline.ts';
import { combFace, type FaceOptions } from './comb-face.ts';
import { drawnFaults, faultOf, flatten, idFaults, inside, type Spot } from './drawn.contract.ts';
import { contentAt, faceLayers, gridOf } from './face-layers.ts';
import { kindOfFill } from './marks.ts';

const trough = { topWidthMm: 420, depthMm: 300, wallAngleDeg: 22, sideGapMm: 8, floorGapMm: 20 };
const options: FaceOptions = { ...trough, width: 360, label: 'A face', prefix: 'own' };
const fixed = { seed: 20140516, numRuns: 60 };

const someShares: fc.Arbitrary<Shares> = fc
  .array(fc.oneof(fc.constant(0), fc.double({ min: 0.01, max: 1, noNaN: true })), { minLength: 9, maxLength: 9 })
  .filter((parts) => parts.some((part) => part > 0))
  .map((parts) => {
    const sum = parts.reduce((a, b) => a + b, 0);
    return Object.fromEntries(contents.map((content, i) => [content, (parts[i] ?? 0) / sum])) as unknown as Shares;
  });
const someBuilt = fc.oneof(fc.constant(1), fc.double({ min: 0.1, max: 0.97, noNaN: true }));

test('D8 the layers of a face have the areas of the shares, within one part in a hundred of the face', () => {
  fc.assert(
    fc.property(someShares, someBuilt, (shares, builtShare) => {
      const outline = combOutline({ ...trough, builtShare });
      assert.ok(outline !== null);
      const laid = faceLayers(outline, 200, shares);
      const spots = gridOf(outline, 131);
      for (const content of contents) {
        const share = spots.filter((spot) => contentAt(laid, spot) === content).length / spots.length;
        assert.ok(Math.abs(share - shares[content]) <= 0.01, `${content}: ${share} for ${shares[content]}`);
      }
    }),
    fixed,
  );
});

const samples = 100;

/** What is seen at each spot of the drawing: the last shape that covers it, inside the rim. */
function readFace(svg: string): ReadonlyMap<Content, number> {
  const rim = flatten(/class="rim" d="([^"]*)"/.exec(svg)?.[1] ?? '')[0] ?? [];
  const group = /<g clip-path[^>]*><g[^>]*>(.*?)<\/g><\/g>/.exec(svg)?.[1] ?? '';
  const shapes = [...group.matchAll(/<(path|ellipse) [^>]*\/>/g)].map(([drawn, name]) => {
    const kind = kindOfFill(/fill="([^"]*)"/.exec(drawn)?.[1] ?? '') as Content;
    const value = (key: string) => Number(new RegExp(` ${key}="([^"]*)"`).exec(drawn)?.[1]);
    const [cx, cy, rx, ry] = ['cx', 'cy', 'rx', 'ry'].map(value) as [number, number, number, number];
    const outline = name === 'path' ? (flatten(/ d="([^"]*)"/.exec(drawn)?.[1] ?? '', 40)[0] ?? []) : [];
    return {
      kind,
      covers: ([x, y]: Spot) => (name === 'path' ? inside(outline, [x, y]) : ((x - cx) / rx) ** 2 + ((y - cy) / ry) ** 2 <= 1),
    };
  });
  const counts = new Map<Content, number>();
  let total = 0;
  const [xs, ys] = [rim.map(([x]) => x), rim.map(([, y]) => y)];
  const [left, top, right, foot] = [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
  for (let i = 0; i < samples; i += 1)
    for (let j = 0; j < samples; j += 1) {
      const spot: Spot = [left + ((i + 0.5) / samples) * (right - left), top + ((j + 0.5) / samples) * (foot - top)];
      if (!inside(rim, spot)) continue;
      total += 1;
      const upper = shapes.findLast((shape) => shape.covers(spot));
      assert.ok(upper !== undefined, `bare paper at ${spot.join()}`);
      counts.set(upper.kind, (counts.get(upper.kind) ?? 0) + 1);
    }
  return new Map([...counts].map(([kind, count]) => [kind, count / total]));
}

test('D8 areas read back from the drawn shapes of a face agree with the shares, and no paper shows through', () => {
  fc.assert(
    fc.property(someShares, someBuilt, (shares, built) => {
      const svg = combFace({ built, shares, ink: 'seen', bees: 0.5, cells: null, queenSeen: false }, options);
      const read = readFace(svg);
      for (const content of contents) {
        const found = read.get(content) ?? 0;
        assert.ok(Math.abs(found - shares[content]) <= 0.01, `${content}: ${found} for ${shares[content]}`);
      }
    }),
    { ...fixed, numRuns: 25 },
  );
});

test('D5 every face is well-formed, names no colour and answers its references', () => {
  fc.assert(
    fc.property(
      fc.option(someShares),
      fc.double({ min: 0, max: 1, noNaN: true }),
      fc.constantFrom('seen', 'worked out', 'guessed'),
      (shares, built, ink) => {
        const cells = { open: 1, sealed: 2, torn: 1, emerged: 1 };
        const svg = combFace({ built, shares, ink, bees: built, cells, queenSeen: true }, options);
        assert.equal(faultOf(svg), null);
        assert.deepEqual(drawnFaults(svg), []);
        assert.deepEqual(idFaults(svg), []);
      },
    ),
    fixed,
  );
});

test('D8 a face of which nothing is known is an outline in dots with nothing inside', () => {
  const svg = combFace({ built: 1, shares: null, ink: 'guessed', bees: null, cells: null, queenSeen: false }, options);
  assert.doesNotMatch(svg, /url\(/);
  assert.match(svg, /class="rim"[^>]*stroke-dasharray/);
});
