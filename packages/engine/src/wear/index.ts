export { analyseCase, analyseHistory } from './analyse-case.ts';
export type { Asked } from './ledger.ts';
export * from './result.ts';
export { sortFlags } from './sort-flags.ts';
