/** The single values of a body, each with its path, so that any entry can be corrected without a form of its own. */

export interface Leaf {
  /** Dotted, as in issues: `faces.0.brood8`. */
  readonly path: string;
  readonly text: string;
}

/** An id cannot be typed, and what an entry points to is not corrected by hand. */
const id = /^[0-9a-f]{8}-[0-9a-f]{4}-/;

export function leavesOf(value: unknown): readonly Leaf[] {
  return allLeavesOf(value).filter(({ text }) => !id.test(text));
}

/** With the ids. */
export function allLeavesOf(value: unknown, path = ''): readonly Leaf[] {
  if (typeof value === 'object' && value !== null) {
    return Object.entries(value).flatMap(([key, inner]) => allLeavesOf(inner, path === '' ? key : `${path}.${key}`));
  }
  return path === '' ? [] : [{ path, text: value === null || value === undefined ? '' : String(value) }];
}

/** A copy with what was typed: an empty text is null, a number stays a number, yes and no stay what they are. */
export function withLeaves(value: unknown, typed: Readonly<Record<string, string>>, path = ''): unknown {
  if (Array.isArray(value)) return value.map((inner, n) => withLeaves(inner, typed, path === '' ? String(n) : `${path}.${n}`));
  if (typeof value === 'object' && value !== null) {
    return Object.fromEntries(
      Object.entries(value).map(([key, inner]) => [key, withLeaves(inner, typed, path === '' ? key : `${path}.${key}`)]),
    );
  }
  const text = typed[path];
  if (text === undefined) return value;
  const plain = text.trim();
  if (plain === '') return null;
  if (plain === 'true' || plain === 'false') return plain === 'true';
  if (typeof value !== 'string' && /^[-+]?\d+([.,]\d+)?$/.test(plain)) return Number(plain.replace(',', '.'));
  return typeof value === 'string' ? text : plain;
}
