'use client';

import { gearInput } from '@quartermark/engine/log';
import { useMutation } from '@tanstack/react-query';
import { useState } from 'react';
import { useTRPC } from '../client/trpc.ts';
import { ChangeForm } from '../forms/ChangeForm.tsx';
import { useChange } from '../forms/use-change.tsx';
import { useWritten } from '../items/use-written.ts';
import { GearParts } from './GearParts.tsx';
import { type GearFields, gearFields, readGear } from './gear-fields.ts';
import { gearLines } from './gear-lines.ts';
import { RemoveGear } from './RemoveGear.tsx';
import { type PieceWhere, usePiece } from './use-piece.ts';

/** Changes a set, a tool or a person. What others save meanwhile is never overwritten unseen. */
export function ChangeGearForm(where: PieceWhere) {
  const { gearId } = where;
  const trpc = useTRPC();
  const { row, garage, owned } = usePiece(where);
  // what the form was opened with: it stays the same while the page is kept up to date
  const [opened] = useState(row);
  const { mutateAsync } = useMutation(trpc.gear.change.mutationOptions());
  const { written, toOwner } = useWritten(owned);
  const change = useChange({
    garage,
    draft: `gear:${gearId}`,
    opened: { body: opened.gear, revision: opened.revision },
    fieldsOf: gearFields,
    read,
    schema: gearInput,
    lines: gearLines,
    send: (body, on) => mutateAsync({ ...on, gearId, gear: body }),
    after: written,
  });
  return (
    <>
      <ChangeForm label="Change it" change={change} onLeave={toOwner}>
        <GearParts form={change.form} errors={change.errors} />
      </ChangeForm>
      <RemoveGear row={row} garage={garage} />
    </>
  );
}

function read(fields: GearFields) {
  const found = readGear(fields);
  return 'gear' in found ? { body: found.gear } : found;
}
