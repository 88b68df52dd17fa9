export type {
  CarAcceptance,
  CarAsked,
  EventAsked,
  PastEvent,
  Piece,
  SaidIn,
} from './asked.ts';
export { assess, carReadiness } from './assess.ts';
export { inspectorFacts } from './inspector/inspector-facts.ts';
export type * from './inspector/result.ts';
export { knownOf } from './known.ts';
export { pastEventsOf } from './past-use/past-events-of.ts';
export { type FormerEvent, type ProposedUse, proposeUse } from './past-use/propose-use.ts';
export { type DatedEvent, type RecordedUse, usesOfEvent } from './past-use/uses-of-event.ts';
export * from './result.ts';
export { fitFuel, litresFor } from './take-along/fuel-fit.ts';
export type { FuelToTake, OilToTake, TakeAlong } from './take-along/result.ts';
export { takeAlong } from './take-along/take-along.ts';
export { usualRequirements } from './usual-requirements.ts';
export { verdictOf } from './verdict.ts';
export { workList } from './work-list.ts';
