import type { EntryOf, ReadingCondition } from '@quartermark/engine/log';
import type { RecordFields } from '../../record-fields.ts';
import { type Members, number, type Reading, typed, type Was, was } from '../../typed.ts';
import { levelOf, type ZoneField, zoneOf } from '../../zones.ts';

type ConditionFields = { state: ReadingCondition['state'] | ''; minutes: string };
export type OilCheckFields = { level: ZoneField; condition: ConditionFields };

export const emptyOilCheck = (): OilCheckFields => ({
  level: '',
  condition: { state: '', minutes: '' },
});

export const oilCheckFields = ({ level, condition }: EntryOf<'oilCheck'>): OilCheckFields => ({
  level: zoneOf(level),
  condition: { state: condition?.state ?? '', minutes: typed(condition?.minutesAfterStop) },
});

export function readOilCheck({ oilCheck }: RecordFields, { base, problems }: Reading): Members {
  const before = was('oilCheck', base);
  const level = levelOf(oilCheck.level, before?.level);
  if (!level) problems.level = 'Choose the mark where the oil stands.';
  return { level, condition: readCondition(oilCheck.condition, before, problems) };
}

function readCondition(
  { state, minutes }: ConditionFields,
  base: Was<'oilCheck'>,
  problems: Reading['problems'],
) {
  if (state === '') return undefined;
  const stopped = state === 'hotStopped' ? minutes : '';
  const minutesAfterStop = number(stopped, 'condition.minutesAfterStop', problems);
  return { ...base?.condition, state, minutesAfterStop };
}
