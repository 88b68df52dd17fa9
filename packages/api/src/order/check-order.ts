import { todayIn } from '@quartermark/engine/calendar';
import { afterTomorrow, type OrderInput } from '@quartermark/engine/log';
import type { Writing } from '../command/run-command.ts';
import { refuse } from '../refused.ts';

/** What was ordered and what has come did so on days that have come. @throws Refused `afterTomorrow` */
export function checkOrder({ garage, now }: Writing, order: OrderInput): void {
  const today = todayIn(now, garage.zone);
  for (const field of ['on', 'arrived'] as const) {
    const day = order[field];
    if (day === undefined || !afterTomorrow(day, today)) continue;
    throw refuse(
      'afterTomorrow',
      `order.${field}`,
      field === 'on'
        ? `ordered on: ${day} has not come yet (today is ${today} in this garage); give the day of the order.`
        : `arrived on: ${day} has not come yet (today is ${today} in this garage); give it as the day it is expected.`,
    );
  }
}
