export { type Asked, analyseCase, analyseHistory } from './analyse-case.ts';
export * from './result.ts';
export { sortFlags } from './sort-flags.ts';
