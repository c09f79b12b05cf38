/** Views of single colonies for the shells that need more than a Picture: history by day, and what a bar should look like. */
export { viewOf } from '../colony/view-of.ts';
