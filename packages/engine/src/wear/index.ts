export { analyseCase, analyseHistory, analyseLedger } from './analyse-case.ts';
export { type Asked, ledgerOf } from './ledger.ts';
export * from './result.ts';
export { sortFlags } from './sort-flags.ts';
