/**
 * The straight lines of a PDF that Chromium wrote, in millimetres on the page: streams are inflated and read by the few
 * operators that paths and transforms need (ISO 32000-1, 8.4 and 8.5). Curves, text and pictures are passed over.
 */
import { inflateSync } from 'node:zlib';

export interface PdfLine {
  readonly lengthMm: number;
  readonly isLevel: boolean;
}

type Matrix = readonly [number, number, number, number, number, number];

const mmPerPoint = 25.4 / 72;

export function pdfPages(pdf: Buffer): number {
  return pdf.toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0;
}

export function pdfLines(pdf: Buffer): readonly PdfLine[] {
  const text = pdf.toString('latin1');
  const found: PdfLine[] = [];
  for (const match of text.matchAll(/stream\r?\n/g)) {
    const from = match.index + match[0].length;
    const to = text.indexOf('endstream', from);
    try {
      found.push(...linesIn(inflateSync(pdf.subarray(from, to)).toString('latin1')));
    } catch {
      // Fonts and pictures are streams too, and some are packed otherwise.
    }
  }
  return found;
}

function linesIn(stream: string): readonly PdfLine[] {
  const found: PdfLine[] = [];
  const kept: Matrix[] = [];
  let now: Matrix = [1, 0, 0, 1, 0, 0];
  let at: readonly [number, number] | null = null;
  let numbers: number[] = [];
  for (const word of stream.split(/\s+/)) {
    const value = Number(word);
    if (word !== '' && Number.isFinite(value)) {
      numbers.push(value);
      continue;
    }
    const [x = 0, y = 0] = numbers.slice(-2);
    if (word === 'q') kept.push(now);
    else if (word === 'Q') now = kept.pop() ?? now;
    else if (word === 'cm' && numbers.length >= 6) now = times(numbers.slice(-6) as unknown as Matrix, now);
    else if (word === 'm') at = through(now, x, y);
    else if (word === 'l' && at !== null) {
      const to = through(now, x, y);
      const [dx, dy] = [to[0] - at[0], to[1] - at[1]];
      found.push({ lengthMm: Math.hypot(dx, dy) * mmPerPoint, isLevel: Math.abs(dy) < 0.01 });
      at = to;
    }
    numbers = [];
  }
  return found;
}

function through([a, b, c, d, e, f]: Matrix, x: number, y: number): readonly [number, number] {
  return [a * x + c * y + e, b * x + d * y + f];
}

/** `first` is done before `then`. */
function times(first: Matrix, then: Matrix): Matrix {
  const [a, b, c, d, e, f] = first;
  const [g, h, i, j, k, l] = then;
  return [a * g + b * i, a * h + b * j, c * g + d * i, c * h + d * j, e * g + f * i + k, e * h + f * j + l];
}
