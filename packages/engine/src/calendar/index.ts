export * from './add.ts';
export * from './day-number.ts';
export * from './zone.ts';
