import { formatDay } from '../calendar/day-number.ts';
import type { CaseItem } from '../history/case.ts';
import { amountOf, type Contribution } from '../history/contribution.ts';
import { firstAfter } from './accrue.ts';
import type { SevereResult } from './result.ts';
import { roundAmount } from './round-amount.ts';

/** How much of the interval must be used before the share of hard use is judged. */
export const PART_OF_INTERVAL = 0.1;

export type SevereSwitch = {
  result: SevereResult;
  sinceDay: number | null;
  /** plain sum of the measure over all classes since the service */
  used: number;
};

/**
 * Judges whether hard use has switched an item's shorter limits on.
 *
 * B = plain sum of the measure over the hard-use classes since the service, day by day. Basis
 * `limit`: on once B >= share x the usual limit of that measure; it cannot flip back. Basis `used`: on
 * once B > share x all use since the service, judged at the end of each day after a tenth of the
 * usual interval, and latched until the next service. Where there is no usual limit of that measure
 * the interval counts as 0: the shorter limits are then on from the service (`limit`), since nobody
 * can say how much hard use would be too much.
 *
 * @param item with `severe`; share 0..1
 * @param contributions in order
 * @param afterPosition position of the last service
 * @param serviceDay its day number
 * Source: common practice (two service schedules), no published source.
 */
export function judgeSevere(
  item: CaseItem & { severe: NonNullable<CaseItem['severe']> },
  contributions: readonly Contribution[],
  afterPosition: number,
  serviceDay: number,
): SevereSwitch {
  const { severe, limits } = item;
  const usual = limits.find(({ measure }) => measure === severe.measure);
  const interval = usual !== undefined && 'weights' in usual ? usual.value : 0;
  const hard = new Set(severe.classes);
  const byLimit = severe.basis === 'limit';
  let hardUse = 0;
  let used = 0;
  let sinceDay = byLimit && severe.share * interval <= 0 ? serviceDay : null;
  const first = firstAfter(contributions, afterPosition);
  for (let at = first; at < contributions.length; at += 1) {
    const it = contributions[at] as Contribution;
    const amount = amountOf(it, severe.measure);
    used += amount;
    if (hard.has(it.useClass)) hardUse += amount;
    if (sinceDay !== null || contributions[at + 1]?.day === it.day) continue;
    const on = byLimit
      ? roundAmount(hardUse) >= roundAmount(severe.share * interval)
      : roundAmount(used) >= roundAmount(PART_OF_INTERVAL * interval) &&
        roundAmount(hardUse) > roundAmount(severe.share * used);
    if (on) sinceDay = it.day;
  }
  return {
    sinceDay,
    used,
    result: {
      active: sinceDay !== null,
      severeAmount: roundAmount(hardUse),
      threshold: roundAmount(severe.share * (byLimit ? interval : used)),
      since: sinceDay === null ? null : formatDay(sinceDay),
    },
  };
}
