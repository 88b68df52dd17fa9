import type { EquipmentSort, GearInput } from '@quartermark/engine/log';

/** (common practice, no source) What is to be kept in mind with what lifts and holds a car. */
const CAUTIONS: Partial<Record<EquipmentSort, readonly string[]>> = {
  lift: [
    'Before each use look at locks, cables, arms, pads and for leaks; lift at the maker’s points only.',
    'Let it down onto its locks before anybody goes under the car.',
  ],
  jack: [
    'Never go under a car that stands on a jack alone. If it sinks or leaks, take it out of use.',
  ],
  stands: [
    'On firm, level ground, pins in, the car still and secured before anybody goes under it.',
  ],
  extinguisher: ['Gauge, pin, seal and hose. One that was used or has lost pressure is replaced.'],
};

/** Cautions for a piece of equipment; empty for all else. */
export function gearCautions(gear: GearInput): readonly string[] {
  return gear.kind === 'equipment' ? (CAUTIONS[gear.sort] ?? []) : [];
}
