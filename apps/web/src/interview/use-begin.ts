'use client';

import type { CarView } from '@quartermark/api/client';
import { canonicalJson } from '@quartermark/engine/log';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import type { Route } from 'next';
import { useRouter } from 'next/navigation';
import { useAfterSave } from '../client/AfterSave.tsx';
import { useTRPC } from '../client/trpc.ts';
import { useCommand } from '../client/use-command.ts';
import { useIds } from '../client/use-ids.ts';
import { ownedByCar } from '../items/owned.ts';
import { useWritten } from '../items/use-written.ts';
import { type BeginFields, profileWith } from './begin-fields.ts';
import { items as itemsWords } from './group-lines.ts';
import type { Answered } from './read-begin.ts';

/**
 * Writes what the interview found: the profile, if it says anything new, then all items in one go. Ids
 * are made once a proposal, so a second press after no answer adds nothing twice.
 */
export function useBegin(view: CarView) {
  const { garage, carId, car, revision } = view;
  const trpc = useTRPC();
  const client = useQueryClient();
  const router = useRouter();
  const afterSave = useAfterSave();
  const { refresh } = useWritten(ownedByCar(view));
  const idOf = useIds();
  const profile = useCommand(garage.id, useMutation(trpc.car.change.mutationOptions()).mutateAsync);
  const adding = useCommand(
    garage.id,
    useMutation(trpc.item.addMany.mutationOptions()).mutateAsync,
  );

  async function profileSaved(fields: BeginFields): Promise<boolean> {
    const said = profileWith(car.profile, fields);
    if (canonicalJson(said) === canonicalJson(car.profile)) return true;
    const sent = { carId, baseRevision: revision, car: { ...car, profile: said } };
    if (!(await profile.send(sent))) return false;
    await client.invalidateQueries({
      queryKey: trpc.car.view.queryKey({ garageId: garage.id, carId }),
    });
    return true;
  }

  /** @param left what is told beside, such as how many stayed open */
  async function save(fields: BeginFields, answered: readonly Answered[], left: string) {
    if (!(await profileSaved(fields))) return false;
    if (answered.length > 0) {
      const items = answered.map(({ key, item }) => ({ itemId: idOf(key), item }));
      const written = await adding.send({ carId, items });
      if (!written) return false;
      const { id: entryId, revision: at, version } = written;
      const words = `${itemsWords(items.length)} added.${left === '' ? '' : ` ${left}`}`;
      afterSave({ carId, entryId, revision: at, version, undo: null, words });
    }
    await refresh();
    router.push(`/g/${garage.id}/car/${carId}` as Route);
    return true;
  }

  return {
    save,
    busy: profile.busy || adding.busy,
    trouble: profile.trouble ?? adding.trouble,
    clear: () => {
      profile.clear();
      adding.clear();
    },
  };
}
