import { READY_FOR_WORDS } from '@quartermark/engine/display';
import type { ReadyFor, Requirements } from '@quartermark/engine/log';
import { rulesWords } from './requirement-lines.ts';

/** What the garage asks for a sort of use. */
export type GarageAsks = { use: ReadyFor; requirements: Requirements; usual: boolean };

/**
 * Whose requirements count, in a sentence without a full stop.
 *
 * @param own the event's own; null where the garage's count
 * @example whoseWords(null, { use: 'circuit', usual: true, ... }) // "the usual for a circuit day; common practice, no source"
 */
export function whoseWords(own: Requirements | null, garage: GarageAsks): string {
  const rules = rulesWords(own ?? garage.requirements);
  const by = rules === '' ? '' : `; ${rules}`;
  if (own !== null) return `this event’s own${by}`;
  const whatFor = READY_FOR_WORDS[garage.use];
  return garage.usual
    ? `the usual for ${whatFor}; common practice, no source${by}`
    : `this garage’s for ${whatFor}${by}`;
}
