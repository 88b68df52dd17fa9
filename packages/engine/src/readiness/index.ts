export type {
  CarAcceptance,
  CarAsked,
  EventAsked,
  PastEvent,
  Piece,
  SaidIn,
} from './asked.ts';
export * from './result.ts';
