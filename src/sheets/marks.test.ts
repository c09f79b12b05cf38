/** Marks measured as ink on their tiles, so that they can be told apart without colour; and their ids. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { queenStates } from '../colony/queen-state.ts';
import { contents } from '../hive/contents.ts';
import { drawnFaults, faultOf, flatten, idFaults, type Spot } from './drawn.contract.ts';
import { farKinds, inks, kindOfFill, kinds, type Mark, markDefs, markFill, marks, markSample, sharedDefs } from './marks.ts';
import { queenDefs, queenFill, queenMarks, queenSample } from './queen-marks.ts';
import { cellStates, queenCell } from './small-marks.ts';
import { themes } from './themes.ts';

interface Look {
  /** Share of the tile that is ink. */
  readonly coverage: number;
  /** Share of the length of the lines that runs rather across than down. */
  readonly across: number;
  /** Mean length of a stroke, px; a line that runs through the tile counts as one without end. */
  readonly stroke: number;
  /** Share of the strokes that close on themselves. */
  readonly closed: number;
}

/** What is left of a mark on a grey copy: measured on its tile at four samples a pixel. */
function lookOf(mark: Mark): Look {
  const strokes = flatten(mark.lines, 10);
  const reach = (mark.weight * themes.paper.weights.mark) / 2;
  const pieces = strokes.flatMap((stroke) => stroke.slice(1).map((b, i) => [stroke[i] ?? b, b] as const));
  let ink = 0;
  let samples = 0;
  for (let x = 0.125; x < mark.width; x += 0.25) {
    for (let y = 0.125; y < mark.height; y += 0.25) {
      samples += 1;
      if (pieces.some(([a, b]) => distance([x, y], a, b) <= reach)) ink += 1;
    }
  }
  const lengths = pieces.map(([a, b]) => ({ dx: Math.abs(b[0] - a[0]), dy: Math.abs(b[1] - a[1]) }));
  const total = lengths.reduce((sum, { dx, dy }) => sum + Math.hypot(dx, dy), 0);
  const across = lengths.reduce((sum, { dx, dy }) => sum + (dx > dy ? Math.hypot(dx, dy) : 0), 0) / total;
  const closed =
    strokes.filter((stroke) => {
      const [a, b] = [stroke[0], stroke.at(-1)];
      return stroke.length > 2 && a !== undefined && b !== undefined && Math.hypot(a[0] - b[0], a[1] - b[1]) < 0.3;
    }).length / strokes.length;
  return { coverage: ink / samples, across, stroke: total / strokes.length, closed };
}

function distance([x, y]: Spot, [ax, ay]: Spot, [bx, by]: Spot): number {
  const length = (bx - ax) ** 2 + (by - ay) ** 2;
  const t = length === 0 ? 0 : Math.min(1, Math.max(0, ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / length));
  return Math.hypot(x - ax - t * (bx - ax), y - ay - t * (by - ay));
}

function differ(a: Look, b: Look): string | null {
  const ratio = (x: number, y: number) => Math.max(x, y) / Math.max(1e-9, Math.min(x, y));
  if (ratio(a.coverage, b.coverage) >= 1.25) return 'coverage';
  if (Math.abs(a.across - b.across) >= 0.25) return 'direction';
  if (ratio(a.stroke, b.stroke) >= 1.6) return 'length';
  if (Math.abs(a.closed - b.closed) >= 0.4) return 'closed';
  return null;
}

test('D2 on a copy without colour every two contents still differ in ink, direction, length or form of their lines', () => {
  for (const family of [contents, farKinds] as const) {
    const looks = family.map((kind) => [kind, lookOf(marks[kind])] as const);
    looks.forEach(([a, lookA], i) =>
      looks.slice(i + 1).forEach(([b, lookB]) => {
        assert.ok(differ(lookA, lookB) !== null, `${a} ${JSON.stringify(lookA)} and ${b} ${JSON.stringify(lookB)}`);
      }),
    );
  }
});

test('D10 on a copy without colour every two states of a queen still differ in ink, direction, length or form of their lines', () => {
  const looks = queenStates.map((state) => [state, lookOf(queenMarks[state])] as const);
  looks.forEach(([a, lookA], i) =>
    looks.slice(i + 1).forEach(([b, lookB]) => {
      assert.ok(differ(lookA, lookB) !== null, `${a} ${JSON.stringify(lookA)} and ${b} ${JSON.stringify(lookB)}`);
    }),
  );
});

test('D3 the patterns of a queen answer their fills, and a sample stands alone', () => {
  const fills = queenStates.flatMap((state) => [queenFill('q', state, 'worked out'), queenFill('q', state, 'guessed')]);
  const used = fills.map((fill) => `<rect fill="${fill}"/>`).join('');
  assert.deepEqual(idFaults(`<svg>${queenDefs('q', 1)}${used}</svg>`), []);
  for (const state of queenStates) {
    const sample = queenSample(state, 'one');
    assert.equal(faultOf(sample), null);
    assert.deepEqual([...drawnFaults(sample), ...idFaults(sample)], []);
  }
});

test('D2 a mark compared with itself does not differ, so that the test above can fail', () => {
  for (const kind of kinds) assert.equal(differ(lookOf(marks[kind]), lookOf(marks[kind])), null);
});

test('D2 no mark blackens its area: ink covers between 3 and 45 parts in a hundred', () => {
  for (const kind of kinds) {
    const { coverage } = lookOf(marks[kind]);
    assert.ok(coverage > 0.03 && coverage < 0.45, `${kind}: ${coverage}`);
  }
});

test('D3 the sprite holds every kind in every ink once, is well formed, and names no colour', () => {
  const sprite = sharedDefs();
  assert.equal(faultOf(sprite), null);
  assert.deepEqual(drawnFaults(sprite), []);
  assert.deepEqual(idFaults(sprite), []);
  for (const ink of inks) for (const kind of kinds) assert.ok(sprite.includes(`id="${markFill('fm', kind, ink).slice(5, -1)}"`));
  assert.ok(sprite.length < 24_000, `${sprite.length}`);
});

test('D3 two prefixes never share an id, and a prefix that could break out of an attribute is refused', () => {
  assert.deepEqual(idFaults(`${markDefs('a')}${markDefs('b')}`), []);
  assert.throws(() => markDefs('a"b'), /plain name/);
  assert.throws(() => markDefs(''), /plain name/);
});

test('D3 a fill tells which kind it is', () => {
  for (const ink of inks) for (const kind of kinds) assert.equal(kindOfFill(markFill('a-b', kind, ink)), kind);
  assert.equal(kindOfFill('none'), null);
});

test('D2 the four states of queen cells are four forms', () => {
  const forms = cellStates.map((state) => queenCell(state, 0, 0).replace(`cell-${state}`, ''));
  assert.equal(new Set(forms).size, cellStates.length);
});

test('D3 a sample with a prefix of its own stands alone', () => {
  const sample = markSample('egg', 'guessed', { prefix: 'own' });
  assert.equal(faultOf(sample), null);
  assert.deepEqual(idFaults(sample), []);
});
