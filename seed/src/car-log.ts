import { addDays } from '@quartermark/engine/calendar';
import type { EntryDraft } from '@quartermark/engine/log';
import { KM_PER_UNIT } from '@quartermark/engine/units';
import { carId, entryId } from './record-id.ts';
import type { SeedStep } from './seed-garage.ts';

type WithoutFrame<T> = T extends unknown ? Omit<T, 'id' | 'on' | 'zone' | 'car' | 'time'> : never;

/** An entry without what the book adds: id, day, zone, car and time. */
export type EntryBody = WithoutFrame<EntryDraft>;

/** What the odometer showed: day relative to the seed's day (never above 0), local time, reading. */
export type Anchor = readonly [day: number, time: string, reading: number];

export type When = {
  day: number;
  time?: string;
  /** the record's own number, for entries that are spoken of elsewhere */
  number?: number;
  /** the day it was typed in, where that was later */
  recordedDay?: number;
};

export type CarLog = {
  record(when: When, body: EntryBody): string;
  amend(when: When, id: string, body: EntryBody): void;
  remove(day: number, id: string): void;
  /** the reading of that moment, read off the line between the two nearest anchors */
  odometer(day: number, time: string): { text: string; unit: 'km' | 'mi' };
  /** kilometres since the first anchor */
  travelledKm(day: number, time: string): number;
  steps(): SeedStep[];
};

type Setup = {
  day: string;
  zone: string;
  carNumber: number;
  unit: 'km' | 'mi';
  /** one list of anchors per instrument, each in order of time */
  meters: readonly (readonly Anchor[])[];
};

const minutesOf = (time: string) => Number(time.slice(0, 2)) * 60 + Number(time.slice(3, 5));
const moment = (day: number, time: string) => day * 1440 + minutesOf(time);

/** Members that were left open are left out: what is not known is not a member. */
const withoutGaps = <T extends object>(body: T): T =>
  Object.fromEntries(Object.entries(body).filter(([, value]) => value !== undefined)) as T;

function readingAt(anchors: readonly Anchor[], at: number): number {
  let before = anchors[0];
  if (before === undefined) throw new RangeError('could not read an odometer without anchors');
  for (const anchor of anchors) {
    const [start, end] = [moment(before[0], before[1]), moment(anchor[0], anchor[1])];
    if (at <= end && end > start)
      return before[2] + (anchor[2] - before[2]) * Math.max(0, (at - start) / (end - start));
    before = anchor;
  }
  return before[2];
}

/** Opens an empty book of one car; entries may be put in in any order and come out as recorded. */
export function openCarLog({ day, zone, carNumber, unit, meters }: Setup): CarLog {
  const placed: { at: number; place: number; step: SeedStep }[] = [];
  let nextNumber = 1;
  const place = (at: number, step: SeedStep) => placed.push({ at, place: placed.length, step });
  const meterAt = (at: number) =>
    meters.findLast(([first]) => first !== undefined && moment(first[0], first[1]) <= at) ??
    meters[0] ??
    [];
  const frame = (when: When, id: string, body: EntryBody): EntryDraft =>
    withoutGaps({
      ...body,
      id,
      on: addDays(day, when.day),
      time: when.time,
      zone,
      car: carId(carNumber),
    });
  const recordedAt = ({ day: on, time, recordedDay }: When) =>
    recordedDay === undefined ? moment(on, time ?? '12:00') : moment(recordedDay, '20:00');
  return {
    record(when, body) {
      const id = entryId(carNumber, when.number ?? nextNumber++);
      place(recordedAt(when), { entry: frame(when, id, body) });
      return id;
    },
    amend(when, id, body) {
      place(recordedAt(when), { amend: id, entry: frame(when, id, body) });
    },
    remove(on, id) {
      place(moment(on, '20:30'), { remove: id });
    },
    odometer(on, time) {
      const at = moment(on, time);
      return { text: String(Math.floor(readingAt(meterAt(at), at))), unit };
    },
    travelledKm(on, time) {
      const at = moment(on, time);
      const travelled = meters
        .filter(([first]) => first !== undefined && moment(first[0], first[1]) <= at)
        .map((anchors) => readingAt(anchors, at) - (anchors[0]?.[2] ?? 0));
      return travelled.reduce((sum, each) => sum + each, 0) * KM_PER_UNIT[unit];
    },
    steps() {
      return placed.toSorted((a, b) => a.at - b.at || a.place - b.place).map(({ step }) => step);
    },
  };
}
