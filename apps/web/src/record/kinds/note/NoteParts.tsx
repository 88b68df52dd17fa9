'use client';

import { NoteField } from '../../../components/index.ts';
import type { PartProps } from '../../parts.ts';

export function NoteParts({ form, errors }: PartProps) {
  return (
    <NoteField label="Note" rows={6} error={errors['entry.note']} {...form.register('note')} />
  );
}
