import { z } from 'zod';
import { id } from '../asked.ts';
import type { RevisionView } from '../views.ts';
import type { Asker, World } from '../world.ts';

export const entryRevisionsInput = z.strictObject({ garageId: id, entryId: id });

export async function entryRevisions(
  _world: World,
  _asker: Asker,
  _input: z.output<typeof entryRevisionsInput>,
): Promise<RevisionView[]> {
  throw new Error('entryRevisions: under construction');
}
