/** How a single value of a body is named beside its field: "faces, 1, brood8" for `faces.0.brood8`. */
import { plainName } from '../sums/answer-table.tsx';

export function leafName(path: string): string {
  return path
    .split('.')
    .map((part) => (/^\d+$/.test(part) ? String(Number(part) + 1) : plainName(part)))
    .join(', ');
}
