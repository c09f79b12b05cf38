/** All kinds of entries that this program understands, in one array. Adding a kind is its file and one line here. */
import { adviceIssuedKind } from '../colony/kind-advice-issued.ts';
import { colonyEndedKind } from '../colony/kind-colony-ended.ts';
import { beeEscapeKind } from '../colony/kind-bee-escape.ts';
import { combFellKind } from '../colony/kind-comb-fell.ts';
import { colonyKind } from '../colony/kind-colony.ts';
import { contactKind } from '../colony/kind-contact.ts';
import { feedingKind } from '../colony/kind-feeding.ts';
import { figureOverrideKind } from '../colony/kind-figure-override.ts';
import { forecastIssuedKind } from '../colony/kind-forecast-issued.ts';
import { lookKind } from '../colony/kind-look.ts';
import { noteKind } from '../colony/kind-note.ts';
import { observerKind } from '../colony/kind-observer.ts';
import { queenKind } from '../colony/kind-queen.ts';
import { readingKind } from '../colony/kind-reading.ts';
import { reignKind } from '../colony/kind-reign.ts';
import { splitKind } from '../colony/kind-split.ts';
import { swarmKind } from '../colony/kind-swarm.ts';
import { uniteKind } from '../colony/kind-unite.ts';
import { visitKind } from '../colony/kind-visit.ts';
import type { ColonyDraft } from '../colony/state.ts';
import { barKind } from '../hive/kind-bar.ts';
import { bayKind } from '../hive/kind-bay.ts';
import { combKind } from '../hive/kind-comb.ts';
import { hiveKind } from '../hive/kind-hive.ts';
import { measurementKind } from '../hive/kind-measurement.ts';
import { combPieceKind } from '../hive/kind-comb-piece.ts';
import { combsJoinedKind } from '../hive/kind-combs-joined.ts';
import { combsPartedKind } from '../hive/kind-combs-parted.ts';
import { moveKind } from '../hive/kind-move.ts';
import { placingKind } from '../hive/kind-placing.ts';
import { yardKind } from '../hive/kind-yard.ts';
import { correctionKind } from '../journal/kind-correction.ts';
import { voidKind } from '../journal/kind-void.ts';
import type { AnyKind } from '../journal/kind.ts';
import { dayWeatherKind } from '../weather/kind-day-weather.ts';

export const allKinds: readonly AnyKind<ColonyDraft>[] = [
  correctionKind,
  voidKind,
  dayWeatherKind,
  yardKind,
  hiveKind,
  bayKind,
  barKind,
  combKind,
  placingKind,
  moveKind,
  combsJoinedKind,
  combsPartedKind,
  combPieceKind,
  measurementKind,
  observerKind,
  contactKind,
  figureOverrideKind,
  noteKind,
  colonyKind,
  queenKind,
  reignKind,
  swarmKind,
  splitKind,
  uniteKind,
  colonyEndedKind,
  visitKind,
  readingKind,
  lookKind,
  combFellKind,
  beeEscapeKind,
  feedingKind,
  adviceIssuedKind,
  forecastIssuedKind,
];
