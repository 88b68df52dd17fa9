import { addDays, todayIn } from '@quartermark/engine/calendar';
import type { ItemInput } from '@quartermark/engine/log';
import type { Writing } from '../command/run-command.ts';
import { refuse } from '../refused.ts';

/** "Done on" is a day that has come. @throws Refused `afterTomorrow` */
export function checkItem({ garage, now }: Writing, item: ItemInput): void {
  const today = todayIn(now, garage.zone);
  const on = item.baseline?.on;
  if (on === undefined || on <= addDays(today, 1)) return;
  throw refuse(
    'afterTomorrow',
    'item.baseline.on',
    `last done on: ${on} has not come yet (today is ${today} in this garage); give the day it was last done, or leave it empty.`,
  );
}
