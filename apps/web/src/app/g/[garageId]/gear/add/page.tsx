import type { GearKind } from '@quartermark/engine/log';
import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { PageAnswer } from '../../../../../components/index.ts';
import { Page } from '../../../../../frame/Page.tsx';
import { AddGearForm } from '../../../../../gear/AddGearForm.tsx';
import { ask, pageCache } from '../../../../../server/ask.ts';

export const metadata: Metadata = { title: 'Add a set, a tool or a person' };

type AddGearProps = {
  params: Promise<{ garageId: string }>;
  searchParams: Promise<Record<string, string | string[] | undefined>>;
};

const KINDS: readonly GearKind[] = ['component', 'equipment', 'person'];

export default async function AddGear({ params, searchParams }: AddGearProps) {
  const { garageId } = await params;
  const { kind } = await searchParams;
  const garages = await pageCache().fetchQuery(ask().garage.mine.queryOptions());
  const garage = garages.find(({ id }) => id === garageId);
  if (!garage) notFound();
  return (
    <Page width="narrow">
      <PageAnswer about="Sets, tools and people">What is it, and what runs out on it?</PageAnswer>
      <AddGearForm garage={garage} kind={KINDS.find((known) => known === kind) ?? 'component'} />
    </Page>
  );
}
