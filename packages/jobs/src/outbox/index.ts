/**
 * The light door: what a verb calls inside its own transaction. Imports no queue. What was wanted here is
 * kept with the entry or not at all; the worker does the rest, whichever process dies meanwhile.
 */
export { wantRecompute } from './want-recompute.ts';
