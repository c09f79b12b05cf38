/** What the Visit screen asks in the keeper's terms, handed out at the front door: the signs and the notes on temper. */
export { signs, type SignCode, type SignLevel } from '../colony/signs.ts';
export { temperNotes, temperWords, visitKinds } from '../colony/visit.ts';
