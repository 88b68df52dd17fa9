import { quantity } from '../../typed.ts';
import type { MeasureFields } from './fields.ts';

/** How many readings stand in each part of the form. */
export function readCounts(measure: MeasureFields) {
  const { tread, pads, discs, pressures, oilPressureAtRpm: atRpm } = measure;
  const written = (...texts: readonly string[]) =>
    texts.filter((said) => said.trim() !== '').length;
  return {
    tyres:
      written(...tread.map(({ depth }) => depth.text)) + written(measure.dateCode, measure.cracks),
    pressures: Object.values(pressures).filter(quantity).length,
    pads: written(...pads.flatMap(({ inner, outer }) => [inner.text, outer.text])),
    discs: written(...discs.flatMap(({ thickness, massG }) => [thickness.text, massG])),
    rest: written(
      measure.batteryV,
      measure.brakeFluidTest,
      measure.oilPressureHotIdle.text,
      atRpm.pressure.text,
    ),
  };
}
