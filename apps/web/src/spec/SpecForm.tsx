'use client';

import type { Written } from '@quartermark/api/client';
import { SPEC_GROUPS, specSheet } from '@quartermark/engine/log';
import { useMutation, useQueryClient, useSuspenseQuery } from '@tanstack/react-query';
import type { Route } from 'next';
import { useRouter } from 'next/navigation';
import { useState } from 'react';
import { useAfterSave } from '../client/AfterSave.tsx';
import { useTRPC } from '../client/trpc.ts';
import { ChangeForm } from '../forms/ChangeForm.tsx';
import { useChange } from '../forms/use-change.tsx';
import { SpecGroupRows } from './SpecGroupRows.tsx';
import type { SpecWhere } from './SpecScreen.tsx';
import { readSpec, type SpecFields, specFields } from './spec-fields.ts';
import { specVersion } from './spec-words.ts';

/** Writes a car's spec sheet as a whole. What others save meanwhile is never overwritten unseen. */
export function SpecForm(where: SpecWhere) {
  const { garageId, carId } = where;
  const trpc = useTRPC();
  const router = useRouter();
  const client = useQueryClient();
  const afterSave = useAfterSave();
  const { data: view } = useSuspenseQuery(trpc.car.view.queryOptions(where));
  const { data } = useSuspenseQuery(trpc.spec.view.queryOptions(where));
  // what the form was opened with: it stays the same while the page is kept up to date
  const [opened] = useState(data);
  const { mutateAsync } = useMutation(trpc.spec.change.mutationOptions());
  const toSheet = () => router.push(`/g/${garageId}/car/${carId}/spec` as Route);
  const refresh = () => client.invalidateQueries({ queryKey: trpc.spec.pathKey() });

  async function after({ revision, version }: Written, undo: () => Promise<unknown>) {
    afterSave({
      carId: null,
      entryId: `spec:${carId}`,
      revision,
      version,
      undo: async () => {
        await undo();
        await refresh();
      },
    });
    await refresh();
    toSheet();
  }

  const change = useChange({
    garage: view.garage,
    draft: `spec:${carId}`,
    opened: { body: opened.sheet, revision: opened.revision },
    fieldsOf: specFields,
    read,
    schema: specSheet,
    lines: specVersion,
    send: (body, on) => mutateAsync({ ...on, carId, sheet: body }),
    after,
  });
  return (
    <ChangeForm label="Spec sheet" change={change} saveWords="Save the sheet" onLeave={toSheet}>
      {SPEC_GROUPS.map((group) => (
        <SpecGroupRows
          key={group}
          form={change.form}
          group={group}
          errors={change.errors}
          onMoved={change.clear}
        />
      ))}
    </ChangeForm>
  );
}

function read(fields: SpecFields) {
  const found = readSpec(fields);
  return 'sheet' in found ? { body: found.sheet } : found;
}
