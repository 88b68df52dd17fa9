import { readCorners } from '../../corners.ts';
import type { RecordFields } from '../../record-fields.ts';
import {
  type Members,
  number,
  quantity,
  type Reading,
  some,
  text,
  writtenRows,
} from '../../typed.ts';
import type { MeasureFields } from './fields.ts';

/** Where a measurement says that nothing was read. */
export const NO_READING = 'readings';

export function readMeasure({ measure }: RecordFields, reading: Reading): Members {
  const { problems } = reading;
  const members = {
    tread: readTread(measure, reading),
    pads: readPads(measure, reading),
    discs: readDiscs(measure, reading),
    dateCode: text(measure.dateCode),
    cracks: text(measure.cracks),
    batteryV: number(measure.batteryV, 'batteryV', problems),
    brakeFluidTest: text(measure.brakeFluidTest),
    oilPressureHotIdle: quantity(measure.oilPressureHotIdle),
    oilPressureAtRpm: readAtRpm(measure, reading),
    pressures: readCorners(measure.pressures),
  };
  const nothing = Object.values(members).every((member) => member === undefined);
  if (nothing && Object.keys(problems).length === 0)
    problems[NO_READING] = 'Write at least one reading; the rest may stay empty.';
  return { ...members, component: text(measure.component) };
}

function readTread({ tread }: MeasureFields, reading: Reading) {
  const rows = writtenRows(tread, 'tread', reading, ({ depth }) => quantity(depth) !== undefined);
  return some(rows.map(({ corner, groove, depth }) => ({ corner, groove: text(groove), depth })));
}

function readPads({ pads }: MeasureFields, reading: Reading) {
  const rows = writtenRows(pads, 'pads', reading, ({ inner, outer }) =>
    [inner, outer].some(quantity),
  );
  return some(
    rows.map(({ corner, inner, outer }) => ({
      corner,
      inner: quantity(inner),
      outer: quantity(outer),
    })),
  );
}

function readDiscs({ discs }: MeasureFields, reading: Reading) {
  const rows = writtenRows(
    discs,
    'discs',
    reading,
    ({ thickness, massG }) => quantity(thickness) !== undefined || text(massG) !== undefined,
  );
  return some(
    rows.map(({ corner, thickness, massG }, at) => ({
      corner,
      thickness: quantity(thickness),
      massG: number(massG, `discs.${reading.places.discs?.[at]}.massG`, reading.problems),
    })),
  );
}

function readAtRpm({ oilPressureAtRpm: fields }: MeasureFields, { problems }: Reading) {
  const pressure = quantity(fields.pressure);
  const rpm = number(fields.rpm, 'oilPressureAtRpm.rpm', problems);
  if (pressure === undefined && text(fields.rpm) === undefined) return undefined;
  if (pressure === undefined)
    problems['oilPressureAtRpm.pressure.text'] = 'Write the pressure that goes with the rpm.';
  else if (text(fields.rpm) === undefined)
    problems['oilPressureAtRpm.rpm'] = 'Write the rpm at which it was read.';
  return { pressure, rpm };
}
