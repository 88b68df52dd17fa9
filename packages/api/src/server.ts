export { type AppRouter, appRouter } from './router.ts';
