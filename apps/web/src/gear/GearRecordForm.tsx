'use client';

import type { EntryKind } from '@quartermark/engine/log';
import type { Route } from 'next';
import { useRouter } from 'next/navigation';
import { useState } from 'react';
import { newId } from '../client/make-id.ts';
import { aboutGear } from '../record/about.ts';
import { EntryForm } from '../record/EntryForm.tsx';
import { emptyFields } from '../record/record-fields.ts';
import type { Start } from '../record/start.ts';
import { type PieceWhere, usePiece } from './use-piece.ts';

/** Writes down something about a set, a tool or a person; it needs no car. */
export function GearRecordForm({ kind, ...where }: PieceWhere & { kind: EntryKind }) {
  const router = useRouter();
  const { row, garage } = usePiece(where);
  const about = aboutGear(garage, row);
  const [start] = useState<Start>(() => ({
    entryId: newId(),
    today: garage.today,
    unit: about.unit,
    volumeUnit: garage.volumeUnit,
    last: null,
    component: row.gear.kind === 'component' ? row.gearId : null,
  }));
  const toPiece = () => router.push(`/g/${garage.id}/gear/${row.gearId}` as Route);
  return (
    <EntryForm
      about={about}
      kind={kind}
      base={null}
      start={start}
      initial={emptyFields(start)}
      draft={`record:${row.gearId}:${kind}`}
      last={null}
      onDone={toPiece}
      onLeave={toPiece}
    />
  );
}
