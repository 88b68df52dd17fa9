import { formatDay } from '@quartermark/engine/display';
import type { EntryInput } from '@quartermark/engine/log';
import { isUse } from './record-kinds.ts';

/** Where an entry stands in its day, in the words of its own side of it. */
export function orderWords(kind: EntryInput['kind'], order: 'beforeDriving' | 'afterDriving') {
  const side = order === 'beforeDriving' ? 'before' : 'after';
  return isUse(kind) ? `${side} that day’s work` : `${side} driving`;
}

/** When an entry happened. @example dayWords({ on: '2026-05-02', time: '07:00', … }) // "2 May 2026, 07:00" */
export function dayWords({ kind, on, time, dayOrder }: EntryInput): string {
  if (time !== undefined) return `${formatDay(on)}, ${time}`;
  if (dayOrder !== undefined) return `${formatDay(on)}, ${orderWords(kind, dayOrder)}`;
  return formatDay(on);
}
