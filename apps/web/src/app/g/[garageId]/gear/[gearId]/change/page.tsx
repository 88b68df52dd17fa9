import { HydrationBoundary } from '@tanstack/react-query';
import type { Metadata } from 'next';
import { PageAnswer } from '../../../../../../components/index.ts';
import { Page } from '../../../../../../frame/Page.tsx';
import { ChangeGearForm } from '../../../../../../gear/ChangeGearForm.tsx';
import { answers, ask, orNotFound, pageCache } from '../../../../../../server/ask.ts';

export const metadata: Metadata = { title: 'Change it' };

type ChangeGearProps = { params: Promise<{ garageId: string; gearId: string }> };

export default async function ChangeGear({ params }: ChangeGearProps) {
  const where = await params;
  const { row } = await orNotFound(pageCache().fetchQuery(ask().gear.view.queryOptions(where)));
  return (
    <HydrationBoundary state={answers()}>
      <Page width="narrow">
        <PageAnswer about={row.gear.name}>What is known of it.</PageAnswer>
        <ChangeGearForm {...where} />
      </Page>
    </HydrationBoundary>
  );
}
