import type { EntryOf } from '@quartermark/engine/log';
import type { RecordFields } from '../../record-fields.ts';
import { type Members, type Reading, text } from '../../typed.ts';

export type HandoverFields = { what: EntryOf<'handover'>['what'] | ''; who: string };

export const emptyHandover = (): HandoverFields => ({ what: '', who: '' });

export const handoverFields = ({ what, who }: EntryOf<'handover'>): HandoverFields => ({
  what,
  who: who ?? '',
});

export function readHandover({ handover }: RecordFields, { problems }: Reading): Members {
  if (handover.what === '') problems.what = 'Say whether it was bought, sold, lent or came back.';
  return { what: text(handover.what), who: text(handover.who) };
}
