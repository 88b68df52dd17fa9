import type { AmountMeasure, ItemDraft, Limit } from '../log/item.ts';
import { KM_PER_UNIT } from '../log/units.ts';

/**
 * A track day: 5 sessions of 0.40 h at 110 km/h.
 *
 * Source: common practice for club days, no published source.
 */
const DAY = { sessions: 5, hours: 2, km: 220 } as const;

export type TrackDays = { measure: Exclude<AmountMeasure, 'launches'>; days: number };

type Limits = Pick<ItemDraft, 'severe'> & { limits: readonly Limit[] };

/**
 * How many track days each limit of an item lasts: value / (weight of circuit x amount of one day).
 * Hard-use limits count where circuits switch them on. Limits that circuits do not use up (calendar,
 * launches, weight 0) are left out.
 *
 * @returns in the order of the limits
 * @example trackDaysByMeasure({ limits: [{ measure: 'sessions', value: 25 }] }) // [{ measure: 'sessions', days: 5 }]
 */
export function trackDaysByMeasure({ limits, severe }: Limits): TrackDays[] {
  const hard = severe?.classes.includes('circuit') ? severe.limits : [];
  return [...limits, ...hard].flatMap(daysOf);
}

function daysOf(limit: Limit): TrackDays[] {
  const { measure } = limit;
  if (measure !== 'km' && measure !== 'hours' && measure !== 'sessions') return [];
  const perDay = (limit.weights?.circuit ?? 1) * DAY[measure];
  if (perDay <= 0) return [];
  const value = measure === 'km' ? limit.value * KM_PER_UNIT[limit.unit] : limit.value;
  return [{ measure, days: value / perDay }];
}

/** Track days until the first limit of an item runs out; null where circuits use up none of them. */
export function trackDays(item: Limits): number | null {
  const days = trackDaysByMeasure(item).map((it) => it.days);
  return days.length === 0 ? null : Math.min(...days);
}
