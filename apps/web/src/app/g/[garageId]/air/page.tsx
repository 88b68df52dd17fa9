import { HydrationBoundary } from '@tanstack/react-query';
import type { Metadata } from 'next';
import { AirScreen } from '../../../../air/AirScreen.tsx';
import { Page } from '../../../../frame/Page.tsx';
import { answers, ask, orNotFound, pageCache } from '../../../../server/ask.ts';
import { everyCar } from '../../../../server/every-car.ts';

export const metadata: Metadata = { title: 'Air and pressures' };

export default async function Air({ params }: { params: Promise<{ garageId: string }> }) {
  const { garageId } = await params;
  const cars = await orNotFound(everyCar(garageId));
  await pageCache().fetchQuery(ask().garage.mine.queryOptions());
  return (
    <HydrationBoundary state={answers()}>
      <Page width="narrow">
        <AirScreen garageId={garageId} cars={cars.map(({ carId, name }) => ({ carId, name }))} />
      </Page>
    </HydrationBoundary>
  );
}
