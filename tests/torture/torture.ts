import { table } from '../bench/table.ts';
import {
  type DueDate,
  foreseeDueDates,
  inSight,
  isAfter,
  isBefore,
  isCovered,
} from '../reference/coverage/due-dates.ts';
import { foreseeReadiness, type Readiness } from '../reference/coverage/readiness.ts';

/** Classes by how far off a date is for somebody who knows the driver: days from and below. */
const CLASSES = [
  // reached since the last reading: only somebody who rides along could know
  ['reached, not yet read', -1, 1],
  ['less than 15 days', 1, 15],
  ['30 days (15 to 60)', 15, 60],
  ['90 days (60 to 135)', 60, 135],
  ['180 days (135 to 270)', 135, 270],
  ['a year (270 to 730)', 270, 730],
] as const;
/** Other cars than the test looks at. */
const FIRST_SEED = 100_001;

const DATES_HEAD = [
  'due in about',
  'dates',
  'inside',
  'before',
  'after',
  'error',
  'bias',
  'floor inside',
  'floor error',
];

/**
 * Foresees every limit of so many made-up cars, and their next planned event, and prints how often it came
 * true. `floor` is somebody who knows how each car is driven, and guesses by forty of its futures.
 */
export function torture(cars: number): void {
  if (!Number.isInteger(cars) || cars < 1)
    throw new RangeError(`could not make ${cars} cars: give a whole number of 1 and more`);
  const began = performance.now();
  const dates = foreseeDueDates(cars, 'all', FIRST_SEED).filter(inSight);
  if (dates.length === 0) throw new Error('no date was in sight');
  const by = (name: string, is: (date: DueDate) => boolean) => rowOf(name, dates.filter(is));
  const names = <T extends string>(of: (date: DueDate) => T) => [...new Set(dates.map(of))].sort();
  console.log(
    `${cars} cars, ${dates.length} due dates in sight. Nominal: inside 0.80, before and after 0.10.`,
  );
  console.log(
    'error: median of how many days the likely day is off; bias: median of likely less true.\n',
  );
  console.log(
    table([
      DATES_HEAD,
      ...CLASSES.map(([name, from, below]) =>
        by(name, ({ about }) => about >= from && about < below),
      ),
      ...names(({ measure }) => measure).map((it) =>
        by(`by ${it}`, ({ measure }) => measure === it),
      ),
      ...names(({ kind }) => kind).map((it) => by(it, ({ kind }) => kind === it)),
      by('all', () => true),
    ]),
  );
  const ready = foreseeReadiness(cars, FIRST_SEED);
  console.log(`\nThe next planned event, ${ready.length} limits:\n\n${table(readyRows(ready))}`);
  console.log(`\n${((performance.now() - began) / 1000).toFixed(0)} s`);
}

function rowOf(name: string, dates: readonly DueDate[]): string[] {
  const floor = dates.map((it) => ({ ...it, ...it.floor }));
  return [
    name,
    String(dates.length),
    share(dates, isCovered),
    share(dates, isBefore),
    share(dates, isAfter),
    median(dates.map(({ likely, came }) => Math.abs(likely - came))),
    median(dates.map(({ likely, came }) => likely - came)),
    share(floor, isCovered),
    median(floor.map(({ likely, came }) => Math.abs(likely - came))),
  ];
}

function readyRows(ready: readonly Readiness[]): string[][] {
  const classes = [0, 0.1, 0.5, 0.9, 0.98, 1.000001];
  return [
    ['ready with', 'limits', 'said', 'lasted'],
    ...classes.slice(0, -1).map((from, at) => {
      const below = classes[at + 1] as number;
      const some = ready.filter(({ pReady }) => pReady >= from && pReady < below);
      const said = some.reduce((sum, { pReady }) => sum + pReady, 0) / some.length;
      return [
        `${from} to ${Math.min(1, below)}`,
        String(some.length),
        some.length > 0 ? said.toFixed(3) : '-',
        share(some, ({ lasted }) => lasted),
      ];
    }),
  ];
}

const share = <T>(list: readonly T[], is: (it: T) => boolean) =>
  list.length > 0 ? (list.filter(is).length / list.length).toFixed(3) : '-';

function median(list: readonly number[]): string {
  const sorted = [...list].sort((a, b) => a - b);
  const middle = sorted[sorted.length >> 1];
  return middle === undefined ? '-' : `${middle} d`;
}
