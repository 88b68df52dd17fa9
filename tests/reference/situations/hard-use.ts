import { circuit, type Line, runs, type Situation, TODAY } from './situation.ts';

/** Eight outings in two seasons; the interval begins before the last three. */
const OUTINGS = [
  '2025-05-03',
  '2025-06-07',
  '2025-07-05',
  '2025-08-02',
  '2025-09-06',
  '2026-04-18',
  '2026-05-16',
  '2026-06-06',
];
const RATE =
  'Eight outings in 409 days, the late ones weighing more, come to 0.0193 a day times the season, which they and the usual year teach: 1.64 in June and July, 1.53 in August, 1.29 in September, 0.89 in October. So 0.47 are expected until the end of June, 1.45 of July, 2.36 of August, 3.10 of September.';
const done: Line = { kind: 'service', on: '2026-04-01', items: ['it'], historyComplete: true };

const season2025 = ['2025-05-10', '2025-08-09', '2026-04-11', '2026-05-16'];

/** Cars on circuits and on the drag strip, counted in sessions and launches. */
export const hardUse: Situation[] = [
  {
    heading: 'a car for the circuit alone, counted in sessions',
    restsOn: `12 sessions are left, three outings of 4, where the third decides about half the time. ${RATE} Half the time as many as are needed have come once 3.5 are expected, one time in ten once 1.2 are.`,
    asOf: TODAY,
    item: { id: 'it', name: 'Front pads', limits: [{ measure: 'sessions', value: 24 }] },
    lines: [done, ...OUTINGS.map((on) => circuit(on, 4))],
    says: 'In limits, likely by {22 October ±20}; 12 sessions left',
    because:
      'About {3.5 ±0.3} outings likely, of some 4 sessions each; half the time you reach the limit by {22 October ±20}, one time in ten by {24 July ±8}.',
  },
  {
    heading: 'a car for the drag strip, counted in launches',
    restsOn: `12 launches are left, two outings of 6, where the second decides about half the time. ${RATE} Half the time as many as are needed have come once 2.3 are expected, one time in ten once 0.7 are.`,
    asOf: TODAY,
    item: {
      id: 'it',
      name: 'Engine oil',
      warnDays: 0,
      limits: [{ measure: 'launches', value: 30 }],
    },
    lines: [done, ...OUTINGS.map((on) => runs(on, 6))],
    says: 'In limits, likely by {30 August ±12}; 12 launches left',
    because:
      'About {2.3 ±0.3} outings likely, of some 6 launches each; half the time you reach the limit by {30 August ±12}, one time in ten by {8 July ±7}.',
  },
  {
    heading: 'a planned event of two days takes it past its limit',
    restsOn:
      '6 sessions are left; the event brings 8, 4 on either day, and is certain. After its first day 4 are mostly too few (0.06), unless an outing nobody planned comes before (0.2); after its second 8 are mostly enough (0.8). One outing counts 22 / 5 sessions on average.',
    asOf: TODAY,
    item: {
      id: 'it',
      name: 'Brake fluid',
      limits: [{ measure: 'sessions', value: 20 }],
      baseline: { on: '2025-05-01', historyComplete: true },
    },
    lines: season2025.map((on, at) => circuit(on, at < 2 ? 4 : 3)),
    planned: [
      { id: 'ev', start: '2026-07-04', end: '2026-07-05', use: 'circuit', sessions: 8, attend: 1 },
    ],
    says: 'Due soon, likely by Sun 5 July, could be as early as 4 July; 6 sessions left',
    because:
      '1 event planned and about {0.3 ±0.2} more likely, of some 4.4 sessions each; half the time you reach the limit by 5 July, one time in ten by 4 July.',
  },
  {
    heading: 'a car asleep in winter, with two circuit days in spring',
    restsOn:
      '7 sessions are left; each day in spring brings 4 and takes place nine times in ten. The first is too little alone; with the second 8 are enough more often than not (0.7 x 0.81, and a little for outings nobody planned). No day in the lay-up can be it.',
    asOf: '2026-01-10',
    item: {
      id: 'it',
      name: 'Brake fluid',
      limits: [{ measure: 'sessions', value: 11 }],
      baseline: { on: '2025-09-01', historyComplete: true },
    },
    lines: [
      circuit('2025-06-07', 4),
      circuit('2025-08-02', 4),
      circuit('2025-10-04', 4),
      { kind: 'layUp', on: '2025-11-15' },
    ],
    layUps: [{ id: 'winter', start: '2025-11-15', end: '2026-03-25' }],
    planned: [
      { id: 'one', start: '2026-04-04', use: 'circuit', sessions: 4 },
      { id: 'two', start: '2026-04-18', use: 'circuit', sessions: 4 },
    ],
    says: 'In limits, likely by 18 April; 7 sessions left',
    because:
      'Laid up until 25 March, 2 events planned and about {0.3 ±0.25} more likely, of some 4 sessions each; half the time you reach the limit by 18 April, one time in ten by {6 April ±7}.',
  },
  {
    heading: 'hard use has switched the shorter schedule on',
    restsOn:
      '3, 4 and 3 sessions are the 10 from which on (a quarter of 40) the six months apply, reached on 6 June; they run from 20 January. 30 sessions are left, seven outings and more.',
    asOf: TODAY,
    item: {
      id: 'it',
      name: 'Brake fluid',
      limits: [
        { measure: 'sessions', value: 40 },
        { measure: 'months', value: 24 },
      ],
      severe: {
        classes: ['circuit'],
        measure: 'sessions',
        share: 0.25,
        limits: [{ measure: 'months', value: 6 }],
      },
      baseline: { on: '2026-01-20', historyComplete: true },
    },
    lines: [circuit('2026-04-11', 3), circuit('2026-05-09', 4), circuit('2026-06-06', 3)],
    says: 'In limits, 6 months are up on 20 July 2026',
    because: '6 months are up on 20 July 2026, whatever is driven.',
    also: [
      'Hard use: 10 circuit sessions. From 10 sessions on, the schedule for hard use applies (6 months); it is in force since 6 June 2026.',
    ],
  },
];
