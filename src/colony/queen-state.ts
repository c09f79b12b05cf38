/** The states of a queen that are told to a keeper; the model has finer ones inside. */
export const queenStates = [
  'laying',
  'cells open',
  'cells sealed',
  'virgin',
  'new queen laying',
  'failing',
  'drone layer',
  'none',
  'laying workers',
] as const;
export type QueenState = (typeof queenStates)[number];
