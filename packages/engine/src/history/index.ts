export * from './build-history.ts';
export type * from './case.ts';
export * from './contribution.ts';
export { type Amounts, deriveAmounts } from './derive-amounts.ts';
export { type Meter, type Placed, readingOf } from './placed.ts';
export type { KeptReading, MeterHistory, UnknownGap } from './read-meter.ts';
export { isStored, type StorageWindow } from './storage-windows.ts';
