/** Questions about what has not happened yet, answered on a copy of a book and kept nowhere. */
export { type AddedUse, addedId, addedUse } from './added-use.ts';
export * from './event-outlooks.ts';
export * from './first-to-run-out.ts';
export * from './outlook.ts';
export * from './what-if.ts';
