export type { CarTonight } from './car-tonight.ts';
export type { EventDays, Fact, FactKind, FactOf, PutOff, Quiet } from './fact.ts';
export { factsOfCar } from './facts-of-car.ts';
