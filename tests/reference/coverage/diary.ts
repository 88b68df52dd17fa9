import { addDays } from '@quartermark/engine/calendar';
import type { CarCase, CaseEntry } from '@quartermark/engine/history';
import type { Draws } from './draws.ts';
import type { Habits } from './habits.ts';
import { asleep, BIRTH, type Life, type Outing } from './life.ts';

export const dateOf = (day: number) => addDays(BIRTH.date, day);
const START_KM = 20_000;

export type Diary = { car: Omit<CarCase, 'items'>; serviceDay: number };

/** What somebody with these habits has written down by the end of a day. */
export function keepDiary(
  habits: Habits,
  life: Life,
  first: number,
  asOf: number,
  r: Draws,
): Diary {
  const metered = habits.readingEvery !== null;
  const readings = metered ? readingDays(habits, first, asOf, r) : [];
  const serviceDay = metered
    ? (readings[Math.floor(readings.length * r.between(0, 0.9))] as number)
    : Math.round(first + (asOf - first) * r.between(0, 0.9));
  const odometer = odometerOf(habits, life, first, asOf);
  const entries: CaseEntry[] = [
    {
      ...common('service', serviceDay, -1),
      type: 'service',
      items: ['it'],
      odometerKm: metered ? (odometer[serviceDay] as number) : null,
      hourMeterH: null,
      complete: true,
    },
    ...readings.map(
      (day): CaseEntry => ({
        ...common('reading', day, day),
        type: 'reading',
        odometerKm: Math.round(odometer[day] as number),
        hourMeterH: null,
      }),
    ),
    ...life.outings
      .filter((it) => it.came > 0 && !it.forgotten && it.day + it.days - 1 <= asOf)
      .map((it) => outingEntry(habits, it, r)),
    ...(metered ? [] : tripEntries(life, first, asOf)),
  ];
  return {
    serviceDay,
    car: {
      car: { id: 'car', odoDigits: null, hemisphere: habits.hemisphere, roadKmh: 45 },
      asOf: dateOf(asOf),
      entries,
      storage: storageOf(habits, first, asOf),
      planned: plannedOf(habits, life.outings, asOf),
    },
  };
}

function common(kind: string, day: number, recorded: number) {
  return {
    id: `${kind} ${day}`,
    date: dateOf(day),
    minute: null,
    recorded,
    kind,
    canonical: `${kind} ${day}`,
  };
}

function readingDays(habits: Habits, first: number, asOf: number, r: Draws): number[] {
  const days = [first];
  const every = habits.readingEvery ?? 1;
  for (let day = first; ; ) {
    day += Math.max(1, Math.round(every * r.between(0.5, 1.5)));
    if (day > asOf) return days;
    if (!asleep(habits, day)) days.push(day);
  }
}

function odometerOf(
  habits: Habits,
  { road, outings }: Life,
  first: number,
  asOf: number,
): Float64Array {
  const gone = Float64Array.from(road);
  for (const { day, days, came } of outings)
    for (let at = day; at < day + days; at += 1)
      if (at <= asOf)
        gone[at] = (gone[at] as number) + (came * (habits.outings?.kmEach ?? 0)) / days;
  const odometer = new Float64Array(asOf + 1);
  let total = START_KM;
  for (let day = first; day <= asOf; day += 1) {
    total += gone[day] as number;
    odometer[day] = total;
  }
  return odometer;
}

/** Counts of an outing as a log has them: sessions, launches on the strip, nothing but a distance on tour. */
export function countsOf(habits: Habits, amount: number) {
  const useClass = habits.outings?.useClass ?? 'circuit';
  const tour = useClass === 'touring';
  return {
    useClass,
    distanceKm: amount * (habits.outings?.kmEach ?? 0),
    hours: tour ? null : amount * (habits.outings?.hoursEach ?? 0),
    sessions: tour || useClass === 'strip' ? null : amount,
    launches: useClass === 'strip' ? amount : null,
  };
}

function outingEntry(habits: Habits, { day, days, came, toldOn }: Outing, r: Draws): CaseEntry {
  const counts = countsOf(habits, came);
  const says = (often: number) => counts.useClass === 'touring' || r.chance(often);
  return {
    ...common('outing', day, day),
    type: 'use',
    ...counts,
    endDate: days > 1 ? dateOf(day + days - 1) : null,
    distanceKm: says(0.6) ? counts.distanceKm : null,
    hours: says(0.4) ? counts.hours : null,
    plannedOn: toldOn === null ? null : dateOf(toldOn),
  };
}

function tripEntries({ road }: Life, first: number, asOf: number): CaseEntry[] {
  const trips: CaseEntry[] = [];
  for (let day = first; day <= asOf; day += 1) {
    if (!road[day]) continue;
    const amounts = {
      distanceKm: road[day] as number,
      hours: null,
      sessions: null,
      launches: null,
    };
    trips.push({
      ...common('trip', day, day),
      type: 'use',
      useClass: 'road',
      endDate: null,
      ...amounts,
      plannedOn: null,
    });
  }
  return trips;
}

/** The calendar: what is still to come, and what is just past and not called off. */
function plannedOf(habits: Habits, outings: readonly Outing[], asOf: number): CarCase['planned'] {
  return outings
    .filter(({ toldOn, day, days, came }) => {
      const end = day + days - 1;
      return toldOn !== null && toldOn <= asOf && (end >= asOf || (came > 0 && end >= asOf - 20));
    })
    .map(({ id, day, days, meant }) => ({
      id: String(id),
      start: dateOf(day),
      end: days > 1 ? dateOf(day + days - 1) : null,
      ...countsOf(habits, meant),
      attend: 0.9,
    }));
}

function storageOf(habits: Habits, first: number, asOf: number): CarCase['storage'] {
  const { layUp } = habits;
  if (layUp === null || !layUp.logged) return [];
  const windows: CarCase['storage'] = [];
  for (let day = first; day <= asOf + 300; day += 1) {
    const begins = asleep(habits, day) && (day === first || !asleep(habits, day - 1));
    if (!begins || (day > asOf && !layUp.toldAhead)) continue;
    let last = day;
    while (asleep(habits, last + 1)) last += 1;
    const open = last >= asOf && !layUp.toldAhead;
    windows.push({ id: `lay-up ${day}`, start: dateOf(day), end: open ? null : dateOf(last) });
    day = last;
  }
  return windows;
}
