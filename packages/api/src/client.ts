/** What a browser may know of the api: types only, no line of code. */

export type * from './event-views.ts';
export type * from './letter-views.ts';
export type { Refusal, RefusalCode } from './refusal.ts';
export type { AppRouter } from './router.ts';
export type { SetupState } from './setup/state.ts';
export type * from './views.ts';
