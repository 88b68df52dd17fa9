export { normalCdf } from '../probability/normal.ts';
export { likeliestStep } from './bank.ts';
export { resumeLedger } from './checkpoints.ts';
export { gaussHermite } from './distance-to-min.ts';
export { CONSUMPTION_SCALE_L, type Drive, driveBy, driveRoom } from './drive.ts';
export { predict, update } from './filter.ts';
export { type Folded, foldLedger } from './fold.ts';
export { HOT_GRADES, leastAt150, type OilNamed, readGrade, WINTER_GRADES } from './grade.ts';
export {
  CIRCUIT,
  emptyHypothesis,
  type Hypothesis,
  LEVEL,
  type OilPriors,
  ROAD,
  SIZE,
  STEP,
  STRIP,
  USUAL_PRIORS,
} from './hypothesis.ts';
export { type AroundABottle, type LearntSpan, learnSpan } from './learn-span.ts';
export {
  answerOil,
  type CarOil,
  type OilAnswer,
  type OilLooks,
  type OilNotice,
  type OilNoticeKind,
  type Today,
} from './oil-answer.ts';
export type { OilOperation, RawLevel, StickCondition } from './operation.ts';
export { pastLevels } from './past-level.ts';
export { type RateBand, type RatesAt, ratesAlong } from './rates-along.ts';
export { type Moved, smooth } from './smoother.ts';
export { judgeStick, type StickCar, type StickLook } from './stick.ts';
export { type OilEvent, type OilHappening, toOperations } from './to-operations.ts';
