import { HydrationBoundary } from '@tanstack/react-query';
import type { Metadata, Route } from 'next';
import { ButtonLink, PageAnswer } from '../../../../../../../components/index.ts';
import { Page } from '../../../../../../../frame/Page.tsx';
import { AddCarItem } from '../../../../../../../items/CarItemForms.tsx';
import { answers, ask, orNotFound, pageCache } from '../../../../../../../server/ask.ts';

export const metadata: Metadata = { title: 'Add an item' };

type AddItemProps = { params: Promise<{ garageId: string; carId: string }> };

export default async function AddItem({ params }: AddItemProps) {
  const { garageId, carId } = await params;
  const { car } = await orNotFound(
    pageCache().fetchQuery(ask().car.view.queryOptions({ garageId, carId })),
  );
  return (
    <HydrationBoundary state={answers()}>
      <Page width="narrow">
        <PageAnswer
          about={car.name}
          beneath={
            <ButtonLink href={`/g/${garageId}/car/${carId}/begin` as Route} look="quiet">
              Or go through the usual list
            </ButtonLink>
          }
        >
          What runs out, and after how much?
        </PageAnswer>
        <AddCarItem garageId={garageId} carId={carId} />
      </Page>
    </HydrationBoundary>
  );
}
