import { expect, test } from 'vitest';
import { openCarLog } from './car-log.ts';
import { carId, entryId, itemId } from './record-id.ts';

const open = () =>
  openCarLog({
    day: '2026-06-15',
    zone: 'Europe/Berlin',
    carNumber: 3,
    unit: 'km',
    meters: [
      [
        [-30, '12:00', 1000],
        [-20, '12:00', 1500],
      ],
      [
        [-20, '13:00', 0],
        [-10, '13:00', 240],
      ],
    ],
  });

test('odometer() gives an anchor exactly and reads off the line between two', () => {
  const log = open();
  expect(log.odometer(-20, '12:00')).toEqual({ text: '1500', unit: 'km' });
  expect(log.odometer(-25, '12:00')).toEqual({ text: '1250', unit: 'km' });
});

test('odometer() changes to the next instrument at its first anchor and stands still after its last', () => {
  const log = open();
  expect(log.odometer(-20, '12:59').text).toBe('1500');
  expect(log.odometer(-20, '13:00').text).toBe('0');
  expect(log.odometer(0, '12:00').text).toBe('240');
});

test('travelledKm() adds up across an exchange', () => {
  expect(open().travelledKm(-10, '13:00')).toBe(740);
});

test('record() leaves out what was left open and says when and where it was', () => {
  const log = open();
  log.record({ day: -1, time: '08:00' }, { kind: 'note', note: 'Dry.', driver: undefined });
  expect(log.steps()).toEqual([
    {
      entry: {
        id: entryId(3, 1),
        kind: 'note',
        note: 'Dry.',
        on: '2026-06-14',
        time: '08:00',
        zone: 'Europe/Berlin',
        car: carId(3),
      },
    },
  ]);
});

test('steps() puts an entry typed in later after what was typed before', () => {
  const log = open();
  const late = log.record({ day: -5, recordedDay: -2 }, { kind: 'note', note: 'From memory.' });
  const early = log.record({ day: -3 }, { kind: 'note', note: 'At once.' });
  log.remove(-1, late);
  expect(log.steps().map((step) => ('remove' in step ? 'removed' : step.entry.id))).toEqual([
    early,
    late,
    'removed',
  ]);
});

test('entryId() and itemId() are readable and never the same', () => {
  expect(entryId(3, 9001)).toBe('01900000-0000-7003-8000-000000009001');
  expect(itemId(3, 9001)).not.toBe(entryId(3, 9001));
  expect(carId(3)).not.toBe(itemId(3, 0));
});
