import type { EntryKind } from '../log/entry.ts';

/** What each kind of entry is called on screens, in the trade's words. */
export const KIND_WORDS: Readonly<Record<EntryKind, string>> = {
  odometer: 'Odometer',
  fuel: 'Fuel',
  oilCheck: 'Oil check',
  oilTopUp: 'Oil added',
  oilChange: 'Oil change',
  fluid: 'Fluid',
  drive: 'Drive',
  session: 'Session',
  strip: 'Drag strip',
  service: 'Service',
  inspection: 'Inspection',
  measure: 'Measurements',
  fit: 'Parts fitted',
  wheels: 'Wheels',
  finding: 'Finding',
  incident: 'Incident',
  layUp: 'Lay-up',
  wakeUp: 'Wake-up',
  meterReplaced: 'Instrument replaced',
  repair: 'Repair',
  labReport: 'Oil analysis',
  handover: 'Handover',
  answer: 'Answer',
  note: 'Note',
};
