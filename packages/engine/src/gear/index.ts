export { analyseGear, type HistoryOf, historiesAt } from './analyse-gear.ts';
export { BEDDING_NOTICE } from './bedding.ts';
export { ageDays, type DateCode, madeFrom, readDateCode } from './date-code.ts';
export { fitProblem } from './fit-problem.ts';
export { fitWindows } from './fit-windows.ts';
export * from './result.ts';
