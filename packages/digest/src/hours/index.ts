export * from './night.ts';
