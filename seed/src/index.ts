export { demoGarage } from './demo-garage.ts';
export type * from './seed-garage.ts';
