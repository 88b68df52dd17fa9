import { type Volume, volumeL } from '@quartermark/engine/log';

/** What is poured in a paddock: part of a bottle or all of it, in the units bottles are sold in. */
const BY_UNIT: Readonly<Record<'l' | 'usQt' | 'impQt', readonly Volume[]>> = {
  l: [
    { text: '0.25', unit: 'l' },
    { text: '0.5', unit: 'l' },
    { text: '1', unit: 'l' },
    { text: '1', unit: 'usQt' },
  ],
  usQt: [
    { text: '0.25', unit: 'usQt' },
    { text: '0.5', unit: 'usQt' },
    { text: '1', unit: 'usQt' },
    { text: '1', unit: 'l' },
  ],
  impQt: [
    { text: '0.25', unit: 'impQt' },
    { text: '0.5', unit: 'impQt' },
    { text: '1', unit: 'impQt' },
    { text: '1', unit: 'l' },
  ],
};

/**
 * The amounts offered as one press each, the one poured last time first if it is none of the usual ones.
 *
 * @param last as it was typed; null where none is on record
 */
export function bottles(unit: 'l' | 'usQt' | 'impQt', last: Volume | null): readonly Volume[] {
  const usual = BY_UNIT[unit];
  const known = (one: Volume) =>
    last !== null && one.unit === last.unit && volumeL(one) === volumeL(last);
  return last === null || usual.some(known) ? usual : [last, ...usual];
}
