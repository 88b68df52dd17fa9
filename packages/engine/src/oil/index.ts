export type { Drive } from './drive.ts';
export { type Folded, foldLedger } from './fold.ts';
export { type OilPriors, USUAL_PRIORS } from './hypothesis.ts';
export { answerOil, type CarOil, type OilAnswer, type Today } from './oil-answer.ts';
export type { OilOperation, RawLevel, StickCondition } from './operation.ts';
export { pastLevels } from './past-level.ts';
export type { StickCar } from './stick.ts';
export { type OilEvent, type OilHappening, toOperations } from './to-operations.ts';
