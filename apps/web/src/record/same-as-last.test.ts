import type { LastValues } from '@quartermark/api/client';
import { type EntryDraft, entryInput } from '@quartermark/engine/log';
import { expect, test } from 'vitest';
import { emptyFields } from './record-fields.ts';
import { lastAlike, sameAsLast } from './same-as-last.ts';

const session = entryInput.parse({
  kind: 'session',
  id: 'e-1',
  on: '2026-05-02',
  time: '10:00',
  zone: 'Europe/Berlin',
  car: 'c-1',
  use: 'autocross',
  sessions: 4,
  venue: 'Old Works',
  oilTempPeak: { text: '118', unit: 'c' },
  odometer: { text: '41 350', unit: 'km' },
  driver: 'Tam',
  remarks: 'Dusty.',
  note: 'Only of that day.',
} satisfies EntryDraft);
const last: LastValues = {
  oilCheck: null,
  wheels: null,
  fit: null,
  measure: null,
  finding: null,
  odometer: null,
  oilTopUp: null,
  session,
  strip: null,
  drive: null,
  fuel: null,
};
const start = {
  entryId: 'e-2',
  today: '2026-06-15',
  unit: 'km',
  volumeUnit: 'l',
  last,
} as const;

test('lastAlike() offers the last session to a session, and nothing to a fuel stop', () => {
  expect(lastAlike('session', last)).toBe(session);
  expect(lastAlike('fuel', { ...last, fuel: session })).toBeNull();
  expect(lastAlike('drive', last)).toBeNull();
});

test('sameAsLast() takes over where, how many and who, and nothing that was read that day', () => {
  const fields = { ...emptyFields(start), ...sameAsLast(session, start) };
  expect(fields.session).toMatchObject({ use: 'autocross', sessions: 4, venue: 'Old Works' });
  expect(fields.driver).toBe('Tam');
  expect(fields).toMatchObject({
    entryId: 'e-2',
    on: '2026-06-15',
    time: '',
    note: '',
    odometer: { text: '', unit: 'km' },
    session: { remarks: '', oilTempPeak: { text: '', unit: 'c' } },
  });
});
