import { km, type Line, read, type Situation, TODAY } from './situation.ts';

const fluid = (on: string): Situation['item'] => ({
  id: 'fluid',
  name: 'Brake fluid',
  role: 'brakeFluid',
  limits: [{ measure: 'months', value: 12 }],
  baseline: { on, historyComplete: true },
});

const layUp: Line = { kind: 'layUp', on: '2025-11-15' };

/** What runs out by the calendar, and what nobody wrote down. */
export const byTheCalendar: Situation[] = [
  {
    heading: 'twelve months end today: their last day still counts',
    restsOn: '12 months from 15 June 2025 end on 15 June 2026, good through that day.',
    asOf: TODAY,
    item: fluid('2025-06-15'),
    lines: [],
    says: 'Due soon, 12 months are up on 15 June 2026',
    because: '12 months are up on 15 June 2026, whatever is driven.',
  },
  {
    heading: 'twelve months ended yesterday',
    restsOn:
      '12 months from 14 June 2025 end on 14 June 2026, good through that day; it is the 15th.',
    asOf: TODAY,
    item: fluid('2025-06-14'),
    lines: [],
    says: 'Overdue, 12 months passed on 14 June 2026',
    because: null,
  },
  {
    heading: 'two limits, of which the months run out first',
    restsOn:
      '1,650 of 10,000 km in 330 days: the rest would last years; 12 months from 20 July 2025 end in 35 days, beyond the 21 in which one is warned.',
    asOf: TODAY,
    item: {
      id: 'oil',
      name: 'Engine oil',
      limits: [
        { measure: 'km', value: 10_000, unit: 'km' },
        { measure: 'months', value: 12 },
      ],
      baseline: { on: '2025-07-20', odometer: km(50_000), historyComplete: true },
    },
    lines: [read('2025-07-20', 50_000), read('2026-01-04', 50_840), read(TODAY, 51_650)],
    says: 'In limits, 12 months are up on 20 July 2026',
    because: '12 months are up on 20 July 2026, whatever is driven.',
  },
  {
    heading: 'a laid-up car with something that has run out',
    restsOn: '12 months from 2 May 2025 ended on 2 May 2026, while the car stood.',
    asOf: TODAY,
    item: fluid('2025-05-02'),
    lines: [layUp],
    layUps: [{ id: 'winter', start: '2025-11-15' }],
    says: 'Before it wakes, 12 months passed on 2 May 2026',
    because: null,
    also: ['Laid up since 15 November 2025.', 'Before it wakes: Brake fluid.'],
  },
  {
    heading: 'no service on record at all',
    restsOn: 'Nobody wrote down when it was last done; 18,000 km of use say nothing of that.',
    asOf: TODAY,
    item: {
      id: 'coolant',
      name: 'Coolant',
      limits: [
        { measure: 'months', value: 48 },
        { measure: 'km', value: 60_000, unit: 'km' },
      ],
    },
    lines: [read('2025-01-10', 60_000), read(TODAY, 78_000)],
    says: 'Not on record, say when it was last done',
    because: null,
    also: ['Coolant is not on record: say when it was last done.'],
  },
];
