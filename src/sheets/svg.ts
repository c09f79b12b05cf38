/**
 * The few pieces of text that every drawing needs: numbers as short as they can be, text made safe,
 * an element with its attributes. No drawing library: a picture is a string, made once, read by all.
 */
import { assert } from '../numbers/assert.ts';

/** A coordinate in pixels, to a hundredth, as short as it can be written (".5", "12"). Throws on NaN and infinity. */
export function px(value: number): string {
  assert(Number.isFinite(value), `a finite coordinate, not ${value}`);
  const text = String(Math.round(value * 100) / 100);
  if (text.startsWith('0.')) return text.slice(1);
  if (text.startsWith('-0.')) return `-${text.slice(2)}`;
  return text;
}

const unsafe = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff&<>"]/;

/** Text made safe for element content and for attribute values in double quotes. */
export function safe(text: string): string {
  if (!unsafe.test(text)) return text;
  return text
    .replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g, '')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}

export type Attributes = Readonly<Record<string, string | number | null>>;

/** An element; attributes that are null are left out, numbers are written by `px`. */
export function element(name: string, attributes: Attributes, inside = ''): string {
  let open = `<${name}`;
  for (const [key, value] of Object.entries(attributes)) {
    if (value !== null) open += ` ${key}="${typeof value === 'number' ? px(value) : safe(value)}"`;
  }
  return inside === '' ? `${open}/>` : `${open}>${inside}</${name}>`;
}

/** A whole picture of a size in pixels, spoken by screen readers as its label. */
export function picture(kind: string, width: number, height: number, label: string, inside: string): string {
  const box = `0 0 ${px(width)} ${px(height)}`;
  return element(
    'svg',
    { xmlns: 'http://www.w3.org/2000/svg', class: kind, viewBox: box, width, height, role: 'img', 'aria-label': label },
    inside,
  );
}

/** An id prefix must be a plain name, so that it can stand in `url(#…)` without quoting. */
export function checkPrefix(prefix: string): string {
  assert(/^[A-Za-z][\w-]*$/.test(prefix), `an id prefix that is a plain name, not ${prefix}`);
  return prefix;
}
