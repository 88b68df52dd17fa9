/** The queries of the work that follows an entry; used by `@quartermark/jobs`. */
export * from './car-standing.ts';
export * from './day.ts';
export * from './settle.ts';
export * from './take-outbox.ts';
export * from './take-stale.ts';
export * from './want.ts';
