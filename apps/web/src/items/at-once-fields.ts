import type { IncidentSort, ItemDraft, ItemInput } from '@quartermark/engine/log';
import { incidentSort } from '@quartermark/engine/log';
import { type Problems, readField } from './limit-fields.ts';

export const INCIDENT_SORTS: readonly IncidentSort[] = incidentSort.options;

/** What makes an item due whatever its limits say, as the form holds it. */
export type AtOnceFields = {
  once: boolean;
  due: { now: boolean; since: string };
  incidents: Record<IncidentSort, boolean>;
  /** °C as typed; empty: no such limit */
  oilHotterThan: string;
  wheelsOff: boolean;
};

const NO_INCIDENT: Record<IncidentSort, boolean> = {
  off: false,
  contact: false,
  overRev: false,
  softPedal: false,
  overheating: false,
  warningLamp: false,
  lowOilPressure: false,
};

export function noAtOnce(): AtOnceFields {
  return {
    once: false,
    due: { now: false, since: '' },
    incidents: { ...NO_INCIDENT },
    oilHotterThan: '',
    wheelsOff: false,
  };
}

/** A stored item's part of the form. */
export function atOnceFields({ once, dueSince, triggers }: ItemInput): AtOnceFields {
  const incidents = { ...NO_INCIDENT };
  for (const sort of triggers?.incidents ?? []) incidents[sort] = true;
  const hotter = triggers?.oilHotterThanC;
  return {
    once: once ?? false,
    due: { now: dueSince !== undefined, since: dueSince ?? '' },
    incidents,
    oilHotterThan: hotter === undefined ? '' : String(hotter),
    wheelsOff: triggers?.wheelsOff ?? false,
  };
}

function readTriggers(fields: AtOnceFields, problems: Problems): Pick<ItemDraft, 'triggers'> {
  const incidents = INCIDENT_SORTS.filter((sort) => fields.incidents[sort]);
  const typed = fields.oilHotterThan;
  const triggers = {
    ...(incidents.length > 0 ? { incidents } : {}),
    ...(typed.trim() === ''
      ? {}
      : { oilHotterThanC: readField(typed, 'item.triggers.oilHotterThanC', problems, false) }),
    ...(fields.wheelsOff ? { wheelsOff: true } : {}),
  };
  return Object.keys(triggers).length > 0 ? { triggers } : {};
}

/** As the server takes it; what cannot be read is added to `problems`. */
export function readAtOnce(
  fields: AtOnceFields,
  problems: Problems,
): Pick<ItemDraft, 'once' | 'dueSince' | 'triggers'> {
  const { now, since } = fields.due;
  if (now && since === '')
    problems['item.dueSince'] = 'Give the day since when it is to be done, such as today.';
  return {
    ...(fields.once ? { once: true } : {}),
    ...(now ? { dueSince: since } : {}),
    ...readTriggers(fields, problems),
  };
}
