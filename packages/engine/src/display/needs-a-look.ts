import type { FlagCode } from '../wear/result.ts';

const NEEDS_A_LOOK: Readonly<Record<FlagCode, boolean>> = {
  // tomorrow's entry counts tomorrow: nothing to mend
  future: false,
  // recognised and counted on
  rollOver: false,
  readingRejected: true,
  readingTooFast: true,
  unloggedExchange: true,
  loggedExceedsMeter: true,
  exchangeWithoutOldValue: true,
  valueIgnored: true,
  looksTheSame: true,
  orderAssumed: true,
  fitConflict: true,
  fitNotOn: true,
  fitWithoutCar: true,
  fitOrderAssumed: true,
  setNotOn: true,
};

/** Whether somebody should look at what was found odd, or it is only worth knowing. */
export function needsALook(code: FlagCode): boolean {
  return NEEDS_A_LOOK[code];
}
