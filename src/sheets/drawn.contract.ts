/**
 * What tests of drawings share: a small check that a string is well-formed XML, one that it names no
 * colour of its own, one that every reference is answered, and paths turned into polylines.
 */

/** The first thing wrong with an XML text as one element, or null. Knows elements, attributes, text and references; no more is drawn. */
export function faultOf(xml: string): string | null {
  const open: string[] = [];
  const token = /<(\/?)([A-Za-z][\w.-]*)((?:\s+[A-Za-z][\w:.-]*="[^"<]*")*)\s*(\/?)>|([^<]+)|(<)/g;
  let roots = 0;
  for (const found of xml.trim().matchAll(token)) {
    const [, closing, name = '', attributes = '', empty, text, stray] = found;
    if (stray !== undefined) return `a stray < at ${found.index}: ${xml.slice(found.index, found.index + 60)}`;
    const loose = /&(?!(?:amp|lt|gt|quot|#\d+);)/.exec(text ?? attributes);
    if (loose !== null) return `a bare & near ${found[0].slice(0, 60)}`;
    if (text !== undefined) {
      if (open.length === 0 && text.trim() !== '') return `text outside: ${text.slice(0, 40)}`;
      continue;
    }
    const names = [...attributes.matchAll(/\s([\w:.-]+)=/g)].map((match) => match[1]);
    if (new Set(names).size !== names.length) return `an attribute twice in ${found[0].slice(0, 80)}`;
    if (closing === '/') {
      if (open.pop() !== name) return `</${name}> closes nothing`;
    } else {
      if (open.length === 0) roots += 1;
      if (empty !== '/') open.push(name);
    }
  }
  if (open.length > 0) return `<${open.join('><')}> not closed`;
  return roots === 1 ? null : `${roots} roots`;
}

/** Everything in a drawing that no theme could restyle, or that is no number. */
export function drawnFaults(svg: string): string[] {
  const wrong = [
    /#[0-9a-f]{3,8}\b(?=[";)])|\b(?:rgba?|hsla?|oklch|lab)\(/gi,
    /="(?:black|white|red|grey|gray|blue|green|currentColor)"/gi,
    /NaN|undefined|Infinity|null/g,
  ];
  const bad = wrong.flatMap((pattern) => svg.match(pattern) ?? []);
  return bad.filter((text) => !svg.includes(`url(${text})`));
}

/** References to ids that the document does not hold, and ids that it holds twice. */
export function idFaults(document: string): string[] {
  const ids = [...document.matchAll(/\sid="([^"]+)"/g)].map((match) => match[1] ?? '');
  const twice = ids.filter((id, i) => ids.indexOf(id) !== i);
  const missing = [...document.matchAll(/url\(#([^)]+)\)/g)].map((match) => match[1] ?? '').filter((id) => !ids.includes(id));
  return [...twice.map((id) => `twice: ${id}`), ...new Set(missing.map((id) => `missing: ${id}`))];
}

export type Spot = readonly [x: number, y: number];

/** The strokes of a path as polylines; knows absolute M, L, H, V, Q, C and Z. Throws on anything else. */
export function flatten(d: string, steps = 16): readonly (readonly Spot[])[] {
  const strokes: Spot[][] = [];
  let at: Spot = [0, 0];
  for (const [, letter = '', rest = ''] of d.matchAll(/([A-Za-z])([^A-Za-z]*)/g)) {
    const n = (rest.match(/-?\d*\.?\d+/g) ?? []).map(Number);
    const stroke = strokes.at(-1) ?? [];
    const to = (spot: Spot) => {
      stroke.push(spot);
      at = spot;
    };
    const pair = (i: number): Spot => [n[i] ?? Number.NaN, n[i + 1] ?? Number.NaN];
    if (letter === 'M') strokes.push([(at = pair(0))]);
    else if (letter === 'L') for (let i = 0; i < n.length; i += 2) to(pair(i));
    else if (letter === 'H') for (const x of n) to([x, at[1]]);
    else if (letter === 'V') for (const y of n) to([at[0], y]);
    else if (letter === 'Q') for (let i = 0; i < n.length; i += 4) curve([at, pair(i), pair(i + 2)], steps, to);
    else if (letter === 'C') for (let i = 0; i < n.length; i += 6) curve([at, pair(i), pair(i + 2), pair(i + 4)], steps, to);
    else if (letter === 'Z') to(stroke[0] ?? at);
    else throw new Error(`a path with ${letter}: ${d}`);
  }
  return strokes;
}

function curve(control: readonly Spot[], steps: number, to: (spot: Spot) => void): void {
  for (let i = 1; i <= steps; i += 1) {
    let row: readonly Spot[] = control;
    const t = i / steps;
    while (row.length > 1) {
      row = row.slice(1).map((b, j): Spot => {
        const a = row[j] ?? b;
        return [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];
      });
    }
    to(row[0] ?? [0, 0]);
  }
}

/** True when a spot lies inside a closed polyline (even–odd). */
export function inside(shape: readonly Spot[], [x, y]: Spot): boolean {
  let within = false;
  shape.forEach((a, i) => {
    const b = shape[(i + 1) % shape.length] ?? a;
    if (a[1] > y !== b[1] > y && x < a[0] + ((y - a[1]) / (b[1] - a[1])) * (b[0] - a[0])) within = !within;
  });
  return within;
}
