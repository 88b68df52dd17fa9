export * from './facts/index.ts';
export * from './letter/index.ts';
export * from './parts/index.ts';
