import { capital, formatDay, typedWords } from '@quartermark/engine/display';
import type { PlaceFact } from '@quartermark/engine/readiness';

export type PlaceTable = {
  /** the day, where all were measured on the same one; null: each cell has its own */
  on: string | null;
  columns: string[];
  /** all four corners, whether anything was measured there or not */
  corners: { corner: string; cells: string[] }[];
};

const CORNER_NAME: Readonly<Record<PlaceFact['corner'], string>> = {
  frontLeft: 'Front left',
  frontRight: 'Front right',
  rearLeft: 'Rear left',
  rearRight: 'Rear right',
};
const CORNERS = Object.keys(CORNER_NAME) as PlaceFact['corner'][];

/** What a place without a measurement says. */
const OPEN = 'not on record';

function columnOf({ what, groove }: PlaceFact): string {
  if (what === 'padInner') return 'Inner';
  if (what === 'padOuter') return 'Outer';
  return groove === null ? 'Tread' : capital(groove);
}

/** The last measurements, corner by corner, with the day of each. */
export function placeTable(places: readonly PlaceFact[]): PlaceTable {
  const columns = [...new Set(places.map(columnOf))].toSorted();
  const days = new Set(places.map(({ on }) => on));
  const [day] = days;
  const on = day !== undefined && days.size === 1 ? formatDay(day) : null;
  return {
    on,
    columns,
    corners: CORNERS.map((corner) => ({
      corner: CORNER_NAME[corner],
      cells: columns.map((column) => {
        const fact = places.find((one) => one.corner === corner && columnOf(one) === column);
        if (!fact) return OPEN;
        const depth = typedWords(fact.depth);
        return on === null ? `${depth}, ${formatDay(fact.on)}` : depth;
      }),
    })),
  };
}
