export type * from './lane.ts';
