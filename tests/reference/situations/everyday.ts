import { addDays } from '@quartermark/engine/calendar';
import { km, type Line, read, type Situation, TODAY } from './situation.ts';

/** Read every fortnight for two years, 30 km a day, 20,000 km at the beginning. */
function commuting(from: string): Line[] {
  return Array.from({ length: 53 }, (_, at) => read(addDays(from, 14 * at), 20_000 + 420 * at));
}

const oil = (on: string, odometer: number): Situation['item'] => ({
  id: 'oil',
  name: 'Engine oil',
  role: 'engineOil',
  limits: [{ measure: 'km', value: 5_000, unit: 'km' }],
  baseline: { on, odometer: km(odometer), historyComplete: true },
});

/** Cars on the road, told by their odometer. */
export const everyday: Situation[] = [
  {
    heading: 'a steady commuter, read every fortnight',
    restsOn:
      '2,060 km are left. Two even years teach a season of 1.07 in June and August and 1.08 in July, so that 30 km a day become 29.7 x 1.07 = 31.8. The middle lies a little later than where the mean gets there (gamma, spread 0.31): 2,129 km, 67 days. One time in ten 1,436 km do: 45 days.',
    asOf: TODAY,
    item: oil('2026-03-09', 38_900),
    lines: commuting('2024-06-17'),
    says: 'In limits, likely by {21 August ±4}; 2,060 km left',
    because:
      'About {220 ±10} km in an average week at this time of year (recent weeks weigh most); half the time you reach the limit by {21 August ±4}, one time in ten by {30 July ±4}.',
  },
  {
    heading: 'the last reading lies four months back',
    restsOn:
      '1,220 km were left on 16 February. Since then 119 days at 30.6 km a day times the season (0.93 in February to 1.07 in June) make 3,650 km: three times what was left.',
    asOf: TODAY,
    item: oil('2025-10-13', 38_060),
    lines: commuting('2024-02-19'),
    says: 'Due soon, reading needed, more likely than not past its limit by now: read the odometer',
    because:
      'About {230 ±10} km in an average week at this time of year (recent weeks weigh most); more likely than not you have reached the limit by now.',
    also: ['3,780 km by the last reading, about {7,400 ±250} km by now.'],
  },
  {
    heading: 'the limit is reached exactly today',
    restsOn: '41,000 km and 5,000 km are 46,000 km, and that is what the odometer says.',
    asOf: TODAY,
    item: oil('2026-01-10', 41_000),
    lines: [read('2026-01-10', 41_000), read('2026-04-02', 44_000), read(TODAY, 46_000)],
    says: 'Overdue, 5,000 km reached on 15 June 2026',
    because: null,
  },
  {
    heading: 'the history is incomplete',
    restsOn:
      'The oil was changed in September, the first reading is of December: what was driven between is not known. From 40,000 to 43,200 km are 3,200 km; 6,800 more are not driven in three weeks.',
    asOf: TODAY,
    item: {
      id: 'oil',
      name: 'Engine oil',
      limits: [{ measure: 'km', value: 10_000, unit: 'km' }],
      baseline: { on: '2025-09-01' },
    },
    lines: [read('2025-12-01', 40_000), read('2026-03-01', 41_500), read(TODAY, 43_200)],
    says: 'At least 3,200 km, history incomplete; the limit is 10,000 km',
    because: null,
  },
  {
    heading: 'nothing runs out within three years',
    restsOn:
      '1,000 km a year; 39,000 km are left. 2.74 km a day and a little of what any car does (18 km a day for 21 days) give 3.1 x 1.07 x 7 = 23 km a week in June, some 3,600 km in three years.',
    asOf: TODAY,
    item: {
      id: 'gearbox',
      name: 'Gearbox oil',
      limits: [{ measure: 'km', value: 40_000, unit: 'km' }],
      baseline: { on: '2025-06-15', odometer: km(61_000), historyComplete: true },
    },
    lines: [read('2024-06-15', 60_000), read('2025-06-15', 61_000), read(TODAY, 62_000)],
    says: 'In limits, nothing before June 2029; 39,000 km left',
    because:
      'About {23 ±3} km in an average week at this time of year (recent weeks weigh most); hardly any chance that you reach the limit before June 2029.',
  },
  {
    heading: 'a car taken over six weeks ago, of which nothing was recorded since',
    restsOn:
      'A car about which nothing is known does 18 km a day (prior), times 1.2 in June: 151 km a week, so wide that the middle of 5,000 km lies where 5,840 would be driven on average, in spring; one time in ten where 2,600 would. The six weeks since are some 900 km, which may count already. No reason for an alarm.',
    asOf: TODAY,
    item: oil('2026-05-01', 41_000),
    lines: [],
    says: 'In limits, likely by {10 April 2027 ±50}; 5,000 km left',
    because:
      'About {150 ±15} km in an average week at this time of year (recent weeks weigh most); half the time you reach the limit by {10 April 2027 ±50}, one time in ten by {20 September ±30}.',
  },
  {
    heading: 'a parked car, the same figure on the odometer a year apart',
    restsOn:
      'No use in 365 days: 21 days of what any car does (378 km) spread over 252 are 1.5 km a day; over the last 90 days, weighed by 60 of those, 0.6: some 4 km a week, 700 km in three years of 5,000.',
    asOf: TODAY,
    item: oil('2025-06-15', 41_000),
    lines: [read('2025-06-15', 41_000), read(TODAY, 41_000)],
    says: 'In limits, nothing before June 2029; 5,000 km left',
    because:
      'About {4.5 ±1.5} km in an average week at this time of year (recent weeks weigh most); hardly any chance that you reach the limit before June 2029.',
  },
];
