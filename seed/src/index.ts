export type * from './seed-garage.ts';
