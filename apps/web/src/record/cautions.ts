import type { CarProfile, EntryKind } from '@quartermark/engine/log';

/*
 * Cautions are common practice, written in our own words; the maker's manual, local codes and licensed
 * practice decide, and each list says so.
 */
const AIR = 'Never run an engine in a closed garage: carbon monoxide kills without a smell.';
const LIFTING =
  'Nobody goes under a car that a jack alone holds: stands on firm ground, or a lift with the locks loaded on every post.';
const HOT_OIL = 'Hot oil burns: let it cool to warm, wear gloves, keep it off exhaust and skin.';
const OVERFILL = 'Never above MAX. If it is, drain some; do not run the engine.';
const PRESSURE =
  'At the first start watch the oil pressure; if there is none within 5 to 10 seconds, stop. Do not rev.';
const BRAKES =
  'Pump the pedal until it is firm before the car moves. Never mix silicone and glycol brake fluid.';
const WHEELS =
  'Tighten wheels to the manual’s torque in its order, and check again after a short drive. Never loosen hot fasteners.';
const FUEL =
  'Fuel vapour burns: no flame, no spark, no heater; take the pressure off before opening a line.';
const COOLANT = 'Never open a hot cooling system: it scalds.';

export const BEDDING =
  'Bed brakes within the law or on a closed course, and let them cool down by driving. No handbrake on hot discs.';
const SUPPORT =
  'Lift by the manual’s points only, on level ground, and shake the car before you go near it.';
const BATTERY =
  'A battery gives off gas that burns and acid that eats: no spark, eyes covered, minus off first and on last.';
const HIGH_VOLTAGE =
  'Orange cables carry voltage that kills: leave them to people who are qualified for it.';
const STOP = 'If you are not sure that the car is safe, leave it where it is.';
const FIRE =
  'Hot parts and dry grass make fire: look underneath, and keep an extinguisher beside you.';
const PLUGGED = 'A plugged exhaust or intake must not be forgotten: write it down here.';
const FIRST_START =
  'Old fuel, perished hoses and stuck brakes show at the first start: stay beside the car.';
const COLD = 'Hot discs, tyres and oil burn: measure cold, or wear gloves.';

const BY_NAME: readonly (readonly [RegExp, string])[] = [
  [/brake|pad|disc|rotor|calliper|caliper|clutch fluid/i, BRAKES],
  [/wheel|tyre|tire|hub|bearing/i, WHEELS],
  [/fuel/i, FUEL],
  [/coolant|radiator|thermostat|water pump/i, COOLANT],
  [/oil|gearbox|transaxle|differential|exhaust/i, HOT_OIL],
  [/battery/i, BATTERY],
];

const byName = (names: readonly string[]) =>
  BY_NAME.filter(([name]) => names.some((one) => name.test(one))).map(([, said]) => said);

/**
 * What can hurt somebody in the work a form records, to be read before it.
 *
 * @param names of what is worked on: items that are ticked, the part that is fitted, the fluid
 */
export function cautionsFor(
  kind: EntryKind,
  profile: CarProfile,
  names: readonly string[] = [],
): string[] {
  switch (kind) {
    case 'oilCheck':
      return stickCautions(profile);
    case 'oilTopUp':
      return [...stickCautions(profile), 'Add a little, wait, and read again.', OVERFILL];
    case 'oilChange':
      return [LIFTING, HOT_OIL, OVERFILL, PRESSURE, AIR];
    case 'service':
    case 'repair':
      return [LIFTING, ...byName(names), ...highVoltage(profile)];
    case 'wheels':
      return [WHEELS, SUPPORT, LIFTING];
    case 'fit':
      return [LIFTING, SUPPORT, ...byName(names), ...bedding(names), ...highVoltage(profile)];
    case 'measure':
      return [COLD, LIFTING, SUPPORT];
    case 'fluid':
      return byName(names);
    case 'incident':
      return [STOP, FIRE];
    case 'layUp':
      return [FUEL, BATTERY, PLUGGED];
    case 'wakeUp':
      return [AIR, BATTERY, PRESSURE, FIRST_START];
    case 'fuel':
    case 'odometer':
    case 'drive':
    case 'session':
    case 'strip':
    case 'inspection':
    case 'finding':
    case 'meterReplaced':
    case 'labReport':
    case 'handover':
    case 'answer':
    case 'note':
      return [];
  }
}

const bedding = (names: readonly string[]) =>
  names.some((name) => /pad|disc|rotor/i.test(name)) ? [BEDDING] : [];

const highVoltage = ({ drive }: CarProfile) =>
  drive === 'hybrid' || drive === 'electric' ? [HIGH_VOLTAGE] : [];

/** How this car's stick is read, as far as that is known; a dry sump unless said otherwise hot and idling. */
function stickCautions({ sump, dipstick }: CarProfile): string[] {
  const state = dipstick?.state ?? (sump === 'dry' ? 'hotIdle' : null);
  const minutes = dipstick?.minutesAfterStop;
  const never = 'A cold reading shows too little: never add oil on one.';
  switch (state) {
    case 'hotIdle':
      return [`Read this one hot and idling, by the maker’s manual. ${never}`, AIR];
    case 'hotStopped':
      return [
        `Read this one hot, on level ground, ${minutes === undefined ? 'some minutes' : `${minutes} minutes`} after stopping, by the maker’s manual.`,
      ];
    case 'cold':
      return ['Read this one cold, on level ground, after standing, by the maker’s manual.'];
    case null:
      return [];
  }
}
