import type { DistanceUnit } from '../log/units.ts';
import type { CarStatus } from '../matters/result.ts';
import { laneItemWords } from './item-words.ts';
import type { Lane } from './lane.ts';
import { STOP_WORDS } from './matter-words.ts';
import { isUrgent } from './oil-stop-sentence.ts';

/** What the first line of the garage needs of each car; an overview row has it all. */
export type GarageRow = {
  name: string;
  unit: DistanceUnit;
  lane: Lane | null;
  laidUp: boolean;
  /** civil date of its figures; null without any */
  asOf: string | null;
  overdue: number;
  dueSoon: number;
  notOnRecord: number;
};

/**
 * It is not ready for the road, something has run out or soon will, its oil cannot wait, or driving it is
 * forbidden; and it is here and in use.
 */
export function needsAHand(
  row: Pick<GarageRow, 'lane' | 'laidUp' | 'overdue' | 'dueSoon'>,
): boolean {
  if (row.laidUp || statusOfRow(row) !== 'inUse') return false;
  const road = row.lane?.road ?? null;
  return (
    row.overdue + row.dueSoon > 0 ||
    (row.lane?.stop ?? null) !== null ||
    isUrgent(oilStopOfRow(row)) ||
    (road !== null && road.word !== 'ready')
  );
}

/** What its oil asks for. */
export const oilStopOfRow = ({ lane }: Pick<GarageRow, 'lane'>) => lane?.oil?.stop ?? null;

/** Where it is; a car never worked out counts as in use. */
export function statusOfRow({ lane }: Pick<GarageRow, 'lane'>): CarStatus {
  return lane?.status ?? 'inUse';
}

/** The car by its name, and in brackets the worst of what is to be said of it. */
export function withReason(row: GarageRow): string {
  const stop = row.lane?.stop ?? null;
  if (stop !== null) return `${row.name} (${STOP_WORDS[stop].toLowerCase()})`;
  if (isUrgent(oilStopOfRow(row))) return `${row.name} (oil)`;
  const item = row.lane?.next[0];
  const pressing = item?.state === 'overdue' || item?.state === 'dueSoon';
  const why = row.lane?.road?.why ?? null;
  if (why !== null && !pressing) return `${row.name} (${why.replace(/\.$/, '')})`;
  if (item === undefined) return row.name;
  const { word } = laneItemWords(item, row);
  return `${row.name} (${item.name}: ${word.toLowerCase()})`;
}
