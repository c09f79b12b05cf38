/** What cannot be true of the eighths of one reading, whoever reads: more than a face, more of a part than of the whole, a face twice. */
import { fault } from '../hive/faults.ts';
import { eighthsInWhole } from '../hive/shapes.ts';
import type { Entry } from '../journal/entry.ts';
import type { Issue } from '../numbers/result.ts';
import type { FaceReading, Reading } from './reading.ts';

export function faceFaults(entry: Entry<Reading>): Issue[] {
  const { faces } = entry.body;
  const faults = faces.flatMap((face, i) => eighthFaults(entry, `faces.${i}`, face));
  const { patch = null } = entry.body;
  if (patch !== null && patch.occupied > patch.cells)
    faults.push(fault(entry, 'part-above-whole', 'patch.occupied', patch.occupied, 'at most patch.cells'));
  const named = faces.map((face) => face.face);
  if (new Set(named).size < named.length || (named.length > 1 && named.includes('both'))) {
    faults.push(fault(entry, 'face-twice', 'faces.1.face', named.join(', '), 'both faces together once, or each face once'));
  }
  return faults;
}

function eighthFaults(entry: Entry, path: string, face: FaceReading): Issue[] {
  const { brood8, food8, drone8 = null, sealedFood8 = null } = face;
  const faults: Issue[] = [];
  const whole = (brood8 ?? 0) + (food8 ?? 0);
  if (whole > eighthsInWhole)
    faults.push(fault(entry, 'eighths-above-eight', `${path}.food8`, whole, `brood and food together at most ${eighthsInWhole}`));
  if (drone8 !== null && drone8 > (brood8 ?? eighthsInWhole))
    faults.push(fault(entry, 'part-above-whole', `${path}.drone8`, drone8, 'at most brood8'));
  if (sealedFood8 !== null && sealedFood8 > (food8 ?? eighthsInWhole)) {
    faults.push(fault(entry, 'part-above-whole', `${path}.sealedFood8`, sealedFood8, 'at most food8'));
  }
  return faults;
}
