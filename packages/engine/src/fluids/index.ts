export * from './brake-fluid.ts';
