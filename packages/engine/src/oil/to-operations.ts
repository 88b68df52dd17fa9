import type { Drive } from './drive.ts';
import type { EntryRef, OilOperation, OilStep, RawLevel, StickCondition } from './operation.ts';
import { judgeStick, type StickCar, type StickLook } from './stick.ts';

/** What one entry says of the oil, in whatever file it stands. */
export type OilHappening =
  | { is: 'reading'; level: RawLevel; resolution: number | null; poor: boolean }
  | {
      is: 'topUp';
      volumeL: number | null;
      filledToMax: boolean;
      before: RawLevel | null;
      after: RawLevel | null;
    }
  | { is: 'change'; after: RawLevel | null }
  | { is: 'repair' }
  | { is: 'use' };

/** An entry that cuts a drive. */
export type OilEvent = {
  entry: EntryRef;
  /** km since the log began, exchanges of the odometer carried over */
  totalKm: number;
  drive: Drive;
  condition: StickCondition | null;
  happening: OilHappening;
};

/** Standard deviations and means in spans. Common practice and simulation; see each rule. */
const RESOLUTION = 1 / 8;
const READ_SD = 0.09;
const POOR_SD = 0.2;
const CORRECTED_SD = 0.3;
const POOR_FACTOR = 1.5;
/** Below MIN the mark itself no longer helps the eye. */
const LOW_FACTOR = 1.5;
const NONE = { level: -1.1, sd: 0.25 };
const OFF_SD = 0.35;
const FULL = { level: -0.02, sd: { on: 0.1, poor: 0.2, corrected: 0.3, off: 0.35 } };
/** "The owner saw it low, and did not pour past MAX." */
const SEEN_LOW = { level: -0.7, sd: 0.3, withinKm: 20 };
const UNKNOWN_VOLUME = { level: 0.5, sd: 0.35 };
const VOLUME_SD = { share: 0.03, leastL: 0.01 };
const CHANGED = { level: -0.05, sd: 0.12 };
/** "It was kept between the marks" until it was changed. */
const KEPT = { level: -0.5, sd: 0.4, withinKm: 300 };

/**
 * Turns entries into what happens to the oil, step by step. Only the first off-procedure level since the last
 * good one is observed: its bias is a habit, not noise, and repeating it must not add certainty.
 *
 * @param car what decides how a level can be compared; span > 0
 * @param events in order
 * Source: own method; standard deviations from simulation and common practice, no published source.
 */
export function toOperations(car: StickCar, events: readonly OilEvent[]): OilOperation[] {
  const seen: Seen = { informedAtKm: null, offSeen: false };
  return events.map((event, index) => ({
    entry: event.entry,
    drive: event.drive,
    steps: stepsOf(car, event, index > 0, seen),
  }));
}

type Seen = {
  /** km at which something was last learnt of the level; null: never */
  informedAtKm: number | null;
  /** an off-procedure level was observed since the last good one */
  offSeen: boolean;
};

function stepsOf(car: StickCar, event: OilEvent, hasBefore: boolean, seen: Seen): OilStep[] {
  const { happening, condition, totalKm } = event;
  const look = judgeStick(car, condition);
  const within = (km: number) => seen.informedAtKm !== null && totalKm - seen.informedAtKm <= km;
  const inform = () => {
    seen.informedAtKm = totalKm;
  };
  const level = (raw: RawLevel, resolution: number | null = null, poor = false) => {
    if (look.is !== 'off') inform();
    return levelSteps(car, look, raw, condition, resolution, poor, seen);
  };
  switch (happening.is) {
    case 'reading':
      return level(happening.level, happening.resolution, happening.poor);
    case 'topUp': {
      const { before, after, volumeL, filledToMax } = happening;
      const steps = before === null ? [] : level(before);
      if ((before === null || look.is === 'off') && !within(SEEN_LOW.withinKm))
        steps.push(weak(car, Math.min(SEEN_LOW.level, -(volumeL ?? 0) / car.spanL), SEEN_LOW.sd));
      steps.push(...pourSteps(car, look, volumeL, filledToMax));
      inform();
      if (filledToMax && look.is !== 'off') seen.offSeen = false;
      return after === null ? steps : [...steps, ...level(after)];
    }
    case 'change': {
      const steps = hasBefore && !within(KEPT.withinKm) ? [weak(car, KEPT.level, KEPT.sd)] : [];
      const { level: to, sd } = CHANGED;
      steps.push({ does: 'reset', levelL: to * car.spanL, sdL: sd * car.spanL, change: true });
      inform();
      seen.offSeen = false;
      return happening.after === null ? steps : [...steps, ...level(happening.after)];
    }
    case 'repair':
      return [{ does: 'repair' }];
    case 'use':
      return [];
  }
}

function weak({ spanL }: StickCar, level: number, sd: number): OilStep {
  return { does: 'observe', levelL: level * spanL, sdL: sd * spanL, tag: 'weak', read: null };
}

function pourSteps(
  { spanL }: StickCar,
  look: StickLook,
  volumeL: number | null,
  filledToMax: boolean,
): OilStep[] {
  const levelL = FULL.level * spanL + look.correctionL;
  const sdL = FULL.sd[look.is] * spanL;
  if (volumeL === null && filledToMax) return [{ does: 'reset', levelL, sdL, change: false }];
  if (volumeL === null) {
    const { level, sd } = UNKNOWN_VOLUME;
    return [{ does: 'add', volumeL: level * spanL, sdL: sd * spanL }];
  }
  const poured: OilStep = {
    does: 'add',
    volumeL,
    sdL: Math.max(VOLUME_SD.share * volumeL, VOLUME_SD.leastL),
  };
  return filledToMax
    ? [poured, { does: 'observe', levelL, sdL, tag: 'full', read: null }]
    : [poured];
}

function levelSteps(
  { spanL }: StickCar,
  look: StickLook,
  level: RawLevel,
  condition: StickCondition | null,
  resolution: number | null,
  poor: boolean,
  seen: Seen,
): OilStep[] {
  const read = { level, condition, offProcedure: look.is === 'off' };
  const plain = (level === 'none' ? NONE.level : level - 1) * spanL;
  if (look.is === 'off') {
    if (seen.offSeen) return [{ does: 'list', read }];
    seen.offSeen = true;
    return [{ does: 'observe', levelL: plain, sdL: OFF_SD * spanL, tag: 'off', read }];
  }
  seen.offSeen = false;
  const sdL = spanL * spread(look, level, resolution ?? RESOLUTION, poor);
  return [{ does: 'observe', levelL: plain + look.correctionL, sdL, tag: 'read', read }];
}

/** Standard deviation of a level by procedure or corrected, in spans. */
function spread(look: StickLook, level: RawLevel, resolution: number, poor: boolean): number {
  const corrected = look.is === 'corrected';
  const isPoor = poor || look.is === 'poor';
  const own = corrected ? CORRECTED_SD : isPoor ? POOR_SD : READ_SD;
  const factor =
    (corrected && isPoor ? POOR_FACTOR : 1) * (level !== 'none' && level <= 0 ? LOW_FACTOR : 1);
  const sd = factor * Math.sqrt(own * own + (resolution * resolution) / 12);
  if (level !== 'none') return sd;
  return corrected ? Math.max(sd, NONE.sd) : NONE.sd;
}
