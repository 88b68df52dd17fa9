export { type Api, type ApiSettings, createApi } from './create-api.ts';
export { answerFeed } from './feed/answer.ts';
export { answerUnsubscribe } from './letter/unsubscribe.ts';
export { answerPhoto, PHOTO_BYTES_MAX } from './photo/answer.ts';
export { BODY_BYTES_MAX, capped, readCapped } from './read-capped.ts';
export { type AppRouter, appRouter } from './router.ts';
export { createCallerFactory } from './trpc.ts';
export { refusalOf } from './trpc-error.ts';
export type { Clock, Log } from './world.ts';
