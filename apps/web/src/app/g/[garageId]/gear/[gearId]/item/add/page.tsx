import { HydrationBoundary } from '@tanstack/react-query';
import type { Metadata } from 'next';
import { PageAnswer } from '../../../../../../../components/index.ts';
import { Page } from '../../../../../../../frame/Page.tsx';
import { AddGearItem } from '../../../../../../../gear/GearItemForms.tsx';
import { answers, ask, orNotFound, pageCache } from '../../../../../../../server/ask.ts';

export const metadata: Metadata = { title: 'Add an item' };

type AddItemProps = { params: Promise<{ garageId: string; gearId: string }> };

export default async function AddItem({ params }: AddItemProps) {
  const where = await params;
  const { row } = await orNotFound(pageCache().fetchQuery(ask().gear.view.queryOptions(where)));
  return (
    <HydrationBoundary state={answers()}>
      <Page width="narrow">
        <PageAnswer about={row.gear.name}>What runs out, and after how much?</PageAnswer>
        <AddGearItem {...where} />
      </Page>
    </HydrationBoundary>
  );
}
