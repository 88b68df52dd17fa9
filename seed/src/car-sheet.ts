import { addDays } from '@quartermark/engine/calendar';
import type { CarDraft, ItemDraft } from '@quartermark/engine/log';
import { type Anchor, type CarLog, openCarLog } from './car-log.ts';
import { CLUB } from './club.ts';
import { mulberry32 } from './mulberry32.ts';
import { carId, itemId } from './record-id.ts';
import type { SeedCar } from './seed-garage.ts';

export type CarSheet = {
  log: CarLog;
  random: () => number;
  /** the civil day so many days from the seed's day */
  on: (offset: number) => string;
  /** the id of the car's n-th item, counted from 1 */
  item: (number: number) => string;
  /** a service of the items with these numbers, with the odometer of that moment */
  service: (day: number, time: string, done: number[], note: string, number?: number) => string;
  /** the finished car */
  finish: (items: ItemDraft[]) => SeedCar;
};

type Setup = {
  day: string;
  key: string;
  carNumber: number;
  car: CarDraft;
  meters: readonly (readonly Anchor[])[];
};

/** Opens the sheet of one invented car: its book, its own random numbers, its days and ids. */
export function openCarSheet({ day, key, carNumber, car, meters }: Setup): CarSheet {
  const log = openCarLog({ day, zone: CLUB.zone, carNumber, unit: car.unit, meters });
  const item = (number: number) => itemId(carNumber, number);
  return {
    log,
    random: mulberry32(carNumber * 7919),
    on: (offset) => addDays(day, offset),
    item,
    service: (day, time, done, note, number) =>
      log.record(
        { day, time, number },
        { kind: 'service', items: done.map(item), odometer: log.odometer(day, time), note },
      ),
    finish: (items) => ({
      key,
      id: carId(carNumber),
      car,
      items: items.map((each, index) => ({ id: item(index + 1), item: each })),
      entries: log.steps(),
    }),
  };
}

/** Puts a car's notes into its book, each at the day it belongs to. */
export function writeNotes(log: CarLog, notes: readonly (readonly [number, string])[]): void {
  for (const [day, note] of notes) log.record({ day, time: '20:10' }, { kind: 'note', note });
}
