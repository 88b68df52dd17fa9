export { judgeSaid } from './judge-said.ts';
export { replay, replayDays } from './replay.ts';
export type * from './result.ts';
export { saidOf } from './said-of.ts';
export {
  countingLines,
  HORIZONS,
  horizonOf,
  intervalKey,
  isByCalendar,
  longestBefore,
  tallySaid,
} from './tally-said.ts';
