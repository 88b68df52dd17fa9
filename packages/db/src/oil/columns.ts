import type { OilLine, OilRate } from '@quartermark/engine/display';
import type { oilLine } from '../oil-schema.ts';

type Columns = Omit<typeof oilLine.$inferSelect, 'garageId' | 'carId'>;

/** A line as its row. */
export function columnsOf({
  status,
  stop,
  level,
  road,
  hard,
  ago,
  change,
  rise,
}: OilLine): Columns {
  return {
    status,
    stop,
    levelLow: level?.low ?? null,
    levelLikely: level?.likely ?? null,
    levelHigh: level?.high ?? null,
    roadLow: road?.low ?? null,
    roadLikely: road?.likely ?? null,
    roadHigh: road?.high ?? null,
    hardLow: hard?.low ?? null,
    hardLikely: hard?.likely ?? null,
    hardHigh: hard?.high ?? null,
    agoOn: ago?.on ?? null,
    agoRoadLow: ago?.road?.low ?? null,
    agoRoadLikely: ago?.road?.likely ?? null,
    agoRoadHigh: ago?.road?.high ?? null,
    agoHardLow: ago?.hard?.low ?? null,
    agoHardLikely: ago?.hard?.likely ?? null,
    agoHardHigh: ago?.hard?.high ?? null,
    changeLow: change?.low ?? null,
    changeLikely: change?.likely ?? null,
    changeHigh: change?.high ?? null,
    rise,
  };
}

/** A row as the line it was. */
export function lineOf(row: Columns): OilLine {
  return {
    status: row.status,
    stop: row.stop,
    level: band(row.levelLow, row.levelLikely, row.levelHigh),
    road: band(row.roadLow, row.roadLikely, row.roadHigh),
    hard: band(row.hardLow, row.hardLikely, row.hardHigh),
    ago:
      row.agoOn === null
        ? null
        : {
            on: row.agoOn,
            road: band(row.agoRoadLow, row.agoRoadLikely, row.agoRoadHigh),
            hard: band(row.agoHardLow, row.agoHardLikely, row.agoHardHigh),
          },
    change: band(row.changeLow, row.changeLikely, row.changeHigh),
    rise: row.rise,
  };
}

function band(low: number | null, likely: number | null, high: number | null): OilRate | null {
  return low === null || likely === null || high === null ? null : { low, likely, high };
}
