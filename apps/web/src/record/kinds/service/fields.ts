import type { EntryOf } from '@quartermark/engine/log';
import type { RecordFields } from '../../record-fields.ts';
import { type Members, quantity, type Reading, some, text, yes } from '../../typed.ts';

export type ServiceFields = {
  items: string[];
  parts: string;
  byWhom: string;
  cost: string;
  hourMeter: string;
  historyComplete: boolean;
};

export const emptyService = (): ServiceFields => ({
  items: [],
  parts: '',
  byWhom: '',
  cost: '',
  hourMeter: '',
  historyComplete: false,
});

export const serviceFields = (entry: EntryOf<'service'>): ServiceFields => ({
  items: entry.items,
  parts: (entry.parts ?? []).join('\n'),
  byWhom: entry.byWhom ?? '',
  cost: entry.cost ?? '',
  hourMeter: entry.hourMeter?.text ?? '',
  historyComplete: entry.historyComplete ?? false,
});

export function readService({ service }: RecordFields, { problems }: Reading): Members {
  if (service.items.length === 0) problems.items = 'Tick at least one item that was done.';
  return {
    items: service.items,
    parts: some(service.parts.split('\n').filter((line) => line.trim() !== '')),
    byWhom: text(service.byWhom),
    cost: text(service.cost),
    hourMeter: quantity({ text: service.hourMeter, unit: 'h' }),
    historyComplete: yes(service.historyComplete),
  };
}
