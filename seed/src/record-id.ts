/**
 * Ids of the invented records: shaped as UUIDv7 (RFC 9562), yet readable, so that a person can name
 * one by hand. The twelve bits after the version hold the car's number, the last group holds the
 * record's own number in decimal digits.
 *
 * @example entryId(3, 9001) // '01900000-0000-7003-8000-000000009001'
 */
const id = (carNumber: number, variant: string, number: number) =>
  `01900000-0000-7${carNumber.toString(16).padStart(3, '0')}-${variant}-${String(number).padStart(12, '0')}`;

export const carId = (carNumber: number) => id(carNumber, 'a000', 0);
export const itemId = (carNumber: number, number: number) => id(carNumber, '9000', number);
/** What belongs to the garage as a whole: the twelve bits hold no car's number but these. */
const GEAR = 0xfa0;
const EVENT = 0xfa1;
const LAY_UP = 0xfa2;
const ORDER = 0xfa3;

export const gearId = (number: number) => id(GEAR, 'a000', number);
/** @param gear number of the gear, @param number of its item, counted from 1 */
export const gearItemId = (gear: number, number: number) => id(GEAR, '9000', gear * 100 + number);
export const gearEntryId = (number: number) => id(GEAR, '8000', number);
export const eventId = (number: number) => id(EVENT, 'a000', number);
export const layUpId = (number: number) => id(LAY_UP, 'a000', number);
export const orderId = (number: number) => id(ORDER, 'a000', number);
export const entryId = (carNumber: number, number: number) => id(carNumber, '8000', number);
