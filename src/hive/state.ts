/**
 * Wood and comb as the journal says they are: the hive part of the state that the fold makes.
 * While folding, the kinds of this room change it in place; afterwards everybody reads it only.
 */
import type { Attachment } from './attachments.ts';
import type { JoinedSet } from './joined.ts';
import type { Piece } from './pieces.ts';
import type { Id } from '../journal/entry.ts';
import type { Day } from '../numbers/day.ts';
import type { Issue } from '../numbers/result.ts';
import type { Typed } from '../numbers/units.ts';
import type { Window } from '../numbers/window.ts';

export interface Yard {
  readonly id: Id;
  readonly name: string;
  readonly latitude: number | null;
  readonly longitude: number | null;
  readonly timeZone: string;
}

/** A length as typed, and whether it was measured or is a typical value. */
export interface Dimension extends Typed {
  readonly how: 'measured' | 'typical';
}

export interface Hive {
  readonly id: Id;
  readonly name: string;
  /** Places in the trough, 1…bars from the fixed end wall that is the datum. */
  readonly bars: number;
  readonly barWidth: Dimension;
  /** Inside width at the top, between the walls at the bar. */
  readonly topWidth: Dimension;
  /** Bar to floor. */
  readonly depth: Dimension;
  /** Angle of the side walls from the vertical, degrees. */
  readonly wallAngleDeg: number;
  readonly wallAngleHow: 'measured' | 'typical';
  /** Where the entrance is: beside place 1, beside the last place, or in the long side. */
  readonly entrance: 'first' | 'last' | 'side';
  readonly since: Day;
}

/** A stretch of the trough between follower boards or end walls; places from…to, both included. */
export interface Bay {
  readonly id: Id;
  readonly hive: Id;
  from: number;
  to: number;
  /** True while a living colony has it: only then may no other stretch overlap it. */
  held?: boolean;
  /** Where its ends stood from which day on, oldest first: what the film draws the follower board from. */
  readonly moves?: BayMove[];
}

export interface BayMove {
  readonly day: Day;
  readonly from: number;
  readonly to: number;
}

export interface Bar {
  readonly id: Id;
  readonly mark: string | null;
  readonly width: Dimension | null;
}

export interface Comb {
  readonly id: Id;
  readonly bar: Id | null;
  /** When it was begun, where known. */
  readonly born: Window | null;
  readonly ended: Day | null;
  /** Share of the full outline that is built, 0…1; null when never seen. */
  built: number | null;
  /** As it was seen last; null when nobody looked. What was cut is free again until it is seen otherwise. */
  attached: Attachment | null;
  /** Where it is: a place, or away; null before its first placing. */
  at: Spot | null;
  /** Where it has been, oldest first: what the film's threads are drawn from. */
  readonly placings: Placing[];
}

export type Spot =
  | { readonly kind: 'place'; readonly hive: Id; readonly place: number; readonly facing: Facing }
  /** Built on the follower board of a bay: it goes where the board goes. */
  | { readonly kind: 'follower'; readonly hive: Id; readonly bay: Id }
  | { readonly kind: 'away'; readonly where: AwayPlace };

export type Facing = 'as built' | 'turned';
export const awayPlaces = ['hand', 'box', 'tub', 'freezer', 'melted', 'given away', 'lost'] as const;
export type AwayPlace = (typeof awayPlaces)[number];

export interface Placing {
  readonly from: Day;
  readonly spot: Spot;
  readonly entry: Id;
}

/** A keeper's own measurement, as typed. */
export interface Measurement {
  readonly entry: Id;
  readonly day: Day;
  readonly what: MeasurementKind;
  readonly typed: Typed;
  readonly comb: Id | null;
  readonly hive: Id | null;
}

export const measurementKinds = ['cells along 10 cm', 'honey comb weight', 'bees on a face', 'box length'] as const;
export type MeasurementKind = (typeof measurementKinds)[number];

export interface HiveDraft {
  readonly yards: Map<Id, Yard>;
  readonly hives: Map<Id, Hive>;
  readonly bays: Map<Id, Bay>;
  readonly bars: Map<Id, Bar>;
  readonly combs: Map<Id, Comb>;
  /** Which comb hangs where now: hive id, then place. */
  readonly placed: Map<Id, Map<number, Id>>;
  /** Places of a bay from which hands took the bar and put none: hive id. Other places without a comb have a bar that nobody read. */
  readonly gaps: Map<Id, Set<number>>;
  /** Combs that have grown together, by the entry that said so. */
  readonly joined: Map<Id, JoinedSet>;
  /** Pieces cut or broken from combs, in the order of the fold. */
  readonly pieces: Piece[];
  /** Strips of wood on the outward side of a bar, in mm: hive id, then place. */
  readonly spacers: Map<Id, Map<number, number>>;
  readonly measurements: Measurement[];
  /** What did not fit, in the order of the fold. */
  readonly faults: Issue[];
}

export function emptyHives(): HiveDraft {
  return {
    yards: new Map(),
    hives: new Map(),
    bays: new Map(),
    bars: new Map(),
    combs: new Map(),
    placed: new Map(),
    gaps: new Map(),
    joined: new Map(),
    pieces: [],
    spacers: new Map(),
    measurements: [],
    faults: [],
  };
}
