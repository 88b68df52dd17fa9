import type { ReadyFor, Requirements } from '@quartermark/engine/log';
import { type Change, changeNewest } from '../change-newest.ts';
import type { Tx } from '../connect.ts';
import { requirementSet } from '../readiness-schema.ts';

export type RequirementsChange = Change & {
  use: ReadyFor;
  /** null: the usual ones again */
  body: Requirements | null;
};

/** @returns the new revision; null if they are past `baseRevision` (0: the garage never had its own) */
export function changeRequirements(tx: Tx, change: RequirementsChange): Promise<number | null> {
  const { garageId, use, body } = change;
  return changeNewest(tx, requirementSet, { garageId, use }, change, { body });
}
