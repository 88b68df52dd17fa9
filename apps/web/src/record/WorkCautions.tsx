'use client';

import type { ComponentSort, EntryKind } from '@quartermark/engine/log';
import { type UseFormReturn, useWatch } from 'react-hook-form';
import { type About, partOf } from './about.ts';
import { Cautions } from './Cautions.tsx';
import { cautionsFor } from './cautions.ts';
import type { RecordFields } from './record-fields.ts';

/** What a part's own name may not say. */
const SORT_WORDS: Readonly<Record<ComponentSort, string>> = {
  tyreSet: 'tyres',
  wheelSet: 'wheels',
  pads: 'brake pads',
  discs: 'brake discs',
  clutch: 'clutch',
  engine: 'engine oil',
  gearbox: 'gearbox',
  other: '',
};

type WorkCautionsProps = { form: UseFormReturn<RecordFields>; kind: EntryKind; about: About };

/** The cautions of the work a form records; they follow what is ticked, chosen and written in it. */
export function WorkCautions({ form, kind, about }: WorkCautionsProps) {
  const [done, component, fluid, repaired] = useWatch({
    control: form.control,
    name: ['service.items', 'fit.component', 'fluid.which', 'repair.text'],
  });
  const part = partOf(about, component);
  const names = {
    service: about.items.filter(({ id }) => done.includes(id)).map(({ item }) => item.name),
    fit: part ? [SORT_WORDS[part.sort], part.name] : [],
    fluid: [fluid],
    repair: [repaired],
  };
  const of = kind in names ? names[kind as keyof typeof names] : [];
  return <Cautions of={cautionsFor(kind, about.profile, of)} />;
}
