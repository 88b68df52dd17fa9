import type { EntryDraft } from '@quartermark/engine/log';
import type { Problems } from '../items/limit-fields.ts';

/** What the form of a service without a car holds. */
export type DoneFields = {
  items: string[];
  on: string;
  time: string;
  byWhom: string;
  cost: string;
  note: string;
};

type Where = { id: string; gearId: string; zone: string };

/** The entry as the server takes it, or what is wrong with the form. */
export function readDone(
  { items, on, time, byWhom, cost, note }: DoneFields,
  { id, gearId, zone }: Where,
): { entry: EntryDraft } | { problems: Problems } {
  const problems: Problems = {};
  if (items.length === 0) problems['entry.items'] = 'Tick at least one item that was done.';
  if (on === '') problems['entry.on'] = 'Give the day it was done.';
  if (Object.keys(problems).length > 0) return { problems };
  return {
    entry: {
      kind: 'service',
      id,
      gear: gearId,
      zone,
      on,
      items,
      ...(time === '' ? {} : { time }),
      ...(byWhom.trim() === '' ? {} : { byWhom }),
      ...(cost.trim() === '' ? {} : { cost }),
      ...(note.trim() === '' ? {} : { note }),
    },
  };
}
