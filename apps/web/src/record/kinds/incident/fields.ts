import type { EntryOf } from '@quartermark/engine/log';
import type { RecordFields } from '../../record-fields.ts';
import { type Members, type Reading, text } from '../../typed.ts';

export type IncidentFields = { what: EntryOf<'incident'>['what'] | ''; detail: string };

export const emptyIncident = (): IncidentFields => ({ what: '', detail: '' });

export const incidentFields = ({ what, detail }: EntryOf<'incident'>): IncidentFields => ({
  what,
  detail: detail ?? '',
});

export function readIncident({ incident }: RecordFields, { problems }: Reading): Members {
  if (incident.what === '') problems.what = 'Choose what happened.';
  return { what: text(incident.what), detail: text(incident.detail) };
}
