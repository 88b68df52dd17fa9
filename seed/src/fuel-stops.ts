import type { CarLog } from './car-log.ts';

type Stops = {
  random: () => number;
  from: number;
  to: number;
  /** days between two stops, shortest and longest */
  everyDays: readonly [number, number];
  /** filled, least and most */
  volume: readonly [number, number];
  unit: 'l' | 'usGal';
  octane?: number;
  skip?: (day: number) => boolean;
  /** filled up is what was used since the last stop, in litres, instead of anything between least and most */
  uses?: {
    per100Km: number;
    per100HardKm: number;
    hardKm: (after: number, until: number) => number;
    /** what does not go in waits for the next stop */
    tankL: number;
  };
};

/** Nobody fills to the drop: so far from what was used, either way. */
const SCATTER = 0.04;

/** Writes the fuel stops of one car between two days. */
export function writeFuelStops(log: CarLog, stops: Stops): void {
  const { random, everyDays, volume } = stops;
  const between = ([least, most]: readonly [number, number]) => least + random() * (most - least);
  let last: { day: number; km: number } | null = null;
  let owed = 0;
  /** null: as drawn */
  const usedUpTo = (day: number, time: string): number | null => {
    if (stops.uses === undefined || last === null) return null;
    const { per100Km, per100HardKm, hardKm } = stops.uses;
    const hard = hardKm(last.day, day);
    const road = log.travelledKm(day, time) - last.km - hard;
    owed += (road * per100Km + hard * per100HardKm) / 100;
    const filled = Math.min(stops.uses.tankL, owed);
    owed -= filled;
    return filled;
  };
  for (let day = stops.from; day <= stops.to; day += Math.round(between(everyDays))) {
    const time = `${12 + Math.floor(random() * 4)}:${random() < 0.5 ? '05' : '40'}`;
    const drawn = between(volume);
    const withOdometer = random() < 0.7;
    if (stops.skip?.(day) === true) continue;
    const share = (drawn - volume[0]) / (volume[1] - volume[0]);
    const litres = usedUpTo(day, time);
    const text = (litres === null ? drawn : litres * (1 + SCATTER * (2 * share - 1))).toFixed(1);
    last = { day, km: log.travelledKm(day, time) };
    log.record(
      { day, time },
      {
        kind: 'fuel',
        volume: { text, unit: stops.unit },
        full: random() < 0.8,
        ...(stops.octane === undefined ? {} : { octane: stops.octane }),
        ...(withOdometer ? { odometer: log.odometer(day, time) } : {}),
      },
    );
  }
}
