import type { GearOf } from '../../log/gear.ts';
import { depthMm } from '../../log/quantity.ts';
import type { MeasuredReading } from '../result.ts';
import type { ComponentWear, WearFloor } from './result.ts';

/**
 * Legal floors of tread. 2/32 in are 1.5875 mm: what is legal in the US may be illegal in the EU.
 * Sources: Council Directive 89/459/EEC; 49 CFR 570.9.
 */
const EU_TREAD: WearFloor = { whose: 'lawEu', mm: 1.6 };
const US_TREAD: WearFloor = { whose: 'lawUs', mm: (2 * 25.4) / 32 };

/** Pads: end a circuit day above it, begin it above 6 mm or half. Common practice, no source. */
const PAD_END: WearFloor = { whose: 'practice', mm: 3 };
const PAD_START_MM = 6;

type Component = GearOf<'component'>;

/**
 * How thin a position may get, by whom, the greatest first. Both laws where nobody said on which roads a
 * tyre goes; the owner's own value instead of common practice, beside the law.
 */
export function wearFloors(gear: Component, what: MeasuredReading['what']): WearFloor[] {
  const own: WearFloor[] = gear.leastDepth
    ? [{ whose: 'owner', mm: depthMm(gear.leastDepth) }]
    : [];
  return [...own, ...others(gear, what, own.length > 0)].sort((a, b) => b.mm - a.mm);
}

function others(gear: Component, what: MeasuredReading['what'], hasOwn: boolean): WearFloor[] {
  if (what === 'disc') return [];
  if (what !== 'tread') return hasOwn ? [] : [PAD_END];
  switch (gear.roadLaw) {
    case 'eu':
      return [EU_TREAD];
    case 'us':
      return [US_TREAD];
    case 'none':
      return [];
    case undefined:
      return [EU_TREAD, US_TREAD];
  }
}

/** What pads should have at the start of a circuit day: the owner's own value, else half of new, else 6 mm. */
export function startOfDay(gear: Component): ComponentWear['startOfDay'] {
  if (gear.sort !== 'pads') return null;
  if (gear.startDepth) return { mm: depthMm(gear.startDepth), whose: 'owner' };
  const half = gear.newDepth ? depthMm(gear.newDepth) / 2 : 0;
  return { mm: half > 0 ? half : PAD_START_MM, whose: 'practice' };
}
