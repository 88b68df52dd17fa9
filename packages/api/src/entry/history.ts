import { ENTRY_KINDS } from '@quartermark/engine/log';
import { z } from 'zod';
import { id } from '../asked.ts';
import type { HistoryPage } from '../views.ts';
import type { Asker, World } from '../world.ts';

export const entryHistoryInput = z.strictObject({
  garageId: id,
  carId: id,
  kind: z.enum(ENTRY_KINDS as [string, ...string[]]).optional(),
  /** words to look for in what was typed */
  text: z.string().trim().max(200).optional(),
  cursor: z.string().max(200).nullish(),
});

export async function entryHistory(
  _world: World,
  _asker: Asker,
  _input: z.output<typeof entryHistoryInput>,
): Promise<HistoryPage> {
  throw new Error('entryHistory: under construction');
}
