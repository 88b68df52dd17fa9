import { HydrationBoundary } from '@tanstack/react-query';
import type { Metadata, Route } from 'next';
import { cookies } from 'next/headers';
import { redirect } from 'next/navigation';
import { Page } from '../../../../frame/Page.tsx';
import { overviewPages } from '../../../../garage/overview-pages.ts';
import { ChooseCar } from '../../../../record/ChooseCar.tsx';
import { lastCarCookie } from '../../../../record/last-car.ts';
import { answers, ask, orNotFound, pageCache } from '../../../../server/ask.ts';

export const metadata: Metadata = { title: 'What happened' };

type ChooseCarPageProps = { params: Promise<{ garageId: string }> };

export default async function ChooseCarPage({ params }: ChooseCarPageProps) {
  const { garageId } = await params;
  const overview = await orNotFound(
    pageCache().fetchInfiniteQuery(
      ask().garage.overview.infiniteQueryOptions({ garageId }, overviewPages),
    ),
  );
  const rows = overview.pages.flatMap((page) => page.rows);
  const [only, another] = rows;
  if (only && !another) redirect(`/g/${garageId}/record/${only.carId}` as Route);
  const lastCarId = (await cookies()).get(lastCarCookie(garageId))?.value ?? null;
  return (
    <HydrationBoundary state={answers()}>
      <Page width="narrow">
        <ChooseCar garageId={garageId} lastCarId={lastCarId} />
      </Page>
    </HydrationBoundary>
  );
}
