import { HydrationBoundary } from '@tanstack/react-query';
import type { Metadata } from 'next';
import { Page } from '../../../../../../frame/Page.tsx';
import { OilScreen } from '../../../../../../oil/OilScreen.tsx';
import { answers, ask, orNotFound, pageCache } from '../../../../../../server/ask.ts';

type OilPageProps = { params: Promise<{ garageId: string; carId: string }> };

export async function generateMetadata({ params }: OilPageProps): Promise<Metadata> {
  const where = await params;
  const { car } = await orNotFound(pageCache().fetchQuery(ask().car.view.queryOptions(where)));
  return { title: `${car.name}: oil` };
}

export default async function OilPage({ params }: OilPageProps) {
  const where = await params;
  await orNotFound(
    Promise.all([
      pageCache().fetchQuery(ask().car.view.queryOptions(where)),
      pageCache().fetchQuery(ask().oil.past.queryOptions(where)),
    ]),
  );
  return (
    <HydrationBoundary state={answers()}>
      <Page>
        <OilScreen {...where} />
      </Page>
    </HydrationBoundary>
  );
}
