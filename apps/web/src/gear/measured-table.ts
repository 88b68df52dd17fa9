import { formatAmount, formatDay, formatNumber } from '@quartermark/engine/display';
import type { MeasuredReading, MeasuredRow } from '@quartermark/engine/gear';

export type MeasuredTable = {
  /** what stands beside each corner: grooves, inner and outer */
  columns: string[];
  /** the newest first */
  measurements: { entry: string; title: string; corners: { corner: string; cells: string[] }[] }[];
};

const CORNER_NAME: Readonly<Record<MeasuredReading['corner'], string>> = {
  frontLeft: 'Front left',
  frontRight: 'Front right',
  rearLeft: 'Rear left',
  rearRight: 'Rear right',
};
const CORNERS = Object.keys(CORNER_NAME) as MeasuredReading['corner'][];

function columnOf({ what, groove }: MeasuredReading): string {
  switch (what) {
    case 'tread':
      return groove ?? 'Tread';
    case 'padInner':
      return 'Inner pad';
    case 'padOuter':
      return 'Outer pad';
    case 'disc':
      return 'Disc';
  }
}

function cellOf({ mm, g }: MeasuredReading): string {
  const parts = [
    mm === null ? '' : `${formatNumber(mm, 1)} mm`,
    g === null ? '' : `${formatNumber(g, 0)} g`,
  ];
  return parts.filter((part) => part !== '').join(', ');
}

/** Measurements beside what the part had behind it then. @param unit in which distances are told */
export function measuredTable(rows: readonly MeasuredRow[], unit: 'km' | 'mi'): MeasuredTable {
  const columns = [...new Set(rows.flatMap(({ readings }) => readings.map(columnOf)))];
  const measurements = rows.toReversed().map((row) => ({
    entry: row.entry,
    title: titleOf(row, unit),
    corners: CORNERS.flatMap((corner) => {
      const here = row.readings.filter((reading) => reading.corner === corner);
      if (here.length === 0) return [];
      const cells = columns.map((column) =>
        here
          .filter((reading) => columnOf(reading) === column)
          .map(cellOf)
          .join(', '),
      );
      return [{ corner: CORNER_NAME[corner], cells }];
    }),
  }));
  return { columns, measurements };
}

function titleOf({ on, sessionsThen, kmThen }: MeasuredRow, unit: 'km' | 'mi'): string {
  const parts = [
    formatDay(on),
    sessionsThen === null ? '' : `after ${formatAmount('sessions', sessionsThen, unit)}`,
    kmThen === null ? '' : formatAmount('km', kmThen, unit),
  ];
  return parts.filter((part) => part !== '').join(', ');
}
