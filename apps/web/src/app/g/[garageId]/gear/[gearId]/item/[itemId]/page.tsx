import { HydrationBoundary } from '@tanstack/react-query';
import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { PageAnswer } from '../../../../../../../components/index.ts';
import { Page } from '../../../../../../../frame/Page.tsx';
import { ChangeGearItem } from '../../../../../../../gear/GearItemForms.tsx';
import { answers, ask, orNotFound, pageCache } from '../../../../../../../server/ask.ts';

type ChangeItemProps = {
  params: Promise<{ garageId: string; gearId: string; itemId: string }>;
};

async function found({ params }: ChangeItemProps) {
  const { garageId, gearId, itemId } = await params;
  const { row } = await orNotFound(
    pageCache().fetchQuery(ask().gear.view.queryOptions({ garageId, gearId })),
  );
  const standing = row.items.find(({ id }) => id === itemId);
  if (!standing) notFound();
  return { garageId, row, standing };
}

export async function generateMetadata(props: ChangeItemProps): Promise<Metadata> {
  const { standing } = await found(props);
  return { title: standing.item.name };
}

export default async function ChangeItem(props: ChangeItemProps) {
  const { garageId, row, standing } = await found(props);
  return (
    <HydrationBoundary state={answers()}>
      <Page width="narrow">
        <PageAnswer about={`${row.gear.name}: ${standing.item.name}`}>
          Its limits, and when it was last done.
        </PageAnswer>
        <ChangeGearItem garageId={garageId} gearId={row.gearId} itemId={standing.id} />
      </Page>
    </HydrationBoundary>
  );
}
