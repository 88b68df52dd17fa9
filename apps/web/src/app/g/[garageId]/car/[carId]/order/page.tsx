import { HydrationBoundary } from '@tanstack/react-query';
import type { Metadata } from 'next';
import { PageAnswer } from '../../../../../../components/index.ts';
import { Page } from '../../../../../../frame/Page.tsx';
import { OrderSeveralForm } from '../../../../../../order/OrderSeveralForm.tsx';
import { answers, ask, orNotFound, pageCache } from '../../../../../../server/ask.ts';
import { every, type SaidInAddress } from '../../../../../../server/said-in-address.ts';

export const metadata: Metadata = { title: 'Parts were ordered' };

type OrderProps = {
  params: Promise<{ garageId: string; carId: string }>;
  searchParams: Promise<Record<string, SaidInAddress>>;
};

/** Opening it writes nothing: the items in its address are ticked, and a press saves. */
export default async function Order({ params, searchParams }: OrderProps) {
  const { garageId, carId } = await params;
  const { item } = await searchParams;
  const { car, items } = await orNotFound(
    pageCache().fetchQuery(ask().car.view.queryOptions({ garageId, carId })),
  );
  const named = every(item).filter((asked) => items.some(({ id }) => id === asked));
  return (
    <HydrationBoundary state={answers()}>
      <Page width="narrow">
        <PageAnswer about={`${car.name}: parts`}>Which parts were ordered?</PageAnswer>
        <OrderSeveralForm garageId={garageId} carId={carId} items={named} />
      </Page>
    </HydrationBoundary>
  );
}
