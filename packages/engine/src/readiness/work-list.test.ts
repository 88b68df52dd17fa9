import { describe, expect, test } from 'vitest';
import { needOf } from '../../test/need-of.ts';
import type { CarReadiness, Need, Remedy } from './result.ts';
import { workList } from './work-list.ts';

const remedy = (more: Partial<Remedy>): Remedy => ({
  work: 'service',
  what: 'Service',
  latest: '2026-06-19',
  earliest: null,
  parts: null,
  leadDays: 0,
  feasible: true,
  record: null,
  ...more,
});
const asked = (id: string, of: Partial<Remedy>, more: Partial<Need> = {}) =>
  needOf({ id, status: 'metAfterWork', remedy: remedy(of), ...more });
const car = (needs: Need[]): CarReadiness => ({
  car: 'c',
  use: 'circuit',
  event: 'e',
  verdict: { word: 'canBeReady', by: '2026-06-19' },
  needs,
});

describe('workList()', () => {
  test('workList() makes one line of what is one job: a set that is renewed, oil and its filter', () => {
    const fit = { at: 'entry', kind: 'fit', component: 'p' } as const;
    const oil = { at: 'entry', kind: 'oilChange' } as const;
    const lines = workList([
      car([
        asked(
          'padStart:p',
          { work: 'brakes', what: 'Renew the pads', record: fit },
          { weight: 'advice' },
        ),
        asked('pads:p', { work: 'brakes', what: 'Renew the pads', record: fit }),
        asked('limit:oil', { work: 'fluids', what: 'Change the oil', record: oil }),
        asked('limit:filter', { work: 'fluids', what: 'Renew the filter', record: oil }),
      ]),
    ]);
    expect(lines.map(({ what, needs, blocking }) => ({ what, needs, blocking }))).toEqual([
      {
        what: 'Change the oil; Renew the filter',
        needs: ['limit:oil', 'limit:filter'],
        blocking: true,
      },
      { what: 'Renew the pads', needs: ['padStart:p', 'pads:p'], blocking: true },
    ]);
  });

  test('workList() leaves out what is met, what was taken on, and what nothing can be done about', () => {
    const accepted = { acceptanceId: 'a', by: 'Oda', on: '2026-06-15', because: 'seen good' };
    expect(
      workList([
        car([
          needOf({ id: 'met', remedy: remedy({}) }),
          asked('taken', {}, { accepted }),
          needOf({ id: 'nothing', status: 'notMet', remedy: null }),
        ]),
      ]),
    ).toEqual([]);
  });
});
