import { HydrationBoundary } from '@tanstack/react-query';
import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { PageAnswer } from '../../../../../components/index.ts';
import { Page } from '../../../../../frame/Page.tsx';
import { ChangePlanForm } from '../../../../../lay-up/ChangePlanForm.tsx';
import { planWords } from '../../../../../lay-up/plan-words.ts';
import { answers, ask, orNotFound, pageCache } from '../../../../../server/ask.ts';

export const metadata: Metadata = { title: 'Planned lay-up' };

type ChangePlanProps = { params: Promise<{ garageId: string; layUpId: string }> };

export default async function ChangePlan({ params }: ChangePlanProps) {
  const { garageId, layUpId } = await params;
  const { plannedLayUps, cars } = await orNotFound(
    pageCache().fetchQuery(ask().event.list.queryOptions({ garageId })),
  );
  const standing = plannedLayUps.find((one) => one.layUpId === layUpId);
  if (!standing) notFound();
  // what changed by a new plan is told against what the car said before
  await orNotFound(
    pageCache().fetchQuery(ask().car.view.queryOptions({ garageId, carId: standing.carId })),
  );
  return (
    <HydrationBoundary state={answers()}>
      <Page width="narrow">
        <PageAnswer about={cars[standing.carId] ?? 'A car'}>
          Planned to be laid up {planWords(standing.layUp)}.
        </PageAnswer>
        <ChangePlanForm garageId={garageId} layUpId={layUpId} />
      </Page>
    </HydrationBoundary>
  );
}
