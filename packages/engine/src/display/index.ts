export * from './car-facts.ts';
export * from './format-day.ts';
export * from './format-number.ts';
export * from './format-quantity.ts';
export * from './item-words.ts';
export type * from './lane.ts';
export * from './lane-of.ts';
export * from './level-words.ts';
export * from './urgency-of.ts';
