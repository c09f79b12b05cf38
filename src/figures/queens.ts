/** Figures of one topic; see `figure.ts` for what a figure carries. */

export const queensFigures = [
] as const;
