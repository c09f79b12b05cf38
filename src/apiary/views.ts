/** Views for the shells that need more than a Picture: history by day, what a bar should look like, how readers differ. */
export { viewOf } from '../colony/view-of.ts';
export { type ReaderBias, readerBiases } from '../colony/reader-pairs.ts';
