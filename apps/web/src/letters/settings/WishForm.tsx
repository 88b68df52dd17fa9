'use client';

import type { WishView } from '@quartermark/api/client';
import { useMutation, useQueryClient, useSuspenseQuery } from '@tanstack/react-query';
import type { Route } from 'next';
import { useRouter } from 'next/navigation';
import { useState } from 'react';
import { useTRPC } from '../../client/trpc.ts';
import { ChangeForm } from '../../forms/ChangeForm.tsx';
import { useChange } from '../../forms/use-change.tsx';
import { useSaved } from './use-saved.ts';
import { WishParts } from './WishParts.tsx';
import { readWish, wishFields, wishLines, wishSchema } from './wish-fields.ts';

/** What a member wants of the letters of this garage. */
export function WishForm({ garageId }: { garageId: string }) {
  const trpc = useTRPC();
  const { data } = useSuspenseQuery(trpc.letter.wish.queryOptions({ garageId }));
  // opened anew where what stands is another: after saving, and after undoing
  return <Opened key={data.revision} view={data} />;
}

function Opened({ view }: { view: WishView }) {
  const trpc = useTRPC();
  const client = useQueryClient();
  const router = useRouter();
  const [opened] = useState(view);
  const { garage, cars } = opened;
  const { mutateAsync } = useMutation(trpc.letter.changeWish.mutationOptions());
  const saved = useSaved();
  const nameOf = (id: string) =>
    cars.find(({ carId }) => carId === id)?.name ?? 'a car that has left';
  const change = useChange({
    garage,
    draft: `letter-wish:${garage.id}`,
    opened: { body: opened.wish, revision: opened.revision },
    fieldsOf: wishFields,
    read: readWish,
    schema: wishSchema,
    lines: (wish) => wishLines(wish, nameOf),
    send: (wish, on) => mutateAsync({ ...on, wish }),
    after: (_, undo) =>
      saved('letter-wish', undo, () =>
        client.invalidateQueries({ queryKey: trpc.letter.pathKey() }),
      ),
  });
  return (
    <ChangeForm
      label="What comes, and when"
      change={change}
      saveWords="Save what comes"
      onLeave={() => router.push(`/g/${garage.id}/letters` as Route)}
    >
      <WishParts form={change.form} errors={change.errors} view={opened} />
    </ChangeForm>
  );
}
