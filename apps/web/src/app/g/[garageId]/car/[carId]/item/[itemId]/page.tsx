import { HydrationBoundary } from '@tanstack/react-query';
import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { PageAnswer } from '../../../../../../../components/index.ts';
import { Page } from '../../../../../../../frame/Page.tsx';
import { ChangeCarItem } from '../../../../../../../items/CarItemForms.tsx';
import { answers, ask, orNotFound, pageCache } from '../../../../../../../server/ask.ts';

type ChangeItemProps = {
  params: Promise<{ garageId: string; carId: string; itemId: string }>;
};

async function found({ params }: ChangeItemProps) {
  const { garageId, carId, itemId } = await params;
  const view = await orNotFound(
    pageCache().fetchQuery(ask().car.view.queryOptions({ garageId, carId })),
  );
  const standing = view.items.find(({ id }) => id === itemId);
  if (!standing) notFound();
  return { view, standing };
}

export async function generateMetadata(props: ChangeItemProps): Promise<Metadata> {
  const { standing } = await found(props);
  return { title: standing.item.name };
}

export default async function ChangeItem(props: ChangeItemProps) {
  const { view, standing } = await found(props);
  return (
    <HydrationBoundary state={answers()}>
      <Page width="narrow">
        <PageAnswer about={`${view.car.name}: ${standing.item.name}`}>
          Its limits, and when it was last done.
        </PageAnswer>
        <ChangeCarItem garageId={view.garage.id} carId={view.carId} itemId={standing.id} />
      </Page>
    </HydrationBoundary>
  );
}
