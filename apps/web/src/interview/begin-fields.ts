import type { CarProfile, UseClass } from '@quartermark/engine/log';
import type { Answer } from './answer.ts';

/** What the interview holds: everything as chosen or typed. */
export type BeginFields = {
  sump: '' | NonNullable<CarProfile['sump']>;
  induction: '' | NonNullable<CarProfile['induction']>;
  gearbox: string;
  uses: Record<UseClass, boolean>;
  /** what the odometer shows today, for what is counted from today */
  odometer: string;
  /** by the key of a proposal; what is open has none */
  answers: Record<string, Answer>;
};

/** @param odometer last reading, if it was read today */
export function beginFields(profile: CarProfile, odometer: string): BeginFields {
  return {
    sump: profile.sump ?? '',
    induction: profile.induction ?? '',
    gearbox: profile.gearbox ?? '',
    uses: { road: false, touring: false, circuit: false, strip: false, autocross: false },
    odometer,
    answers: {},
  };
}

/** The car's profile with what was said in the interview; the rest of it stays. */
export function profileWith(profile: CarProfile, fields: BeginFields): CarProfile {
  const { sump: _sump, induction: _induction, gearbox: _gearbox, ...rest } = profile;
  return {
    ...rest,
    ...(fields.sump === '' ? {} : { sump: fields.sump }),
    ...(fields.induction === '' ? {} : { induction: fields.induction }),
    ...(fields.gearbox.trim() === '' ? {} : { gearbox: fields.gearbox.trim() }),
  };
}
