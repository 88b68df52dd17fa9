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
};

/** Writes the fuel stops of one car between two days. */
export function writeFuelStops(log: CarLog, stops: Stops): void {
  const { random, everyDays, volume } = stops;
  const between = ([least, most]: readonly [number, number]) => least + random() * (most - least);
  for (let day = stops.from; day <= stops.to; day += Math.round(between(everyDays))) {
    const time = `${12 + Math.floor(random() * 4)}:${random() < 0.5 ? '05' : '40'}`;
    const text = between(volume).toFixed(1);
    const withOdometer = random() < 0.7;
    if (stops.skip?.(day) === true) continue;
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
