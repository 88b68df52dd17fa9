export type { Drive } from './drive.ts';
export { foldLedger } from './fold.ts';
export { type OilPriors, USUAL_PRIORS } from './hypothesis.ts';
export { answerOil, type CarOil, type OilAnswer, type Today } from './oil-answer.ts';
export type { RawLevel, StickCondition } from './operation.ts';
export type { StickCar } from './stick.ts';
export { type OilEvent, type OilHappening, toOperations } from './to-operations.ts';
