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
export const entryId = (carNumber: number, number: number) => id(carNumber, '8000', number);
