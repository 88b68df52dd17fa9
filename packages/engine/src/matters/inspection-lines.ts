import type { IncidentSort } from '../log/common.ts';

/*
 * Common practice, no source. The maker's manual and whoever is licensed to judge the car decide; these
 * lists only see to it that nothing usual is forgotten.
 */
const LINES: Readonly<Record<IncidentSort, readonly string[]>> = {
  off: [
    'Tyres: cuts, stones between tread and rim, pressure',
    'Wheels: cracks and dents, inside too; fasteners to torque, cold',
    'Suspension arms, toe links and their mounts: bent, moved, bright marks',
    'Steering: straight ahead, free to both locks',
    'Brake hoses, lines and ducts: rubbed, torn, full of grass',
    'Underneath: tray, sump, gearbox, exhaust; anything that drips',
    'Radiators and coolers: stones, grass, fins',
    'Anything hot that dry grass could sit on',
  ],
  contact: [
    'Doors, bonnet and boot latch and open',
    'Nothing touches a tyre at full lock and full travel',
    'Suspension arms, toe links and their mounts: bent, moved, bright marks',
    'Wheels: cracks and dents, inside too; fasteners to torque, cold',
    'Steering: straight ahead, free to both locks',
    'Lamps, mirrors, number plates',
    'Coolers, hoses and lines near the hit',
    'Seat, harness and their mounts; they may be due for good',
  ],
  overRev: [
    'Highest speed it recorded, written down, and for how long',
    'Compression or leak-down on every cylinder',
    'Valve gear: noise, clearance where it can be measured',
    'Oil filter cut open: no metal',
    'Timing belt or chain: marks and tension',
    'Clutch and flywheel: no slip, no new noise',
  ],
  softPedal: [
    'Fluid level, and where it went if it fell',
    'Every calliper, hose and union: dry',
    'Pads: thickness inside and outside, all corners',
    'Discs: cracks, colour',
    'Fluid flushed or bled until the pedal is firm and high',
    'Wheel bearings: play that knocks the pads back',
  ],
  overheating: [
    'Wait until it is cold before anything is opened',
    'Coolant level, and where it went',
    'Hoses, clips, radiator and water pump: dry',
    'Fan starts, thermostat opens',
    'Oil: level, no milk under the cap or on the stick',
    'No bubbles in the expansion tank when running warm',
  ],
  warningLamp: [
    'Which lamp, written down',
    'The manual’s page for it, read',
    'Stored faults read and written down before they are cleared',
    'The cause found, not only the lamp out',
  ],
  lowOilPressure: [
    'Not started again before this list is done',
    'Level read by the car’s own procedure',
    'Leaks: filter, cooler, lines, drain plug',
    'Oil filter cut open: no metal',
    'Pressure measured with a gauge, hot at idle and at speed',
    'Sensor and its wiring',
  ],
};

/** What is to be looked at after an incident of a sort, in the order somebody would walk round the car. */
export function inspectionLines(sort: IncidentSort): readonly string[] {
  return LINES[sort];
}
