/**
 * Streams of chance by name: each is derived from a seed and three whole numbers (what for, which particle,
 * which day), so that an answer does not depend on who drew first. The generator is xoshiro128** of
 * D. Blackman and S. Vigna (2018, public domain); its state is spread from the names by the last step of
 * MurmurHash3 (A. Appleby, public domain). Not for secrets.
 */

/** The generator's memory; changed in place, because one is used again for millions of particle-days. */
export interface Stream {
  a: number;
  b: number;
  c: number;
  d: number;
  /** The second normal of a pair, while it waits. */
  spare: number;
  waiting: boolean;
}

export function newStream(seed: number, what: number, index: number, day: number): Stream {
  return setStream({ a: 0, b: 0, c: 0, d: 0, spare: 0, waiting: false }, seed, what, index, day);
}

/** Puts a stream at the beginning of the one that bears these names. Names are taken as 32-bit whole numbers. */
export function setStream(stream: Stream, seed: number, what: number, index: number, day: number): Stream {
  let h = spread(seed ^ 0x9e3779b9);
  h = spread(h ^ Math.imul(what + 1, 0x85ebca77));
  h = spread(h ^ Math.imul(index + 1, 0xc2b2ae3d));
  h = spread(h ^ Math.imul(day + 1, 0x27d4eb2f));
  stream.a = spread(h + 0x6d2b79f5);
  stream.b = spread(h + 0xda56f3ea);
  stream.c = spread(h + 0x47826ddf);
  // The last word is odd, so that the state is never all zero.
  stream.d = spread(h + 0xb4ade7d4) | 1;
  stream.waiting = false;
  return stream;
}

/** A 32-bit whole number, 0 … 2³² − 1. */
export function nextWord(stream: Stream): number {
  const { a, b, c, d } = stream;
  const five = Math.imul(b, 5);
  const result = Math.imul((five << 7) | (five >>> 25), 9) >>> 0;
  const c2 = c ^ a;
  const d2 = d ^ b;
  stream.b = b ^ c2;
  stream.a = a ^ d2;
  stream.c = c2 ^ (b << 9);
  stream.d = (d2 << 11) | (d2 >>> 21);
  return result;
}

/** Evenly between 0 and 1, both ends excluded; one of 2³² values. */
export function nextUnit(stream: Stream): number {
  return (nextWord(stream) + 0.5) / 4294967296;
}

/** Standard normal, by the method of G. E. P. Box and M. E. Muller (1958), two at a time. */
export function nextNormal(stream: Stream): number {
  if (stream.waiting) {
    stream.waiting = false;
    return stream.spare;
  }
  const radius = Math.sqrt(-2 * Math.log(nextUnit(stream)));
  const angle = 2 * Math.PI * nextUnit(stream);
  stream.spare = radius * Math.sin(angle);
  stream.waiting = true;
  return radius * Math.cos(angle);
}

function spread(word: number): number {
  let h = word | 0;
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return h ^ (h >>> 16);
}
