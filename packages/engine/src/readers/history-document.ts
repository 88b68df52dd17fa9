import { formatDay } from '../calendar/day-number.ts';
import { buildHistory, type CarCase, type MeterHistory, type Placed } from '../history/index.ts';
import type { UseClass } from '../log/item.ts';

type Reading = { entry: string | null; on: string; value: number; segment: number };

/** How the log was read, for whoever wants to check a figure by hand. */
export type HistoryDocument = {
  /** the entries that count, in their order; an item's starting point has kind "startingPoint" */
  entries: { entry: string | null; on: string; minute: number | null; kind: string }[];
  /** readings that were kept, in km; each segment is one scale */
  odometer: Reading[];
  /** readings that were kept, in hours */
  hourMeter: Reading[];
  /** all use, day by day: logged, and what the meters show beyond it */
  use: {
    on: string;
    useClass: UseClass;
    entry: string | null;
    logged: boolean;
    distanceKm: number;
    hours: number;
    sessions: number;
    launches: number;
  }[];
};

function readings(meter: MeterHistory, timeline: readonly Placed[]): Reading[] {
  return meter.kept.map(({ position, day, reading, segment }) => ({
    entry: timeline[position]?.entry.id ?? null,
    on: formatDay(day),
    value: reading,
    segment,
  }));
}

/** The cleaned history of a case as plain data. */
export function historyDocument(car: CarCase): HistoryDocument {
  const { timeline, odometer, hourMeter, contributions } = buildHistory(car);
  return {
    entries: timeline.map(({ entry, startingPoint }) => ({
      entry: entry.id,
      on: entry.date,
      minute: entry.minute,
      kind: startingPoint ? 'startingPoint' : entry.kind,
    })),
    odometer: readings(odometer, timeline),
    hourMeter: readings(hourMeter, timeline),
    use: contributions.map((part) => ({
      on: formatDay(part.day),
      useClass: part.useClass,
      entry: timeline[part.source]?.entry.id ?? null,
      logged: part.since === null,
      distanceKm: part.distanceKm,
      hours: part.hours,
      sessions: part.sessions,
      launches: part.launches,
    })),
  };
}
