import { HydrationBoundary } from '@tanstack/react-query';
import type { Metadata } from 'next';
import { ChangeCarForm } from '../../../../../../car-form/ChangeCarForm.tsx';
import { PageAnswer } from '../../../../../../components/index.ts';
import { Page } from '../../../../../../frame/Page.tsx';
import { answers, ask, orNotFound, pageCache } from '../../../../../../server/ask.ts';

export const metadata: Metadata = { title: 'Change the car' };

type ChangeCarProps = { params: Promise<{ garageId: string; carId: string }> };

export default async function ChangeCar({ params }: ChangeCarProps) {
  const { garageId, carId } = await params;
  const { car } = await orNotFound(
    pageCache().fetchQuery(ask().car.view.queryOptions({ garageId, carId })),
  );
  return (
    <HydrationBoundary state={answers()}>
      <Page width="narrow">
        <PageAnswer about={car.name}>What is known of this car.</PageAnswer>
        <ChangeCarForm garageId={garageId} carId={carId} />
      </Page>
    </HydrationBoundary>
  );
}
