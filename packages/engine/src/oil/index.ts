export { type Checkpoint, resumeLedger } from './checkpoints.ts';
export type { Drive } from './drive.ts';
export { foldLedger } from './fold.ts';
export { type OilPriors, USUAL_PRIORS } from './hypothesis.ts';
export type { Alert, Moved, UnexplainedRise } from './ledger.ts';
export {
  answerOil,
  type CarOil,
  type OilAnswer,
  type OilStatus,
  type Today,
} from './oil-answer.ts';
export type { EntryRef, OilOperation, RawLevel, StickCondition } from './operation.ts';
export { type PastLevel, pastLevels } from './past-level.ts';
export type { StickCar } from './stick.ts';
export { type OilEvent, type OilHappening, toOperations } from './to-operations.ts';
