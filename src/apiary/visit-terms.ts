/** What the Visit screen asks in the keeper's terms, handed out at the front door: the signs, the notes on temper, and an empty comb. */
export { doneWithFallen, type DoneWithFallen, type FallenComb, fallenCombs } from '../colony/comb-fell.ts';
export { deadWords, humWords, windowWords } from '../colony/kind-look.ts';
export { signs, type SignCode, type SignLevel } from '../colony/signs.ts';
export {
  nothingAnswered,
  temperNotes,
  temperWords,
  visitKinds,
  winterTasks,
  type WinterList,
  type WinterTask,
} from '../colony/visit.ts';
export { type Attachment, attachments } from '../hive/attachments.ts';
export { isTooWide } from '../hive/widths.ts';
export { bareShares } from '../hive/contents.ts';
export { awayWhere, type AwayWhere, type Move, moved, step } from '../hive/row.ts';
export type { Hung, Row } from '../hive/row-shape.ts';
export { placesTogether } from '../hive/row-sets.ts';
export { type JoinedHow, joinedHow, type StopReason, stopReasons } from '../hive/joined.ts';
